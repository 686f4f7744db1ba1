/** Checks of crop against published tables, and laws it must keep. */
@NullMarked
package sallet.crop;

import org.jspecify.annotations.NullMarked;
