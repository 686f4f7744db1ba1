package sallet.crop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Laws of growth over random plants and places; a failing case names its seed. */
class PlantLawsTest {
  private static final int DAYS = 60;
  private static final List<Crop> GROWABLE =
      Catalogue.builtIn().all().stream().filter(crop -> crop.growth().isPresent()).toList();

  static LongStream seeds() {
    return LongStream.range(0, 300);
  }

  /** A random crop in a random steady room. */
  private record Case(PlantParameters p, double dliMol, int litHours, double dayC, double siteCm2) {
    static Case of(long seed) {
      Random random = new Random(seed);
      Crop crop = GROWABLE.get(random.nextInt(GROWABLE.size()));
      return new Case(
          crop.growth().orElseThrow(),
          1 + 19 * random.nextDouble(),
          8 + random.nextInt(17),
          14 + 12 * random.nextDouble(),
          20 + 580 * random.nextDouble());
    }

    PlantDay[] life() {
      return life(dliMol, siteCm2);
    }

    PlantDay[] life(double dliMol, double siteCm2) {
      PlaceDays place = SteadyPlace.ofDli(dliMol, litHours, dayC, dayC - 4, 450).days(DAYS);
      return LifeDays.of(
          p,
          PlantRuns.NO_AGEING,
          0.85,
          SteadyPlace.FIRST,
          List.of(new Stay(SteadyPlace.FIRST, place, siteCm2)),
          SteadyPlace.FIRST.plusDays(DAYS));
    }

    double[] dryG(PlantDay[] life) {
      double[] dryG = new double[life.length];
      PlantState plant = PlantState.atEmergence(p);
      for (int i = 0; i < life.length; i++) {
        plant = PlantModel.step(plant, p, life[i]);
        dryG[i] = plant.shootG() + plant.rootG() + plant.reserveG();
      }
      return dryG;
    }
  }

  /** Reserve before + assimilated - upkeep = reserve after + growth / yield + spilled. */
  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void carbonIsConserved(long seed) {
    Case c = Case.of(seed);
    Random random = new Random(seed);
    PlantState before = PlantState.atEmergence(c.p());
    for (PlantDay day : c.life()) {
      // Some days are dark, so that the plant also lives on its own substance.
      PlantDay lived = random.nextInt(4) == 0 ? darkened(day) : day;
      PlantState after = PlantModel.step(before, c.p(), lived);
      double crown = PlantModel.crownCm2(before.leafCm2(), c.p().crownC(), lived.siteCm2());
      double upkeep =
          (c.p().shootUpkeepPerDay() * before.shootG() + c.p().rootUpkeepPerDay() * before.rootG())
              * lived.upkeepFactor();
      double income = before.reserveG() + lived.assimilateGPerCm2() * crown - upkeep;
      double w = before.shootG() + before.rootG();
      double grown = after.shootG() + after.rootG() - w;
      if (income < 0) {
        assertThat(-grown).isCloseTo(Math.min(-income, 0.05 * w), within(1e-12));
        assertThat(after.reserveG()).isZero();
      } else {
        double spilled = income - grown / c.p().growthYield() - after.reserveG();
        assertThat(grown).isGreaterThanOrEqualTo(0);
        assertThat(spilled).isGreaterThanOrEqualTo(-1e-12);
        if (after.reserveG() < c.p().reserveCap() * (w + grown) - 1e-12) {
          assertThat(spilled).isCloseTo(0, within(1e-12));
        }
      }
      before = random.nextInt(10) == 0 ? after.picked(0.4) : after;
    }
  }

  private static PlantDay darkened(PlantDay day) {
    return new PlantDay(
        0,
        day.upkeepFactor(),
        day.growthFactor(),
        day.slaCm2PerG(),
        day.dryMatterShare(),
        day.siteCm2(),
        day.leavesAdded());
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void moreLightNeverAssimilatesLess(long seed) {
    Random random = new Random(seed);
    double[] dim = new double[24];
    double[] bright = new double[24];
    double[] hoursC = new double[24];
    for (int h = 0; h < 24; h++) {
      dim[h] = 600 * random.nextDouble();
      bright[h] = dim[h] + (random.nextBoolean() ? 200 * random.nextDouble() : 0);
      hoursC[h] = 40 * random.nextDouble();
    }
    double co2Ppm = 300 + 1200 * random.nextDouble();
    assertThat(Assimilation.dailyG(bright, hoursC, co2Ppm, 3))
        .isGreaterThanOrEqualTo(Assimilation.dailyG(dim, hoursC, co2Ppm, 3));
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void moreLightNeverGivesLessDryMassUpTo20Mol(long seed) {
    Case c = Case.of(seed);
    double brighter = c.dliMol() + (20 - c.dliMol()) * new Random(seed + 1).nextDouble();
    double[] dim = c.dryG(c.life());
    double[] bright = c.dryG(c.life(brighter, c.siteCm2()));
    for (int i = 0; i < DAYS; i++) {
      assertThat(bright[i])
          .as("day %d, %s brighter %s", i + 1, c, brighter)
          .isGreaterThanOrEqualTo(dim[i] * (1 - 1e-9));
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void aLargerSiteNeverGivesLessDryMass(long seed) {
    Case c = Case.of(seed);
    double larger = c.siteCm2() * (1 + new Random(seed + 1).nextDouble());
    double[] small = c.dryG(c.life());
    double[] large = c.dryG(c.life(c.dliMol(), larger));
    for (int i = 0; i < DAYS; i++) {
      assertThat(large[i])
          .as("day %d, %s larger %s", i + 1, c, larger)
          .isGreaterThanOrEqualTo(small[i] * (1 - 1e-9));
    }
  }
}
