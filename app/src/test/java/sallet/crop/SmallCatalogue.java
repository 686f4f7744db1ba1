package sallet.crop;

import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/** A few crops with the harvest rules of the crop table, without growth, for tests of reports. */
public final class SmallCatalogue {
  private SmallCatalogue() {}

  public static Catalogue of() {
    return new Catalogue(
        List.of(
            crop("loose-leaf lettuce, green", "Lactuca sativa", 75, 0.93, 0.95, 1, 0.8),
            crop("loose-leaf lettuce, red", "Lactuca sativa", 75, 0.93, 0.95, 1, 0.8),
            crop("butterhead lettuce", "Lactuca sativa", 70, 0.93, 0.88, 1, 0.8),
            crop("cos (romaine) lettuce", "Lactuca sativa", 75, 0.93, 0.88, 1, 0.8),
            crop("mizuna", "Brassica rapa", 60, 0.93, 0.95, 1, 0.7),
            crop("salad rocket", "Eruca vesicaria", 50, 0.93, 0.95, 3, 0.7),
            crop("spinach", "Spinacia oleracea", 50, 0.93, 0.95, 3, 0.55),
            crop("Swiss chard", "Beta vulgaris", 110, 0.97, 0.9, 1, 0.65)));
  }

  private static Crop crop(
      String name,
      String species,
      int overAgeDays,
      double ageingPerWeek,
      double edibleShare,
      int plantsPerPot,
      double usableShare) {
    HarvestRule rule =
        new HarvestRule(
            true, 60, overAgeDays, 35, ageingPerWeek, 7, edibleShare, plantsPerPot, usableShare);
    return new Crop(
        name,
        species,
        Optional.empty(),
        new Germination(new TreeMap<>(), Double.NaN, Double.NaN, 1),
        Optional.of(rule),
        Optional.empty(),
        "");
  }
}
