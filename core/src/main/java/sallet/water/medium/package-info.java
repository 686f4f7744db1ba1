/** How growing media and pots hold water. */
@NullMarked
package sallet.water.medium;

import org.jspecify.annotations.NullMarked;
