package sallet.plan.rehearse;

import java.util.OptionalDouble;
import sallet.learn.GrowingPlaces;
import sallet.plan.Effort;
import sallet.plan.Season;
import sallet.plan.linear.LinearSolver;

/**
 * How the plan is made anew each week, the same in every season.
 *
 * @param season light and air of the places for the planner
 * @param places the same for what stands
 * @param bowls bowls planned ahead
 * @param margin factor on demand; empty for the one that was learned
 * @param effort how long to think
 * @param solver who solves the linear programmes
 */
record Weekly(
    Season season,
    GrowingPlaces places,
    int bowls,
    OptionalDouble margin,
    Effort effort,
    LinearSolver solver) {}
