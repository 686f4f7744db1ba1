/** Tests of forecasts. */
@NullMarked
package sallet.crop.forecast;

import org.jspecify.annotations.NullMarked;
