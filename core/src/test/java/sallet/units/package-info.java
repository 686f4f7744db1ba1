/** Tests of quantities against published conversion factors. */
@NullMarked
package sallet.units;

import org.jspecify.annotations.NullMarked;
