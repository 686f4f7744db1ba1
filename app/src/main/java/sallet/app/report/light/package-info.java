/** Reports of light: text, JSON, and a page with a chart of the year and maps of the bench. */
@NullMarked
package sallet.app.report.light;

import org.jspecify.annotations.NullMarked;
