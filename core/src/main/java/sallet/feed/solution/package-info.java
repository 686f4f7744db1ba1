/**
 * Equilibrium chemistry of a dilute to tank-strength solution: activities, pairs, pH, EC,
 * saturation.
 */
@NullMarked
package sallet.feed.solution;

import org.jspecify.annotations.NullMarked;
