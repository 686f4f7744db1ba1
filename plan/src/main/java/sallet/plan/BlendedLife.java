package sallet.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import sallet.crop.HarvestRule;
import sallet.crop.PlantState;

/**
 * The real life of plants that follow a mix of pick sequences: the same grams are taken from each,
 * lived on the growth model.
 *
 * @param shares share of the leaf area taken at each bowl of the course up to the end
 * @param gramsEach edible grams each pot gives at each of these bowls
 * @param lifted whether it is lifted at the end
 * @param clearedGrams edible grams thrown away at the end, for each pot
 */
record BlendedLife(
    Life.Skeleton skeleton,
    int count,
    List<Double> shares,
    List<Double> gramsEach,
    boolean lifted,
    double clearedGrams) {

  /** Picks smaller than this are put off to the next, edible grams a pot. Judgement. */
  private static final double SMALLEST_PICK_G = 3;

  /**
   * The life of some plants.
   *
   * @param nextPick grams already promised of each at the next bowl, whatever the mix takes
   */
  static BlendedLife of(Plants plants, OptionalDouble nextPick) {
    Life.Skeleton s = plants.skeleton();
    Course c = s.course();
    List<Double> shares = new ArrayList<>();
    List<Double> grams = new ArrayList<>();
    PlantState state = c.atFirstBowl();
    double owed = 0;
    double cleared = 0;
    boolean lifted = false;
    for (int t = 0; t <= s.end(); t++) {
      double fresh = c.freshG(state, t);
      double standing = fresh * c.ediblePerFresh();
      owed += t == 0 ? nextPick.orElse(plants.gramsEach().get(0)) : plants.gramsEach().get(t);
      double share = 0;
      if (t == s.end() && s.lifted() && c.mayLift(t, fresh)) {
        share = 1;
        lifted = true;
      } else if (owed >= SMALLEST_PICK_G && c.mayPick(t, fresh)) {
        share = Math.min(HarvestRule.largestPick(state.leaves()), owed / standing);
      }
      shares.add(share);
      grams.add(share * standing);
      owed = Math.max(0, owed - share * standing);
      if (t == s.end()) {
        cleared = (1 - share) * standing * c.lostShare(t);
      } else {
        state = c.grow(state.pickedLeaves(share), c.bowlDay[t] + 1, c.bowlDay[t + 1] + 1);
      }
    }
    return new BlendedLife(s, plants.count(), shares, grams, lifted, lifted ? 0 : cleared);
  }
}
