package sallet.water.home;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import sallet.household.Bench;
import sallet.household.Household;
import sallet.household.Pot;
import sallet.household.Watering;
import sallet.water.WaterFault;
import sallet.water.medium.Medium;
import sallet.water.medium.PotShape;
import sallet.water.medium.PotWater;

/** The pots of the bench as vessels of water. */
final class HomePots {
  /** A flood wets a pot evenly when it stands at least so high up its side. Judgement. */
  static final double LEAST_WETTED = 0.2;

  /** Scales and a little standing water may make a pot seem to hold more than its pores. */
  private static final double SCALES_SHARE = 1.05;

  private final Household household;
  private final List<WaterFault.Line> faults;
  private final Map<String, Medium> media = new HashMap<>();

  /** Pots of one kind behave alike; a pot on the scales speaks for its kind. */
  private record Kind(double volumeL, double heightM, String medium) {
    PotShape shape() {
      return PotShape.straight(volumeL, 100 * heightM);
    }
  }

  /**
   * A pot.
   *
   * @param name its name
   * @param medium what is in it
   * @param shape its shape
   * @param water what it holds
   */
  record HomePot(String name, Medium medium, PotShape shape, PotWater water) {}

  HomePots(Household household, List<WaterFault.Line> faults) {
    this.household = household;
    this.faults = faults;
  }

  List<HomePot> pots() {
    List<Kind> each = household.bench().pots().stream().map(pot -> kind(pot.name())).toList();
    Map<Kind, Double> held = heldMl(each);
    Map<Kind, PotWater> waters = new HashMap<>();
    List<HomePot> pots = new ArrayList<>();
    for (int i = 0; i < each.size(); i++) {
      Kind kind = each.get(i);
      PotWater water = waters.computeIfAbsent(kind, k -> water(k, held));
      String name = household.bench().pots().get(i).name();
      pots.add(new HomePot(name, medium(kind), kind.shape(), water));
    }
    checkDepth(each);
    return pots;
  }

  private Medium medium(Kind kind) {
    return media.computeIfAbsent(kind.medium(), Medium::named);
  }

  private PotWater water(Kind kind, Map<Kind, Double> held) {
    return held.containsKey(kind)
        ? PotWater.ofScales(medium(kind), kind.shape(), held.get(kind))
        : PotWater.ofTable(medium(kind), kind.shape());
  }

  private Kind kind(String pot) {
    Bench bench = household.bench();
    Kind kind = new Kind(bench.potVolumeL(), bench.potHeightM(), bench.medium());
    for (Watering.OtherPots other : household.watering().otherPots()) {
      if (other.pots().contains(pot)) {
        kind =
            new Kind(
                other.volumeL().orElse(kind.volumeL()),
                other.heightM().orElse(kind.heightM()),
                other.medium().orElse(kind.medium()));
      }
    }
    return kind;
  }

  /** Mean of the weighings of each kind, mL. */
  private Map<Kind, Double> heldMl(List<Kind> each) {
    Map<Kind, List<Double>> readings = new HashMap<>();
    List<Watering.Weighing> weighings = household.watering().readings().weighings();
    List<String> names = household.bench().pots().stream().map(Pot::name).toList();
    for (Watering.Weighing w : weighings) {
      if (w.dryG().isEmpty()) {
        continue;
      }
      Kind kind = each.get(Math.max(0, names.indexOf(w.pot())));
      double ml = w.wetG() - w.dryG().getAsDouble();
      Medium medium = medium(kind);
      double most = SCALES_SHARE * 1000 * kind.volumeL() * medium.retention().saturated();
      double least = 1000 * kind.volumeL() * medium.retention().residual();
      if (ml > most || ml < least) {
        faults.add(
            new WaterFault.Line(
                "pot " + w.pot() + " on the scales",
                "%.0f g of water is not what a %s L pot of %s can hold (%.0f to %.0f g); weigh the filled pot dry and after a flood"
                    .formatted(ml, plain(kind.volumeL()), kind.medium(), least, most)));
      } else {
        readings.computeIfAbsent(kind, k -> new ArrayList<>()).add(ml);
      }
    }
    Map<Kind, Double> means = new HashMap<>();
    readings.forEach(
        (kind, list) ->
            means.put(
                kind, list.stream().mapToDouble(Double::doubleValue).average().orElseThrow()));
    return means;
  }

  private void checkDepth(List<Kind> each) {
    double depth = household.watering().floodDepthM();
    double tallest = each.stream().mapToDouble(Kind::heightM).max().orElse(0);
    if (depth < LEAST_WETTED * tallest) {
      faults.add(
          new WaterFault.Line(
              "bench.floodDepth",
              "a flood of %s cm does not wet a pot of %s cm to the top; flood at least %s cm deep or use lower pots"
                  .formatted(
                      plain(100 * depth),
                      plain(100 * tallest),
                      plain(Math.ceil(1000 * LEAST_WETTED * tallest) / 10))));
    }
    double lowest = each.stream().mapToDouble(Kind::heightM).min().orElse(1);
    if (depth >= lowest) {
      faults.add(
          new WaterFault.Line(
              "bench.floodDepth",
              "a flood of %s cm drowns pots of %s cm; flood a quarter to half of their height"
                  .formatted(plain(100 * depth), plain(100 * lowest))));
    }
  }

  static String plain(double number) {
    return sallet.units.Quantity.plain(number);
  }
}
