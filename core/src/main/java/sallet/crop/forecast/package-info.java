/** What a crop will do at a place from a sowing on: days, grams and their spread. */
@NullMarked
package sallet.crop.forecast;

import org.jspecify.annotations.NullMarked;
