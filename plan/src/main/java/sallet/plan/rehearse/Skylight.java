package sallet.plan.rehearse;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import sallet.crop.PlaceDays;
import sallet.crop.RoomDays;
import sallet.household.Household;
import sallet.light.HourlyLight;
import sallet.light.RoomLight;

/**
 * The light of every pot and of the nursery in brighter and duller weather. Worked out once at a
 * few skies; between them the light is exact and the assimilation, which bends a little, is taken
 * as straight (test: within 1 %).
 */
final class Skylight {
  private static final double DULLEST = 0.1;
  private static final double STEP = 0.3;
  private static final int SKIES = 7;
  private static final double BRIGHTEST = DULLEST + STEP * (SKIES - 1);

  private final PlaceDays nursery;
  private final List<List<PlaceDays>> skiesOfPots;

  private Skylight(PlaceDays nursery, List<List<PlaceDays>> skiesOfPots) {
    this.nursery = nursery;
    this.skiesOfPots = skiesOfPots;
  }

  static Skylight of(Household household, LocalDate from, int days) {
    HourlyLight bench = RoomLight.atPots(household, from, days);
    List<List<PlaceDays>> pots =
        IntStream.range(0, bench.places())
            .parallel()
            .mapToObj(pot -> skies(household, bench, pot))
            .toList();
    return new Skylight(
        RoomDays.inNursery(
            RoomLight.inNursery(household, from, days),
            household.nursery(),
            household.room().air()),
        pots);
  }

  private static List<PlaceDays> skies(Household household, HourlyLight bench, int pot) {
    return IntStream.range(0, SKIES)
        .mapToObj(
            i ->
                RoomDays.underSky(
                    bench, List.of(pot), household.room().air(), day -> DULLEST + STEP * i))
        .toList();
  }

  /** The nursery, which no daylight reaches. */
  PlaceDays nursery() {
    return nursery;
  }

  int days() {
    return nursery.days();
  }

  /**
   * The pots in some weather.
   *
   * @param sky factor on daylight of each day
   */
  List<PlaceDays> pots(double[] sky) {
    return skiesOfPots.stream().map(skies -> between(skies, sky)).toList();
  }

  private static PlaceDays between(List<PlaceDays> skies, double[] sky) {
    PlaceDays mean = skies.get(SKIES / 2);
    int days = mean.days();
    double[] assimilateG = new double[days];
    double[] dliMol = new double[days];
    double[] meanC = new double[days];
    double[] photoperiodHours = new double[days];
    double[] boltingHeatCd = new double[days];
    for (int d = 0; d < days; d++) {
      double at = (sky[d] - DULLEST) / STEP;
      int below = Math.max(0, Math.min(SKIES - 2, (int) at));
      double part = at - below;
      PlaceDays low = skies.get(below);
      PlaceDays high = skies.get(below + 1);
      assimilateG[d] = (1 - part) * low.assimilateG(d) + part * high.assimilateG(d);
      dliMol[d] = (1 - part) * low.dliMol(d) + part * high.dliMol(d);
      meanC[d] = mean.meanC(d);
      photoperiodHours[d] = mean.photoperiodHours(d);
      boltingHeatCd[d] = mean.boltingHeatCd(d);
    }
    return new PlaceDays(mean.from(), assimilateG, dliMol, meanC, photoperiodHours, boltingHeatCd);
  }

  /** A season's weather: one factor for each day, each like the day before it. */
  static double[] weather(Hidden hidden, int days, SplittableRandom dice) {
    double[] sky = new double[days];
    double persistence = hidden.sunPersistence();
    double z = dice.nextGaussian();
    for (int d = 0; d < days; d++) {
      sky[d] = Math.max(DULLEST, Math.min(BRIGHTEST, 1 + hidden.sunSpread() * z));
      z = persistence * z + Math.sqrt(1 - persistence * persistence) * dice.nextGaussian();
    }
    return sky;
  }

  /** All places of a bench in a list by the order of its pots. */
  static List<String> names(Household household) {
    List<String> names = new ArrayList<>();
    household.bench().pots().forEach(pot -> names.add(pot.name()));
    return List.copyOf(names);
  }
}
