/**
 * Checks of the whole: the arrows between the rooms, the case runner, the generated pages and what
 * the documents promise.
 */
@NullMarked
package sallet.it;

import org.jspecify.annotations.NullMarked;
