package sallet.feed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sallet.feed.dose.Bottle;
import sallet.feed.dose.Buffer;
import sallet.feed.dose.PhDose;
import sallet.feed.dose.PhRange;
import sallet.feed.ion.Composition;
import sallet.feed.ion.Ion;
import sallet.feed.product.Reagent;
import sallet.feed.solution.Carbon;
import sallet.feed.solution.OsmoticPressure;
import sallet.feed.solution.SolutionState;
import sallet.feed.solution.Speciation;

final class DoseTest {
  private static final Composition MEDIUM =
      Speciation.at(25)
          .withCarbonFor(ChemistryChecks.totals("Ca=1.3;Mg=0.3;Na=0.8;Cl=0.8;S=0.3"), 2.6, 7.8);
  private static final Composition LETTUCE =
      ChemistryChecks.totals("K=5.5;NH4=0.1;Ca=2.1;Mg=1;NO3=8.8;SO4=1;P=1");

  /** 100 L from 2.6 to 0.65 meq/L; pH 5.83 at once and 7.97 later by an independent code. */
  @Test
  void theMeterReadsLowAtOnceAndHighLater() {
    PhDose dose = PhDose.toAlkalinity(MEDIUM, 100, 0.65, Bottle.of(Reagent.NITRIC_ACID, 38));
    assertThat(dose.meqL()).isCloseTo(1.95, within(1e-9));
    assertThat(dose.phNow()).isCloseTo(5.827, within(0.05));
    assertThat(dose.phLater()).isCloseTo(7.966, within(0.05));
    assertThat(dose.millilitres()).isCloseTo(28.23 * 1.95 / 2.1, within(0.15));
    assertThat(dose.notes())
        .anyMatch(n -> n.contains("5.8 at once and 8.0"))
        .anyMatch(n -> n.contains("acid into water, never water into acid"))
        .anyMatch(n -> n.contains("needs a licence for nitric acid above 3 %"));
  }

  @Test
  void theLastTenthOfTheAlkalinityIsNotTaken() {
    assertThatThrownBy(
            () -> PhDose.toAlkalinity(MEDIUM, 100, 0.2, Bottle.of(Reagent.NITRIC_ACID, 3)))
        .isInstanceOf(UnsafeDose.class)
        .hasMessageContaining("past 90 %");
  }

  /** Without phosphate only bicarbonate holds pH: nine tenths of it go today, the rest tomorrow. */
  @Test
  void aDoseToAPhStopsAtTheSafeShareAndSaysSo() {
    PhDose dose = PhDose.toPh(MEDIUM, 10, 5.8, Bottle.of(Reagent.NITRIC_ACID, 3), 25);
    assertThat(dose.meqL()).isCloseTo(0.9 * 2.6, within(1e-6));
    assertThat(dose.phLater()).isBetween(7.0, 7.8);
    assertThat(dose.notes()).anyMatch(n -> n.contains("read pH again tomorrow"));
  }

  @Test
  void moreBaseThanAMilliequivalentIsRefused() {
    Composition sour = PhDose.measured(LETTUCE, 3.0, 25);
    assertThatThrownBy(
            () -> PhDose.toPh(sour, 40, 5.8, Bottle.of(Reagent.POTASSIUM_HYDROXIDE, 2), 25))
        .isInstanceOf(UnsafeDose.class)
        .hasMessageContaining("renew the solution");
  }

  /** The denser of two bottles of one strength by mass holds more acid: volumes are inverse. */
  @Test
  void theDensityOnTheBottleCounts() {
    Bottle usual = Bottle.of(Reagent.NITRIC_ACID, 38);
    Bottle dense = new Bottle(Reagent.NITRIC_ACID, 38, 1.02 * usual.densityGmL());
    assertThat(PhDose.toAlkalinity(MEDIUM, 100, 0.65, dense).millilitres() * 1.02)
        .isCloseTo(PhDose.toAlkalinity(MEDIUM, 100, 0.65, usual).millilitres(), within(1e-9));
    assertThatThrownBy(() -> new Bottle(Reagent.NITRIC_ACID, 38, 3)).isInstanceOf(FeedFault.class);
    assertThat(usual.thinnedTo(5)).isEqualTo(Bottle.of(Reagent.NITRIC_ACID, 5));
    assertThat(usual.thinnedTo(50)).isEqualTo(usual);
  }

  @Test
  void aPhInItsRangeIsLeftAlone() {
    Bottle acid = Bottle.of(Reagent.PHOSPHORIC_ACID, 10);
    assertThat(PhRange.mend(LETTUCE, 6.0, PhRange.LOW, 40, acid, 20)).isEmpty();
    Composition high = PhDose.measured(LETTUCE, 6.8, 20);
    assertThat(PhRange.mend(high, 6.8, PhRange.LOW, 40, acid, 20).orElseThrow())
        .satisfies(d -> assertThat(d.phLater()).isCloseTo(PhRange.WANTED, within(0.01)))
        .satisfies(d -> assertThat(d.bottle().percent()).isEqualTo(5));
  }

  @Test
  void noAcidForWaterThatNeedsNone() {
    assertThatThrownBy(
            () ->
                PhDose.toAlkalinity(
                    Composition.EMPTY, 10, 0.5, Bottle.of(Reagent.PHOSPHORIC_ACID, 10)))
        .isInstanceOf(FeedFault.class)
        .hasMessageContaining("no acid is needed");
  }

  /**
   * Lettuce solution 5.0 to 6.0 takes 0.12 meq/L by the independent code (closed, no carbonate).
   */
  @Test
  void aReservoirIsLiftedWithVeryLittleBase() {
    Composition now = PhDose.measured(LETTUCE, 5.0, 25);
    PhDose dose = PhDose.toPh(now, 40, 6.0, Bottle.of(Reagent.POTASSIUM_HYDROXIDE, 5), 25);
    assertThat(-dose.meqL()).isCloseTo(0.1225, within(0.025));
    assertThat(dose.phLater()).isCloseTo(6.0, within(0.001));
    assertThat(dose.millilitres())
        .isCloseTo(-dose.meqL() * 40 / Reagent.POTASSIUM_HYDROXIDE.molarity(5), within(1e-9));
  }

  @ParameterizedTest
  @ValueSource(doubles = {5.6, 5.8, 6.2, 6.5})
  void acidBringsAMeasuredReservoirToTheWantedPh(double target) {
    Composition now = PhDose.measured(LETTUCE, 6.9, 20);
    assertThat(Speciation.at(20).solve(now, Carbon.OPEN).ph()).isCloseTo(6.9, within(1e-6));
    PhDose dose = PhDose.toPh(now, 40, target, Bottle.of(Reagent.PHOSPHORIC_ACID, 10), 20);
    assertThat(dose.phLater()).isCloseTo(target, within(0.001));
  }

  @Test
  void acidCannotLiftAndAbsurdTargetsAreFaults() {
    Composition low = PhDose.measured(LETTUCE, 5.2, 20);
    assertThatThrownBy(() -> PhDose.toPh(low, 40, 6, Bottle.of(Reagent.NITRIC_ACID, 3), 20))
        .isInstanceOf(FeedFault.class);
    assertThatThrownBy(() -> PhDose.toPh(low, 40, 3, Bottle.of(Reagent.NITRIC_ACID, 3), 20))
        .isInstanceOf(FeedFault.class);
    assertThatThrownBy(() -> PhDose.toPh(low, 0, 6, Bottle.of(Reagent.POTASSIUM_HYDROXIDE, 5), 20))
        .isInstanceOf(FeedFault.class);
  }

  /** 5.5 to 6.5 takes 0.27 meq/L by the independent code, without carbonate. */
  @Test
  void softWaterHasAWeakBuffer() {
    double capacity = Buffer.meqPerPh(LETTUCE, 6.0, 25);
    assertThat(capacity).isCloseTo(0.2711, within(0.05));
    assertThat(Buffer.words(capacity)).contains("it will swing");
  }

  /**
   * NaCl 0.1 mol/kg at 25 °C: osmotic coefficient 0.9324 (Robinson and Stokes 1959; value from
   * memory), so 2 × 0.1 × 0.9324 × R T × 0.997 = 461 kPa.
   */
  @Test
  void osmoticPressureOfSaltWater() {
    SolutionState state =
        Speciation.at(25)
            .solve(Composition.of(Ion.SODIUM, 100).with(Ion.CHLORIDE, 100), Carbon.CLOSED);
    assertThat(OsmoticPressure.kPa(state)).isCloseTo(461, within(461 * 0.01));
  }
}
