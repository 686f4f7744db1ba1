/**
 * The plan played through seasons whose luck the planner does not know: how full the bowl gets by
 * habit, and how wide the forecast of a plan is.
 */
@NullMarked
package sallet.plan.rehearse;

import org.jspecify.annotations.NullMarked;
