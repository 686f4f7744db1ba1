/** Checks of this package. */
@NullMarked
package sallet.water.absence;

import org.jspecify.annotations.NullMarked;
