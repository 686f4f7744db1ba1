/** Checks of the indoor air. */
@NullMarked
package sallet.air;

import org.jspecify.annotations.NullMarked;
