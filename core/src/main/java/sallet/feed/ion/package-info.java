/** Elements, formulas and ions: the bookkeeping every part of feed shares. */
@NullMarked
package sallet.feed.ion;

import org.jspecify.annotations.NullMarked;
