package sallet.water.home;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import sallet.air.MoistAir;
import sallet.household.Household;
import sallet.household.Watering;
import sallet.water.WaterFault;
import sallet.water.learn.UseFactor;
import sallet.water.medium.PotWater;

/** A household's own bench, pump and tank. */
class HomeWaterTest {
  private static final Household HOME = Households.of(60, 50);

  private static String refused(Household household) {
    WaterFault fault = catchThrowableOfType(WaterFault.class, () -> HomeBench.of(household));
    assertThat(fault).isNotNull();
    return String.valueOf(fault.getMessage());
  }

  @Test
  void aPumpThatCannotLiftIsTold() {
    assertThat(refused(HOME.withWatering(Households.pumped(1000, 0.7, 0.7))))
        .isEqualTo(
            "pump: a pump that lifts water 0.7 m at the most cannot flood a tray that stands 0.7 m above the reservoir's water to a depth of 4 cm; use a stronger pump or raise the reservoir");
  }

  /**
   * 150 W for 16 h in a room of 3 x 2.4 x 2.4 m with a double pane of 1.44 m² and 0.5 air changes:
   * by hand. Panes 2.8 x 1.44 = 4.03 W/K; other surfaces 38.88 m²; air 0.335 x 0.5 x 17.28 = 2.894
   * W/K (the formulas of steady heat; U of panes and walls are the middles and judgement told).
   */
  @Test
  void lampsWarmTheRoom() {
    double lamp = 150 * 16 / 24.0;
    WaterSheet.LampHeat heat = RoomWarnings.lampHeat(HOME, MoistAir.of(20, 50), 60).orElseThrow();
    assertThat(heat.watts()).isEqualTo(lamp);
    double latent = 60 * 2453.8 / 3600;
    assertThat(heat.latentW()).isCloseTo(latent, within(0.1));
    assertThat(heat.warmsLowK())
        .isCloseTo((lamp - latent) / (4.032 + 38.88 * 1.0 + 2.894), within(0.01));
    assertThat(heat.warmsHighK())
        .isCloseTo((lamp - latent) / (4.032 + 38.88 * 0.3 + 2.894), within(0.02));
    assertThat(RoomWarnings.lampHeat(HOME.withLamps(List.of()), MoistAir.of(20, 50), 60)).isEmpty();
  }

  @Test
  void aPotTallerThanTheFloodCanWetIsTold() {
    Watering.OtherPots tall =
        new Watering.OtherPots(
            List.of("P3"), OptionalDouble.of(3), OptionalDouble.of(0.3), Optional.empty());
    assertThat(refused(HOME.withWatering(Households.potted(0.04, List.of(tall), List.of()))))
        .isEqualTo(
            "bench.floodDepth: a flood of 4 cm does not wet a pot of 30 cm to the top; flood at least 6 cm deep or use lower pots");
  }

  @Test
  void aReservoirSmallerThanOneFloodIsTold() {
    assertThat(refused(Households.of(20, 50)))
        .startsWith("reservoir.volume: 20 L is not enough for one flood: the tray takes 2")
        .contains("use a reservoir above");
  }

  @Test
  void massesThatNoPotCanHoldAreTold() {
    Watering.Weighing weighing =
        new Watering.Weighing(
            "P0", OptionalDouble.of(200), 1900, OptionalDouble.empty(), 6, Optional.empty());
    assertThat(refused(HOME.withWatering(Households.potted(0.04, List.of(), List.of(weighing)))))
        .startsWith("pot P0 on the scales: 1700 g of water is not what a 1.2 L pot of coir");
  }

  /** By hand: 960 g after a flood less 120 g dry is 840 mL, for the pot and all of its kind. */
  @Test
  void scalesReplaceTheTableForAllPotsOfAKind() {
    Watering.Weighing weighing =
        new Watering.Weighing(
            "P0", OptionalDouble.of(120), 960, OptionalDouble.empty(), 6, Optional.empty());
    Watering.OtherPots clay =
        new Watering.OtherPots(
            List.of("P1"),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            Optional.of("expanded clay"));
    HomeBench bench =
        HomeBench.of(HOME.withWatering(Households.potted(0.04, List.of(clay), List.of(weighing))));
    assertThat(bench.water(0).fullMl()).isCloseTo(840, within(1e-9));
    assertThat(bench.water(11)).isEqualTo(bench.water(0));
    assertThat(bench.water(1).weighed()).isFalse();
    assertThat(bench.water(1).fullMl()).isLessThan(400);
  }

  /** The tray of 0.72 m², 4 cm deep, without the pots of 100 cm² each: 24 L, and what they take. */
  @Test
  void aFloodIsTheTrayWithoutThePots() {
    HomeBench bench = HomeBench.of(HOME);
    double around = 40 * (0.72 - 12 * 0.01);
    assertThat(bench.floodL()).isBetween(around, around + 40 * 12 * 0.01);
    assertThat(bench.tank().leastL()).isGreaterThan(bench.floodL());
  }

  /**
   * By hand: 0.72 m² 4 cm deep are 28.8 L when no pot stands in it, 4 of 30 cm of 60 L are 8 L, and
   * 0.5 L stay in the hose; a reservoir of 33 L gives no more than it holds.
   */
  @Test
  void theTrayIsCleanedWithoutItsPots() {
    WaterSheet sheet = HomeWater.sheet(HOME, Households.DAY, Households.lettuce(HOME, 2));
    assertThat(sheet.cleaning().litres()).isCloseTo(28.8 + 8 + 0.5, within(1e-9));
    // 200 mg/L of 5 % bleach: 4 mL a litre
    assertThat(sheet.cleaning().mostMl()).isCloseTo(4 * 37.3, within(1e-9));
    Household small = Households.of(33, 50);
    assertThat(HomeBench.of(small).cleaningL()).isEqualTo(33);
  }

  /**
   * Two soaks of 10 and 40 min with pins of 15 min: the tray is wet half an hour longer a flood.
   */
  @Test
  void aTrayThatSoaksLongerIsWetLonger() {
    HomeBench bench = HomeBench.of(soaking(10));
    double wetM2 = bench.around(4).openM2() - bench.around(0).openM2();
    double longerM2 = HomeBench.of(soaking(40)).around(4).openM2() - bench.around(0).openM2();
    double shortH = 0.5 + 0.25 * Math.ceil((bench.fillMinutes() + 10) / 15);
    double longH = 0.5 + 0.25 * Math.ceil((bench.fillMinutes() + 40) / 15);
    assertThat(longerM2 / wetM2).isCloseTo(longH / shortH, within(1e-9));
  }

  /** A soak that passes a pin by a minute is told; one that fills its pins is not. */
  @Test
  void aSoakThatJustPassesAPinIsTold() {
    var plants = Households.lettuce(HOME, 8);
    double fill = HomeBench.of(soaking(10)).fillMinutes();
    List<String> over = HomeWater.sheet(soaking(16 - fill), Households.DAY, plants).notes();
    assertThat(over)
        .anyMatch(
            note ->
                note.startsWith("Filling and soaking take 16.0 min")
                    && note.contains("the pump runs 30 min")
                    && note.contains("would do with 15"));
    List<String> within = HomeWater.sheet(soaking(14 - fill), Households.DAY, plants).notes();
    List<String> well = HomeWater.sheet(soaking(25 - fill), Households.DAY, plants).notes();
    assertThat(within).noneMatch(note -> note.startsWith("Filling and soaking"));
    assertThat(well).noneMatch(note -> note.startsWith("Filling and soaking"));
  }

  private static Household soaking(double minutes) {
    Watering w = Watering.usual();
    return HOME.withWatering(
        new Watering(
            w.pump(),
            new Watering.TimerSetting("segments", 15, 8, minutes),
            w.floodDepthM(),
            w.tank(),
            w.otherPots(),
            w.airing(),
            w.readings()));
  }

  /** What the air of January is told to be says nothing of February. */
  @Test
  void theNoteOnMoistureIsOfTheMonthTold() {
    var plants = Households.lettuce(HOME, 12);
    List<String> damp = HomeWater.sheet(humid(60), Households.DAY, plants).notes();
    assertThat(damp).anyMatch(note -> note.contains("would raise a room aired as told by"));
    assertThat(HomeWater.sheet(humid(100), Households.DAY, plants).notes()).isEqualTo(damp);
  }

  private static Household humid(double januaryPercent) {
    List<Double> months = new java.util.ArrayList<>(java.util.Collections.nCopies(12, 60.0));
    months.set(0, januaryPercent);
    var air = HOME.room().air();
    return HOME.withRoom(
        HOME.room()
            .withAir(
                new sallet.household.AirClimate(air.dayC(), air.nightC(), months, air.co2Ppm())));
  }

  @Test
  void theSheetHangsTogether() {
    WaterSheet sheet = HomeWater.sheet(HOME, Households.DAY, Households.lettuce(HOME, 8));
    assertThat(sheet.planted()).isEqualTo(8);
    assertThat(sheet.pots()).hasSize(12);
    double used = sheet.tank().days().stream().mapToDouble(d -> d.useL()).sum();
    assertThat(sheet.tank().usedL(HomeWater.DAYS - 1)).isCloseTo(used, within(1e-9));
    for (int i = 0; i < 8; i++) {
      WaterSheet.PotLine pot = sheet.pots().get(i);
      PotWater water = HomeBench.of(HOME).water(i);
      assertThat(pot.lowestShare() * water.fullMl()).isGreaterThanOrEqualTo(water.floorMl());
      assertThat(pot.survivesHours()).isPositive();
      assertThat(pot.useMlPerDay()).isGreaterThan(sheet.pots().get(11).useMlPerDay());
    }
    assertThat(sheet.floods().schedule().unserved()).isEmpty();
    assertThat(sheet.notes()).anyMatch(note -> note.contains("weigh one filled pot"));
  }

  /** Published whole-crop use lies between 8 and 45 L/kg; growth of a fortnight is part of it. */
  @Test
  void aCropUsesAsMuchWaterAsPublishedOnesDo() {
    var plants = Households.lettuce(HOME, 8);
    WaterSheet sheet = HomeWater.sheet(HOME, Households.DAY, plants);
    double litres = 0;
    double leaves = 0;
    for (int day = 0; day < HomeWater.DAYS; day++) {
      litres += sheet.tank().days().get(day).useL();
    }
    for (var plant : plants) {
      leaves +=
          plant.freshG(Households.DAY.plusDays(HomeWater.DAYS)) - plant.freshG(Households.DAY);
    }
    assertThat(1000 * litres / leaves).isBetween(8.0, 45.0);
  }

  /** A truth of 1.3 times the computed, read without error, is learned and sharpens the band. */
  @Test
  void readingsOfTheLevelTeachTheFactor() {
    var plants = Households.lettuce(HOME, 8);
    BenchDays past = BenchDays.of(HOME, plants, Households.DAY.minusDays(12), 13);
    var use = past.use(HomeBench.of(HOME).around(4));
    double level = 55;
    double ec = 1.4;
    java.util.List<Watering.Level> levels = new java.util.ArrayList<>();
    for (int day = 0; day <= 12; day += 4) {
      levels.add(
          new Watering.Level(
              Households.DAY.minusDays(12 - day), level, OptionalDouble.of(ec), 0, 0));
      double loss = 0;
      for (int d = day; d < Math.min(12, day + 4); d++) {
        loss += 1.3 * (use.dayL(d) + use.dayL(d + 1)) / 2;
      }
      ec = (level * ec - 0.6 * loss) / (level - loss);
      level -= loss;
    }
    Learned learned =
        HomeWater.learned(
            HomeBench.of(HOME.withWatering(Watering.usual().withLevels(levels))),
            plants,
            Households.DAY);
    assertThat(learned.factor().median()).isCloseTo(1.3, within(0.08));
    assertThat(learned.factor().logSd()).isLessThan(0.15);
    assertThat(learned.uptake().msCm()).isCloseTo(0.6, within(0.1));
    assertThat(learned.notes()).isEmpty();
  }

  /** Top-ups on days without a reading count, and fresh solution ends one interval. */
  @Test
  void topUpsBetweenReadingsAndFreshSolutionAreInTheBooks() {
    var plants = Households.lettuce(HOME, 8);
    LocalDate first = Households.DAY.minusDays(12);
    BenchDays days = BenchDays.of(HOME, plants, first, 10);
    BenchFloods floods = BenchFloods.of(HomeBench.of(HOME), days, UseFactor.prior(), 10);
    var use = floods.useBy(floods.schedule());
    double loss = 0;
    for (int d = 0; d < 8; d++) {
      loss += (use.dayL(d) + use.dayL(d + 1)) / 2;
    }
    List<Watering.Level> levels =
        List.of(
            new Watering.Level(first, 50, OptionalDouble.empty(), 0, 0),
            new Watering.Level(
                first.plusDays(2), OptionalDouble.empty(), OptionalDouble.empty(), 5, 0, false),
            new Watering.Level(
                first.plusDays(8),
                OptionalDouble.of(55 - 1.2 * loss),
                OptionalDouble.empty(),
                58,
                1.4,
                true),
            new Watering.Level(
                first.plusDays(9), OptionalDouble.empty(), OptionalDouble.of(1.5), 0, 0, false));
    Household read = HOME.withWatering(Watering.usual().withLevels(levels));
    Learned learned = HomeWater.learned(HomeBench.of(read), plants, Households.DAY);
    assertThat(learned.intervals()).hasSize(1);
    assertThat(learned.intervals().get(0).ratio()).isCloseTo(1.2, within(1e-9));
    TankNow now = TankNow.of(HomeBench.of(read), plants, first.plusDays(8), learned);
    assertThat(now.litres()).isEqualTo(58);
    assertThat(now.msCm()).isEqualTo(1.4);
    TankNow then = TankNow.of(HomeBench.of(read), plants, first.plusDays(9), learned);
    assertThat(then.litres()).isLessThan(58);
    assertThat(then.msCm()).isEqualTo(1.5);
  }

  /** A pot that used 1.3 times the computed water from 07:00 to 14:30 moves the factor up. */
  @Test
  void aPotOnTheScalesTeachesByTheHour() {
    var plants = Households.lettuce(HOME, 8);
    LocalDate day = Households.DAY.minusDays(3);
    var use = BenchDays.of(HOME, plants, day, 1).use(HomeBench.of(HOME).around(4));
    double ml = 0;
    for (int h = 7; h < 14; h++) {
      ml += use.potMl(0, h);
    }
    ml += use.potMl(0, 14) / 2;
    Watering.Weighing weighing =
        new Watering.Weighing(
            "P0",
            OptionalDouble.empty(),
            1000,
            OptionalDouble.of(1000 - 1.3 * ml),
            7.5,
            Optional.of(day),
            Optional.of(LocalTime.of(14, 30)));
    Household read =
        HOME.withWatering(
            Watering.usual()
                .withReadings(new Watering.Readings(List.of(weighing), List.of(), List.of())));
    Learned learned = HomeWater.learned(HomeBench.of(read), plants, Households.DAY);
    // one reading as sure as the prior (0.35 each): the geometric mean of 0.85 and 1.3
    assertThat(learned.factor().median()).isCloseTo(Math.sqrt(0.85 * 1.3), within(1e-6));
    assertThat(HomeBench.of(read).water(0).weighed()).isFalse();
  }

  /** The sheet tells the forecast before the readings beside the one they make. */
  @Test
  void theForecastIsToldBeforeAndAfterReadings() {
    var plants = Households.lettuce(HOME, 8);
    assertThat(HomeWater.sheet(HOME, Households.DAY, plants).untaught()).isEmpty();
    Watering read =
        Watering.usual()
            .withLevels(
                List.of(
                    new Watering.Level(
                        Households.DAY.minusDays(8), 58, OptionalDouble.empty(), 0, 0),
                    new Watering.Level(
                        Households.DAY.minusDays(4), 53, OptionalDouble.empty(), 0, 0),
                    new Watering.Level(Households.DAY, 47, OptionalDouble.empty(), 0, 0)));
    WaterSheet sheet = HomeWater.sheet(HOME.withWatering(read), Households.DAY, plants);
    var before = sheet.untaught().orElseThrow();
    assertThat(before.startL()).isEqualTo(sheet.tank().startL()).isEqualTo(47);
    double wide = Math.log(spread(before, 3));
    double narrow = Math.log(spread(sheet.tank(), 3));
    assertThat(narrow).isLessThan(0.75 * wide);
    assertThat(before.days().get(3).useL() / sheet.tank().days().get(3).useL())
        .isCloseTo(0.85 / sheet.learned().factor().median(), within(1e-6));
  }

  private static double spread(sallet.water.reservoir.TankForecast tank, int day) {
    var evening = tank.days().get(day);
    return (tank.startL() - evening.lowL()) / (tank.startL() - evening.highL());
  }

  @Test
  void aSpillTeachesNothingAndIsTold() {
    Watering spilled =
        Watering.usual()
            .withLevels(
                List.of(
                    new Watering.Level(
                        Households.DAY.minusDays(3), 58, OptionalDouble.empty(), 0, 0),
                    new Watering.Level(
                        Households.DAY.minusDays(1), 20, OptionalDouble.empty(), 0, 0)));
    Learned learned =
        HomeWater.learned(
            HomeBench.of(HOME.withWatering(spilled)), Households.lettuce(HOME, 8), Households.DAY);
    assertThat(learned.factor()).isEqualTo(UseFactor.prior());
    assertThat(learned.notes()).hasSize(1);
    assertThat(learned.notes().get(0)).contains("not used to learn; check for spills");
  }

  /** The forecast starts where the last reading and the use since leave the tank. */
  @Test
  void theForecastStartsFromTheLastReading() {
    var plants = Households.lettuce(HOME, 8);
    Watering.Level last =
        new Watering.Level(Households.DAY.minusDays(2), 40, OptionalDouble.of(1.7), 5, 0);
    Household read = HOME.withWatering(Watering.usual().withLevels(List.of(last)));
    WaterSheet sheet = HomeWater.sheet(read, Households.DAY, plants);
    var use = BenchDays.of(HOME, plants, Households.DAY.minusDays(2), 2);
    double days = use.use(HomeBench.of(HOME).around(4)).dayL(0);
    assertThat(sheet.tank().startL()).isBetween(45 - 2 * days, 45 - 0.8 * days);
    assertThat(HomeWater.sheet(HOME, Households.DAY, plants).tank().startL()).isEqualTo(60);
    TankNow now =
        TankNow.of(HomeBench.of(read), plants, Households.DAY.minusDays(2), Learned.nothing());
    assertThat(now.litres()).isEqualTo(45);
    assertThat(now.msCm()).isCloseTo(1.7 * 40 / 45, within(1e-9));
  }
}
