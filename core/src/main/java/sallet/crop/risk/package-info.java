/** What may go wrong with a crop at a place, graded and explained. Grades are no probabilities. */
@NullMarked
package sallet.crop.risk;

import org.jspecify.annotations.NullMarked;
