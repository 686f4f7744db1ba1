/** What the grower's own readings teach about water. */
@NullMarked
package sallet.water.learn;

import org.jspecify.annotations.NullMarked;
