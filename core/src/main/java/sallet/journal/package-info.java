/** What the grower wrote down: an append-only list of dated rows. */
@NullMarked
package sallet.journal;

import org.jspecify.annotations.NullMarked;
