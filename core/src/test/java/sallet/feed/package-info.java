/** Checks of the feed against outside values, laws and bad input. */
@NullMarked
package sallet.feed;

import org.jspecify.annotations.NullMarked;
