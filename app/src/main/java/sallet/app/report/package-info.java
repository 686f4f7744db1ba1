/**
 * What the grower sees of a plan: dated tasks, the terminal report, JSON, one self-contained page
 * with drawings, and the calendar. Pure functions from a plan to text; only {@link
 * sallet.app.report.PlanFiles} writes files.
 */
@NullMarked
package sallet.app.report;

import org.jspecify.annotations.NullMarked;
