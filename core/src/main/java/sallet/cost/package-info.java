/** What the bench costs to run. */
@NullMarked
package sallet.cost;

import org.jspecify.annotations.NullMarked;
