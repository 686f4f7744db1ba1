/**
 * A second opinion on a sowing plan: every rule a plan must keep, checked from the plan's own
 * records, the household and the growth model. Nothing here knows how plans are made; the rules in
 * plain words are in docs/plan-checker.md.
 */
@NullMarked
package sallet.plan.check;

import org.jspecify.annotations.NullMarked;
