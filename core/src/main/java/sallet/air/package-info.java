/** Indoor air: temperature by hour. */
@NullMarked
package sallet.air;

import org.jspecify.annotations.NullMarked;
