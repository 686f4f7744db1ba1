/** Water and days away as text, JSON and pages. */
@NullMarked
package sallet.app.report.water;

import org.jspecify.annotations.NullMarked;
