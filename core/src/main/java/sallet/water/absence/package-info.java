/** Days away: whether the water lasts, and what makes it last. */
@NullMarked
package sallet.water.absence;

import org.jspecify.annotations.NullMarked;
