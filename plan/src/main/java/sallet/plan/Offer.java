package sallet.plan;

import java.util.Arrays;

/**
 * What prices mean to the plants of one course, bowl by bowl: worth of a gram of fresh mass, cost
 * of waiting for the next bowl, and a bonus for ending there by lifting or by clearing (minus
 * infinity forbids it).
 */
final class Offer {
  final double[] freshPrice;
  final double[] wait;
  final double[] liftBonus;
  final double[] clearBonus;
  final double[] wastePrice;

  /** Points for each pick of leaves, for the trouble. */
  final double pickCost;

  Offer(Course course, double[] gramPrice, double[] potsBefore) {
    this(course, gramPrice, potsBefore, 0);
  }

  Offer(Course course, double[] gramPrice, double[] potsBefore, double pickCost) {
    this.pickCost = pickCost;
    int bowls = course.bowls.length;
    freshPrice = new double[bowls];
    wait = new double[bowls];
    liftBonus = new double[bowls];
    clearBonus = new double[bowls];
    wastePrice = new double[bowls];
    for (int t = 0; t < bowls; t++) {
      wastePrice[t] = Weights.WASTE * course.ediblePerFresh() * course.lostShare(t);
      freshPrice[t] = gramPrice[course.bowls[t]] * course.ediblePerFresh();
      wait[t] =
          t + 1 < bowls ? potsBefore[course.bowlSlot[t + 1]] - potsBefore[course.bowlSlot[t]] : 0;
    }
  }

  /** Adds to the worth of ending as a skeleton does. */
  void addBonus(Life.Skeleton s, double bonus) {
    (s.lifted() ? liftBonus : clearBonus)[s.end()] += bonus;
  }

  /** Allows only the end of one skeleton. */
  void only(Life.Skeleton s) {
    Arrays.fill(liftBonus, Double.NEGATIVE_INFINITY);
    Arrays.fill(clearBonus, Double.NEGATIVE_INFINITY);
    (s.lifted() ? liftBonus : clearBonus)[s.end()] = 0;
  }
}
