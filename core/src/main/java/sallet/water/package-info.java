/** Water: what plants drink, floods, the reservoir and days away. */
@NullMarked
package sallet.water;

import org.jspecify.annotations.NullMarked;
