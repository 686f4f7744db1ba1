/** The running reservoir: drift, uptake, top-up, correction, the ion ledger and when to renew. */
@NullMarked
package sallet.feed.reservoir;

import org.jspecify.annotations.NullMarked;
