/** Tests of what the grower sees of a plan. */
@NullMarked
package sallet.app.report;

import org.jspecify.annotations.NullMarked;
