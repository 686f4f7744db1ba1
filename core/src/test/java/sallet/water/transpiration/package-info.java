/** Checks of this package. */
@NullMarked
package sallet.water.transpiration;

import org.jspecify.annotations.NullMarked;
