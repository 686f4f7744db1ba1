/** Concentrates: tanks that keep enemies apart, trace stocks, serial dilution. */
@NullMarked
package sallet.feed.stock;

import org.jspecify.annotations.NullMarked;
