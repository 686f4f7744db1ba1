/** Pumps, floods and the timer that starts them. */
@NullMarked
package sallet.water.flood;

import org.jspecify.annotations.NullMarked;
