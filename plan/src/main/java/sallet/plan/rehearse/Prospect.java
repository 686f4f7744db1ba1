package sallet.plan.rehearse;

import java.util.HashMap;
import java.util.Map;
import sallet.crop.Catalogue;
import sallet.crop.Crop;
import sallet.crop.SeedLot;
import sallet.learn.Learned;
import sallet.learn.LearnedFactor;

/**
 * What a crop's truth in a season is drawn from.
 *
 * @param growthMedian median of the factor on assimilation
 * @param growthSpread standard deviation of its logarithm
 * @param lot share of cells that give a plant
 */
record Prospect(double growthMedian, double growthSpread, SeedLot lot) {

  /** The prospects of all plannable crops in a season nobody knows. */
  static Map<String, Prospect> of(Hidden hidden, Catalogue catalogue) {
    Map<String, Prospect> all = new HashMap<>();
    for (Crop crop : catalogue.all()) {
      if (crop.plannable()) {
        double share = crop.usableShare();
        double strength = hidden.seedStrength();
        all.put(
            crop.name(),
            new Prospect(
                hidden.growthMedian(),
                Fates.ofLogarithm(hidden.growthCv()),
                new SeedLot(strength * share, strength * (1 - share))));
      }
    }
    return all;
  }

  /** The same as a household believes them. */
  static Map<String, Prospect> of(Learned learned, Catalogue catalogue) {
    Map<String, Prospect> all = new HashMap<>();
    for (Crop crop : catalogue.all()) {
      if (crop.plannable()) {
        LearnedFactor growth = learned.growthOf(crop);
        all.put(
            crop.name(),
            new Prospect(growth.median(), growth.spread(), learned.seedOf(crop).now()));
      }
    }
    return all;
  }
}
