/**
 * The sowing plan: which batch, when, where, how many seeds. A plant life is a column of a linear
 * programme; the only home of native solvers.
 */
@NullMarked
package sallet.plan;

import org.jspecify.annotations.NullMarked;
