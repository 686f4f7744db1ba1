/** Indoor air: temperature, water vapour and heat. */
@NullMarked
package sallet.air;

import org.jspecify.annotations.NullMarked;
