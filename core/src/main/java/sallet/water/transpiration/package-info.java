/** What leaves, wet medium and open water give to the air. */
@NullMarked
package sallet.water.transpiration;

import org.jspecify.annotations.NullMarked;
