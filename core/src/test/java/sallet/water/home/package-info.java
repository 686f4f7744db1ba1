/** Checks of this package. */
@NullMarked
package sallet.water.home;

import org.jspecify.annotations.NullMarked;
