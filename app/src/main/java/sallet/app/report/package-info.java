/**
 * What the grower sees of a plan: dated tasks, the terminal report, JSON, one self-contained page
 * with drawings, and the calendar. Pure functions from a plan to text; writing files is left to the
 * command line.
 */
@NullMarked
package sallet.app.report;

import org.jspecify.annotations.NullMarked;
