/** Checks of sun, sky and climate. */
@NullMarked
package sallet.weather;

import org.jspecify.annotations.NullMarked;
