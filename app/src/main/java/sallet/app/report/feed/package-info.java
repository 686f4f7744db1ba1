/** The sheet for the sink as text, JSON and a page to print. */
@NullMarked
package sallet.app.report.feed;

import org.jspecify.annotations.NullMarked;
