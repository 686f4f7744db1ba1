package sallet.plan.rehearse;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sallet.crop.Crop;

/**
 * What is eaten at a bowl: kinds from the fridge up to their share, a taste of every fresh kind,
 * the rest of the fridge, fresh kinds up to their share, and more of them until the bowl is full.
 * What is left then keeps for one more bowl if its kind does.
 */
final class Kitchen {
  /** A kind counts from so many grams in the bowl. */
  private static final double A_KIND_G = 10;

  private static final double A_TASTE_G = 12;

  private static final int A_WEEK = 7;

  private final double kindShare;
  private final Map<String, Crop> crops = new HashMap<>();
  private Map<String, Double> fridge = new LinkedHashMap<>();
  private final Map<String, Double> fresh = new LinkedHashMap<>();

  /**
   * @param kindShare share of a bowl one kind may take before others had theirs
   */
  Kitchen(double kindShare) {
    this.kindShare = kindShare;
  }

  void bring(Crop crop, double grams) {
    crops.put(crop.name(), crop);
    fresh.merge(crop.name(), grams, Double::sum);
  }

  void keep(Crop crop, double grams) {
    crops.put(crop.name(), crop);
    fridge.merge(crop.name(), grams, Double::sum);
  }

  /** Grams left in the fridge by kind. */
  Map<String, Double> fridge() {
    return Map.copyOf(fridge);
  }

  /** Grams of a kind at hand, from the fridge and picked today. */
  double atHand(Crop crop) {
    return fridge.getOrDefault(crop.name(), 0.0) + fresh.getOrDefault(crop.name(), 0.0);
  }

  double atHand() {
    return sum(fridge) + sum(fresh);
  }

  private static double sum(Map<String, Double> grams) {
    return grams.values().stream().mapToDouble(g -> g).sum();
  }

  /**
   * A bowl.
   *
   * @param eatenGrams grams in it
   * @param kinds kinds of which it holds enough to taste
   * @param spoiltGrams grams that will not keep any longer
   */
  record Bowl(double eatenGrams, int kinds, double spoiltGrams) {}

  /** Fills the bowl and puts the rest away. */
  Bowl eat(double demandGrams) {
    Map<String, Double> eaten = new LinkedHashMap<>();
    double cap = kindShare * demandGrams;
    double open = demandGrams;
    open -= help(fridge, eaten, cap, open);
    open -= help(fresh, eaten, Math.min(cap, A_TASTE_G), open);
    open -= help(fridge, eaten, demandGrams, open);
    open -= help(fresh, eaten, cap, open);
    open -= help(fresh, eaten, demandGrams, open);
    double spoilt = sum(fridge);
    fridge = new LinkedHashMap<>();
    for (Map.Entry<String, Double> left : fresh.entrySet()) {
      if (keeps(left.getKey())) {
        fridge.put(left.getKey(), left.getValue());
      } else {
        spoilt += left.getValue();
      }
    }
    fresh.clear();
    fridge.values().removeIf(grams -> grams <= 0);
    int kinds = (int) eaten.values().stream().filter(g -> g >= A_KIND_G).count();
    return new Bowl(demandGrams - open, kinds, spoilt);
  }

  private boolean keeps(String crop) {
    return Optional.ofNullable(crops.get(crop))
        .flatMap(Crop::harvest)
        .filter(rule -> rule.fridgeCarryDays() >= A_WEEK)
        .isPresent();
  }

  /** Helps from a store until every kind has its share or the bowl is full; tells how much. */
  private static double help(
      Map<String, Double> store, Map<String, Double> eaten, double cap, double open) {
    List<String> most = new ArrayList<>(store.keySet());
    most.sort(Comparator.comparingDouble((String c) -> -store.getOrDefault(c, 0.0)));
    double helped = 0;
    for (String crop : most) {
      double grams = store.getOrDefault(crop, 0.0);
      double taken =
          Math.max(
              0, Math.min(Math.min(grams, open - helped), cap - eaten.getOrDefault(crop, 0.0)));
      store.put(crop, grams - taken);
      eaten.merge(crop, taken, Double::sum);
      helped += taken;
    }
    return helped;
  }
}
