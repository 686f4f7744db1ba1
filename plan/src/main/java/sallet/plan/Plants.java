package sallet.plan;

import java.util.List;

/**
 * Plants that live one skeleton, and the grams each is to give at each bowl of its course.
 *
 * @param count how many, 1 or more
 * @param gramsEach edible grams from each pot, by position among the bowls of the course
 */
record Plants(Life.Skeleton skeleton, int count, List<Double> gramsEach) {
  Plants {
    gramsEach = List.copyOf(gramsEach);
  }
}
