package sallet.plan;

import java.util.Arrays;
import java.util.List;
import sallet.crop.HarvestRule;
import sallet.crop.PlantState;

/**
 * A plant's whole life: a column of the linear plan. Its grams come from the growth model, day by
 * day.
 */
final class Life {
  private final Course course;
  private final Picks picks;
  private final double[] grams;
  private final double clearedGrams;

  private Life(Course course, Picks picks, double[] grams, double clearedGrams) {
    this.course = course;
    this.picks = picks;
    this.grams = grams;
    this.clearedGrams = clearedGrams;
  }

  /**
   * Lives the picks on the growth model. A pick the plant is too small for is left out, one that
   * would leave too few leaves is made smaller; a plant too small to lift is cleared away.
   */
  static Life lived(Course course, Picks wanted) {
    byte[] done = new byte[wanted.length()];
    double[] grams = new double[wanted.length()];
    PlantState state = course.atFirstBowl();
    double cleared = 0;
    for (int t = 0; t < done.length; t++) {
      double fresh = course.freshG(state, t);
      double largestPick = HarvestRule.largestPick(state.leaves());
      done[t] = allowed(course, t, wanted.at(t), fresh);
      double share = Picks.share(done[t], largestPick);
      grams[t] = share * fresh * course.ediblePerFresh();
      if (t + 1 < done.length) {
        state =
            course.grow(
                state.pickedLeaves(share), course.bowlDay[t] + 1, course.bowlDay[t + 1] + 1);
      } else {
        cleared = (1 - share) * fresh * course.ediblePerFresh() * course.lostShare(t);
      }
    }
    return new Life(course, new Picks(done), grams, cleared);
  }

  private static byte allowed(Course course, int t, byte choice, double freshG) {
    return switch (choice) {
      case Picks.LIFT -> course.mayLift(t, freshG) ? Picks.LIFT : Picks.CLEAR;
      case Picks.CLEAR -> choice;
      default -> course.mayPick(t, freshG) ? choice : 0;
    };
  }

  /** The life as the graph credits it at an offer: never worth less there than the real one. */
  static Life credited(LifeGraph graph, Picks picks, Offer offer) {
    return new Life(
        graph.course, picks, graph.creditedGrams(picks, offer), graph.creditedWaste(picks));
  }

  Course course() {
    return course;
  }

  /** What tells lives apart: course, picks and the grams they count with. */
  List<Object> key() {
    return List.of(course, picks, Arrays.hashCode(grams));
  }

  Picks picks() {
    return picks;
  }

  /** Edible grams of the pot at a bowl of the course. */
  double grams(int bowl) {
    return grams[bowl];
  }

  /** Edible grams thrown away at the end. */
  double clearedGrams() {
    return clearedGrams;
  }

  /** How often leaves are picked from the standing plant. */
  int leafPicks() {
    int n = 0;
    for (int t = 0; t < end(); t++) {
      n += grams[t] > 0 ? 1 : 0;
    }
    return n;
  }

  /** Position of the end among the bowls of the course. */
  int end() {
    return picks.length() - 1;
  }

  /** Slot on whose first day the pot is free again. */
  int endSlot() {
    return course.bowlSlot[end()];
  }

  /** What stays whole when plants are counted: everything but the mix of picks. */
  Skeleton skeleton() {
    return new Skeleton(course, end(), picks.lifted());
  }

  /**
   * A life without its picks.
   *
   * @param end position of the last bowl among those of the course
   * @param lifted whether the plant is eaten at the end
   */
  record Skeleton(Course course, int end, boolean lifted) {
    int endSlot() {
      return course.bowlSlot[end];
    }
  }
}
