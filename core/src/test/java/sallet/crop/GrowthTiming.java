package sallet.crop;

import java.lang.management.ManagementFactory;
import java.util.List;
import sallet.crop.forecast.GrowingRoom;
import sallet.crop.forecast.GrowthForecast;
import sallet.crop.forecast.Spread;

/**
 * Measures the growth model's speed on one core: plant-days a second, and forecasts of 200 plants
 * with their spread. Its figures are in docs/benchmarks.md.
 */
final class GrowthTiming {
  private static final int PLANTS = 100_000;
  private static final int DAYS = 60;
  private static final int ROUNDS = 8;

  private GrowthTiming() {}

  public static void main(String[] args) {
    PlantParameters p =
        Catalogue.builtIn().find("loose-leaf lettuce, green").orElseThrow().growth().orElseThrow();
    PlaceDays place = new SteadyPlace(150, 16, 21, 17, 450).days(DAYS);
    PlantDay[] life =
        LifeDays.of(
            p,
            PlantRuns.NO_AGEING,
            0.85,
            SteadyPlace.FIRST,
            List.of(new Stay(SteadyPlace.FIRST, place, 225)),
            SteadyPlace.FIRST.plusDays(DAYS));
    for (int round = 1; round <= ROUNDS; round++) {
      long start = cpuNanos();
      double freshG = 0;
      for (int plant = 0; plant < PLANTS; plant++) {
        freshG += grow(p, life, 1 + 1e-6 * plant);
      }
      double seconds = (cpuNanos() - start) * 1e-9;
      System.out.printf(
          "round %d: %.2f CPU s, %.1f million plant-days/s, mean %.1f g%n",
          round, seconds, PLANTS * (double) DAYS / seconds / 1e6, freshG / PLANTS);
    }
    for (int round = 1; round <= ROUNDS; round++) {
      long start = cpuNanos();
      double potG = 0;
      for (Crop crop : Catalogue.builtIn().all()) {
        potG += crop.plannable() ? forecast(crop) : 0;
      }
      System.out.printf(
          "round %d: %.3f CPU s for forecasts of 18 crops, 200 plants each, mean pot %.0f g%n",
          round, (cpuNanos() - start) * 1e-9, potG / 18);
    }
  }

  private static double forecast(Crop crop) {
    SteadyPlace steady = new SteadyPlace(200, 16, 21, 17, 450);
    PlaceDays place = steady.days(220);
    GrowingRoom room =
        new GrowingRoom(place, 16, 49, place, List.of(place), 400, steady.air(), 0.1, false);
    return GrowthForecast.of(crop, SteadyPlace.FIRST, room, Spread.PRIOR)
        .course()
        .map(course -> course.potG().median())
        .orElse(0.0);
  }

  /** Time this thread has computed, which other programs on the machine do not lengthen. */
  private static long cpuNanos() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }

  /** Plants of a batch differ a little in size at the start. */
  private static double grow(PlantParameters p, PlantDay[] life, double size) {
    PlantState start = PlantState.atEmergence(p);
    PlantState plant =
        new PlantState(
            start.shootG() * size,
            start.rootG(),
            start.reserveG(),
            start.leafCm2(),
            start.leaves());
    for (PlantDay day : life) {
      plant = PlantModel.step(plant, p, day);
    }
    return plant.freshG(life[life.length - 1].dryMatterShare());
  }
}
