/** What stands and what was learned, as text and JSON. */
@NullMarked
package sallet.app.report.journal;

import org.jspecify.annotations.NullMarked;
