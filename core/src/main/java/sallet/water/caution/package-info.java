/** Safety texts for water, and the figures they give. */
@NullMarked
package sallet.water.caution;

import org.jspecify.annotations.NullMarked;
