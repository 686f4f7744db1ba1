/** The report of a rehearsal: text, JSON, page. */
@NullMarked
package sallet.app.report.rehearse;

import org.jspecify.annotations.NullMarked;
