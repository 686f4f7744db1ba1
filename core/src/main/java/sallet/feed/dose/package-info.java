/** Acid and base: how much, what pH now and later, and what is refused. */
@NullMarked
package sallet.feed.dose;

import org.jspecify.annotations.NullMarked;
