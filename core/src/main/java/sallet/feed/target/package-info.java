/** Published nutrient solutions and ranges of EC and pH by crop. */
@NullMarked
package sallet.feed.target;

import org.jspecify.annotations.NullMarked;
