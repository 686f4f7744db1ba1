/** Checks of this package. */
@NullMarked
package sallet.water.learn;

import org.jspecify.annotations.NullMarked;
