package sallet.water.absence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import sallet.household.Household;
import sallet.household.Watering;
import sallet.water.WaterFault;
import sallet.water.home.HomeWater;
import sallet.water.home.Households;
import sallet.water.reservoir.TankForecast;
import sallet.water.transpiration.StandingPlant;

/** Days away. */
class LeavingTest {
  private static final LocalDate FROM = Households.DAY.plusDays(3);

  private static AwaySheet away(double tankL, double humidity, int pots, int days) {
    Household home = Households.of(tankL, humidity);
    List<StandingPlant> plants = Households.lettuce(home, pots);
    return Leaving.sheet(home, plants, Households.DAY, FROM, FROM.plusDays(days - 1L));
  }

  @Test
  void aShortAbsenceWithAFullReservoirIsSafe() {
    AwaySheet sheet = away(60, 60, 6, 3);
    assertThat(sheet.verdict()).isEqualTo(AwaySheet.Verdict.SAFE);
    assertThat(sheet.chosen()).isEmpty();
  }

  /**
   * A longer absence never lasts more surely nor gets a better verdict, and each litre more never
   * less, with the reservoir read on the day as with days before leaving.
   */
  @ParameterizedTest
  @ValueSource(ints = {0, 3, 10})
  void theVerdictIsMonotoneInDaysAndLitres(int before) {
    double lasts = 1;
    int rank = 0;
    for (int days = 2; days <= 20; days += 3) {
      AwaySheet sheet = later(60, before, days);
      assertThat(sheet.asItStands().lasts()).isLessThanOrEqualTo(lasts);
      assertThat(rank(sheet)).isGreaterThanOrEqualTo(rank);
      lasts = sheet.asItStands().lasts();
      rank = rank(sheet);
    }
    assertThat(lasts).isLessThan(0.5);
    assertThat(rank).isPositive();
    lasts = 0;
    rank = 2;
    for (double litres = 40; litres <= 100; litres += 15) {
      AwaySheet sheet = later(litres, before, 9);
      assertThat(sheet.asItStands().lasts()).isGreaterThanOrEqualTo(lasts);
      assertThat(rank(sheet)).isLessThanOrEqualTo(rank);
      lasts = sheet.asItStands().lasts();
      rank = rank(sheet);
    }
    assertThat(lasts).isGreaterThan(0.9);
  }

  private static AwaySheet later(double tankL, int before, int days) {
    Household home = Households.of(tankL, 45);
    LocalDate from = Households.DAY.plusDays(before);
    return Leaving.sheet(
        home, Households.lettuce(home, 8), Households.DAY, from, from.plusDays(days - 1L));
  }

  /** 0 safe, 1 safe when prepared, 2 not safe. */
  private static int rank(AwaySheet sheet) {
    return switch (sheet.verdict()) {
      case SAFE -> 0;
      case SAFE_WHEN_PREPARED -> 1;
      case NOT_SAFE -> 2;
    };
  }

  @Test
  void safeMeansWaterSaltAndEveryPot() {
    for (int days : new int[] {4, 9, 16, 25}) {
      AwaySheet sheet = away(55, 45, 8, days);
      boolean safe = sheet.verdict() != AwaySheet.Verdict.NOT_SAFE;
      assertThat(sheet.prepared().safe(2.5)).as("%d days", days).isEqualTo(safe);
      if (sheet.verdict() == AwaySheet.Verdict.SAFE_WHEN_PREPARED) {
        assertThat(sheet.asItStands().safe(2.5)).isFalse();
        assertThat(sheet.chosen()).isNotEmpty();
        assertThat(sheet.prepared().lasts()).isGreaterThanOrEqualTo(0.95);
        assertThat(sheet.prepared().returnHighMsCm()).isLessThanOrEqualTo(2.5 + 1e-9);
      }
    }
  }

  /**
   * Until the day of leaving water goes, and comes back on bowl days (6 February is a Saturday).
   */
  @Test
  void theReservoirIsReckonedUntilTheDayOfLeaving() {
    Household home = Households.of(60, 45);
    List<StandingPlant> plants = Households.lettuce(home, 8);
    List<TankForecast.Day> days = HomeWater.sheet(home, Households.DAY, plants).tank().days();
    Departure soon = Leaving.sheet(home, plants, Households.DAY, FROM, FROM).departure();
    assertThat(soon.toppedUp()).isEmpty();
    assertThat(soon.usedL()).hasSize(3);
    assertThat(soon.levelL()).isCloseTo(days.get(2).levelL(), withinPercentage(1));
    assertThat(soon.msCm()).isCloseTo(days.get(2).ecMsCm(), withinPercentage(1));
    LocalDate later = Households.DAY.plusDays(10);
    Departure topped = Leaving.sheet(home, plants, Households.DAY, later, later).departure();
    assertThat(topped.toppedUp()).containsExactly(LocalDate.of(2027, 2, 6));
    double used = days.subList(5, 10).stream().mapToDouble(TankForecast.Day::useL).sum();
    assertThat(topped.levelL()).isCloseTo(60 - used, withinPercentage(1));
  }

  /**
   * Law: what is poured in makes what is in the reservoir as strong as what is told to leave with.
   * Litres are told to whole ones, strengths to a tenth.
   */
  @ParameterizedTest
  @CsvSource({"36, 1.0, 12", "36, 1.4, 12", "36, 2.0, 12", "45, 1.4, 20", "36, 2.4, 16"})
  void whatIsPouredInMakesTheStrengthToLeaveWith(double litres, double msCm, int days) {
    Household home = Households.of(60, 45);
    Watering w = home.watering();
    Watering.TankSetting t = w.tank();
    double wanted = t.ecMsCm();
    Watering.Level read =
        new Watering.Level(FROM, OptionalDouble.of(litres), OptionalDouble.of(msCm), 0, 0, false);
    Household now = home.withWatering(w.withLevels(List.of(read)));
    AwaySheet sheet =
        Leaving.sheet(now, Households.lettuce(now, 8), FROM, FROM, FROM.plusDays(days - 1L));
    String fill =
        sheet.chosen().stream()
            .filter(step -> step.kind() == Step.Kind.FILL)
            .findFirst()
            .orElseThrow()
            .text();
    double poured = Double.parseDouble(fill.replaceAll(".*about (\\d+) L.*", "$1"));
    double strength =
        fill.contains("plain water")
            ? 0
            : Double.parseDouble(fill.replaceAll(".*solution of ([0-9.]+) mS/cm.*", "$1"));
    assertThat(poured).isCloseTo(60 - litres, within(0.5));
    boolean exchanged = sheet.chosen().stream().anyMatch(s -> s.kind() == Step.Kind.DILUTE);
    if (!exchanged) {
      assertThat((litres * msCm + poured * strength) / 60)
          .isCloseTo(sheet.startMsCm(), within(0.05));
    }
    assertThat(sheet.startMsCm()).isLessThanOrEqualTo(Math.max(wanted, litres * msCm / 60) + 1e-9);
  }

  /** Centimetres of two containers hang on both shapes; how full they are does not. */
  @Test
  void aSecondContainerIsToldByItsShare() {
    AwaySheet one = away(60, 45, 8, 6);
    assertThat(one.note().get(0)).contains(" cm)");
    AwaySheet two =
        IntStream.of(30, 40, 50, 60)
            .mapToObj(days -> away(60, 45, 8, days))
            .filter(s -> s.chosen().stream().anyMatch(step -> step.kind() == Step.Kind.TANK))
            .findFirst()
            .orElseThrow();
    assertThat(two.note().get(0)).contains(" % full)");
    assertThat(two.note()).noneMatch(line -> line.contains(" cm)"));
  }

  /** A level that is only reckoned is trusted less than the same level read on the day itself. */
  @Test
  void daysBeforeLeavingMakeTheLevelUnsure() {
    Household home = Households.of(60, 45);
    List<StandingPlant> plants = Households.lettuce(home, 8);
    LocalDate to = FROM.plusDays(6);
    AwaySheet early = Leaving.sheet(home, plants, Households.DAY, FROM, to);
    Watering w = home.watering();
    Household read =
        home.withWatering(
            w.withTank(
                w.tank()
                    .with(OptionalDouble.of(early.departure().levelL()), OptionalDouble.empty())));
    AwaySheet onTheDay = Leaving.sheet(read, plants, FROM, FROM, to);
    assertThat(onTheDay.asItStands().usableL())
        .isCloseTo(early.asItStands().usableL(), within(1e-9));
    assertThat(early.asItStands().lasts()).isLessThan(onTheDay.asItStands().lasts());
    assertThat(early.asItStands().tank().days().get(0).lowL())
        .isLessThan(onTheDay.asItStands().tank().days().get(0).lowL());
  }

  /** Where only a full reservoir is missing, filling it is the step that is told. */
  @Test
  void whatMakesItSafeIsAlwaysTold() {
    Household home = Households.of(60, 45);
    List<StandingPlant> plants = Households.lettuce(home, 8);
    int prepared = 0;
    for (int days = 1; days <= 30; days++) {
      AwaySheet sheet =
          Leaving.sheet(home, plants, Households.DAY, FROM.plusDays(3), FROM.plusDays(2L + days));
      if (sheet.verdict() == AwaySheet.Verdict.SAFE_WHEN_PREPARED) {
        prepared++;
        assertThat(sheet.chosen()).as("%d days", days).isNotEmpty();
        assertThat(sheet.chosen()).anyMatch(step -> step.kind() == Step.Kind.FILL);
      }
    }
    assertThat(prepared).isPositive();
  }

  /** No set of steps with less trouble is safe: the chosen ones without any one are not. */
  @Test
  void noStepIsChosenInVain() {
    AwaySheet sheet = away(55, 45, 8, 12);
    assertThat(sheet.verdict()).isEqualTo(AwaySheet.Verdict.SAFE_WHEN_PREPARED);
    int trouble = sheet.chosen().stream().mapToInt(Step::trouble).sum();
    for (Step step : sheet.steps()) {
      if (step.lastsAlone() >= Outlook.SAFE && sheet.asItStands().atRisk().isEmpty()) {
        assertThat(trouble).isLessThanOrEqualTo(step.trouble());
      }
    }
    assertThat(sheet.steps()).isSortedAccordingTo((a, b) -> Double.compare(b.gainL(), a.gainL()));
    assertThat(sheet.chosen()).isSortedAccordingTo((a, b) -> Double.compare(b.gainL(), a.gainL()));
  }

  /** How many plants to lift is tried out: that many are enough, and one fewer is not. */
  @Test
  void asFewPlantsAreLiftedAsWillDo() {
    Household home = Households.of(55, 45);
    List<StandingPlant> plants = Households.lettuce(home, 8);
    LocalDate to = FROM.plusDays(11);
    AwaySheet sheet = Leaving.sheet(home, plants, Households.DAY, FROM, to);
    Step clear = step(sheet, Step.Kind.CLEAR);
    List<String> lifted =
        List.of(clear.text().replaceAll(".*stands in (.*), the thirstiest.*", "$1").split(", "));
    assertThat(clear.lastsAlone()).isGreaterThanOrEqualTo(Outlook.SAFE);
    assertThat(lasts(home, plants, lifted, to)).isGreaterThanOrEqualTo(Outlook.SAFE);
    List<String> fewer = lifted.subList(0, lifted.size() - 1);
    assertThat(lasts(home, plants, fewer, to)).isLessThan(Outlook.SAFE);
  }

  private static Step step(AwaySheet sheet, Step.Kind kind) {
    return sheet.steps().stream().filter(s -> s.kind() == kind).findFirst().orElseThrow();
  }

  private static double lasts(
      Household home, List<StandingPlant> plants, List<String> lifted, LocalDate to) {
    List<StandingPlant> left =
        plants.stream().filter(p -> !lifted.contains("P" + p.pot())).toList();
    return Leaving.sheet(home, left, FROM, FROM, to).asItStands().lasts();
  }

  /** The litres a step is said to bring are those of the two outlooks. */
  @Test
  void litresOfAStepAreItsShareOfTheUse() {
    AwaySheet sheet = away(55, 45, 8, 12);
    Step cool = step(sheet, Step.Kind.COOL);
    assertThat(cool.gainL())
        .isCloseTo(-cool.useChange() * sheet.asItStands().demand().medianL(), within(1e-9));
    assertThat(step(sheet, Step.Kind.NEIGHBOUR).gainL()).isPositive();
  }

  /** A plant that is too thirsty for its bright pot is moved to a free dim one. */
  @Test
  void plantsAtRiskAreMovedWhereItIsDimmer() {
    Household home = Households.of(60, 30);
    List<StandingPlant> plants = Households.lettuce(home, 4);
    Watcher watcher = new Watcher(FROM, 8, sallet.water.home.Learned.nothing());
    Scene scene = new Scene(home, plants, 60, 1.4);
    Lever move =
        new Moving(scene, sallet.water.home.HomeBench.of(home), watcher.light(scene))
            .lever(List.of("P2", "P3"))
            .orElseThrow();
    List<Double> before = watcher.potsMl(scene);
    Scene after = move.change().apply(scene);
    List<Double> then = watcher.potsMl(after);
    assertThat(after.plants()).extracting(StandingPlant::pot).doesNotContain(2, 3);
    assertThat(sum(then)).isLessThan(sum(before));
    assertThat(move.text()).contains("P2 to the place of P");
  }

  private static double sum(List<Double> all) {
    return all.stream().mapToDouble(Double::doubleValue).sum();
  }

  @Test
  void harvestingBeforeLeavingSavesWater() {
    AwaySheet sheet = away(55, 45, 8, 12);
    Step harvest =
        sheet.steps().stream()
            .filter(step -> step.kind() == Step.Kind.HARVEST)
            .findFirst()
            .orElseThrow();
    assertThat(harvest.useChange()).isBetween(-0.6, -0.01);
    assertThat(harvest.text()).containsPattern("about \\d+ g of leaf");
  }

  /** Who leaves today cannot do anything on the evening before. */
  @Test
  void whoLeavesTodayIsNotSentToYesterday() {
    Household home = Households.of(55, 45);
    List<StandingPlant> plants = Households.lettuce(home, 8);
    LocalDate day = Households.DAY;
    AwaySheet today = Leaving.sheet(home, plants, day, day, day.plusDays(11));
    assertThat(today.steps()).extracting(Step::kind).contains(Step.Kind.HARVEST);
    assertThat(today.steps()).extracting(Step::kind).doesNotContain(Step.Kind.DOOR);
    assertThat(told(today)).noneMatch(text -> text.contains("evening before"));
    assertThat(told(today)).noneMatch(text -> text.contains("the day before"));
    assertThat(told(today)).anyMatch(text -> text.contains("lift what is ready before you leave"));
    AwaySheet later = Leaving.sheet(home, plants, day, FROM, FROM.plusDays(11));
    assertThat(told(later)).anyMatch(text -> text.contains("on the evening before"));
    assertThat(told(later)).anyMatch(text -> text.contains("the day before you leave"));
  }

  private static List<String> told(AwaySheet sheet) {
    return java.util.stream.Stream.concat(sheet.chosen().stream(), sheet.steps().stream())
        .map(Step::text)
        .toList();
  }

  /**
   * A large reservoir is strongest on the evening before somebody fills it. By hand: 100 L of 2.0
   * less what goes until then, 0.75 a litre, at a use not passed 95 times in 100 (1.645 times the
   * root of 0.35², 0.15² and 0.10²).
   */
  @Test
  void theSolutionStaysBelowItsLimitUntilTheFirstVisit() {
    Household home = Households.of(100, 45);
    List<StandingPlant> plants = Households.lettuce(home, 8);
    Watcher watcher = new Watcher(FROM, 40, sallet.water.home.Learned.nothing());
    Scene brim = new Scene(home, plants, 100, 2.0);
    Supplies supplies = new Supplies(watcher, sallet.water.home.Learned.nothing(), FROM, home);
    Outlook alone = watcher.look(brim);
    Visits visits = supplies.visits(alone, brim);
    assertThat(visits.mornings()).isNotEmpty();
    Scene thinned = supplies.thinned(alone, brim, new Supplies.Supply(visits, 0, List.of()));
    double median =
        alone.tank().days().stream()
            .limit(visits.mornings().get(0))
            .mapToDouble(TankForecast.Day::useL)
            .sum();
    double used = median * Math.exp(1.6448536 * Math.sqrt(0.1225 + 0.0225 + 0.01));
    double strongest = (100 * thinned.msCm() - 0.75 * used) / (100 - used);
    assertThat((100 * 2.0 - 0.75 * used) / (100 - used)).isGreaterThan(2.5);
    assertThat(thinned.levelL()).isEqualTo(100);
    assertThat(strongest).isCloseTo(2.5, within(1e-6));
  }

  /** Salt by hand: 50 L of 1.6 lose 20 L that carry 0.7 each: (80 - 14) / 30 = 2.2. */
  @Test
  void theBooksOfSaltClose() {
    SaltBooks plain = new SaltBooks(50, 0, 0, 20, 0.7);
    assertThat(plain.returnMsCm(1.6)).isCloseTo(2.2, within(1e-9));
    assertThat(plain.highestLeaveMsCm(2.2)).isCloseTo(1.6, within(1e-9));
    assertThat(new SaltBooks(50, 20, 0, 20, 0.7).returnMsCm(1.6)).isCloseTo(1.32, within(1e-9));
    assertThat(new SaltBooks(50, 0, 0, 48, 0.7).returnMsCm(1.6)).isNaN();
  }

  @Test
  void visitsComeAsLateAsTheyMayAndAreEnough() {
    List<Double> perDay = java.util.Collections.nCopies(20, 2.0);
    Visits visits = Visits.of(perDay, 0.15, 30, 30);
    assertThat(visits.safe()).isTrue();
    assertThat(visits.mornings()).hasSize(1);
    assertThat(visits.litres().get(0)).isCloseTo(2.0 * visits.mornings().get(0), within(1e-9));
    assertThat(Visits.of(perDay, 0.15, 1, 1).safe()).isFalse();
    assertThat(Visits.of(perDay, 0.15, 100, 100).mornings()).isEmpty();
  }

  @Test
  void datesThatMakeNoSenseAreTold() {
    Household home = Households.of(60, 50);
    WaterFault fault =
        catchThrowableOfType(
            WaterFault.class,
            () -> Leaving.sheet(home, List.of(), Households.DAY, FROM, FROM.minusDays(2)));
    assertThat(fault.lines())
        .containsExactly(
            new WaterFault.Line(
                "--to", "the absence ends on 2027-02-02, before it starts on 2027-02-04"));
    assertThat(Leaving.dates(Households.DAY, Households.DAY.minusDays(1), FROM))
        .extracting(WaterFault.Line::path)
        .containsExactly("--from");
    assertThat(Leaving.dates(Households.DAY, FROM, FROM.plusDays(60))).hasSize(1);
    assertThat(Leaving.dates(Households.DAY, FROM, FROM.plusDays(59))).isEmpty();
  }
}
