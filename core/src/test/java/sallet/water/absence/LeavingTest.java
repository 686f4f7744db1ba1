package sallet.water.absence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import sallet.household.Household;
import sallet.water.WaterFault;
import sallet.water.home.Households;
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

  /** A longer absence never lasts more surely, and each litre more never less. */
  @Test
  void theVerdictIsMonotoneInDaysAndLitres() {
    double before = 1;
    for (int days = 2; days <= 20; days += 3) {
      double lasts = away(60, 45, 8, days).asItStands().lasts();
      assertThat(lasts).isLessThanOrEqualTo(before);
      before = lasts;
    }
    assertThat(before).isLessThan(0.5);
    before = 0;
    for (double litres = 40; litres <= 100; litres += 15) {
      double lasts = away(litres, 45, 8, 12).asItStands().lasts();
      assertThat(lasts).isGreaterThanOrEqualTo(before);
      before = lasts;
    }
    assertThat(before).isGreaterThan(0.9);
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
    assertThat(sheet.steps())
        .isSortedAccordingTo((a, b) -> Double.compare(a.useChange(), b.useChange()));
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
