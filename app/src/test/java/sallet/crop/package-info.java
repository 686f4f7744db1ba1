/** Crops for tests of reports. */
@NullMarked
package sallet.crop;

import org.jspecify.annotations.NullMarked;
