/** The tank: its volume, salt, oxygen and warmth, and how long it lasts. */
@NullMarked
package sallet.water.reservoir;

import org.jspecify.annotations.NullMarked;
