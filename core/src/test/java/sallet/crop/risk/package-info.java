/** Tests of the risks. */
@NullMarked
package sallet.crop.risk;

import org.jspecify.annotations.NullMarked;
