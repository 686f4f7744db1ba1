/** Tests of the household's own geometry. */
@NullMarked
package sallet.household;

import org.jspecify.annotations.NullMarked;
