/** What to beware of, word by word. */
@NullMarked
package sallet.feed.caution;

import org.jspecify.annotations.NullMarked;
