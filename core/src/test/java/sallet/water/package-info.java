/** Checks of water. */
@NullMarked
package sallet.water;

import org.jspecify.annotations.NullMarked;
