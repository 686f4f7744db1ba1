package sallet.feed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sallet.feed.ion.Composition;
import sallet.feed.ion.Ion;
import sallet.feed.ion.Nutrient;
import sallet.feed.reservoir.IonLedger;
import sallet.feed.reservoir.UptakePrior;
import sallet.feed.solution.Carbon;
import sallet.feed.solution.SolutionState;
import sallet.feed.solution.Speciation;

/** Laws that hold whatever is mixed. */
final class ConservationTest {
  static LongStream seeds() {
    return Seeds.few();
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void aSolutionIsNeutralAndNoPartIsLost(long seed) {
    Composition totals = Seeds.solution(seed);
    double temperature = new SplittableRandom(seed).nextDouble(0, 60);
    SolutionState state = Speciation.at(temperature).solve(totals, Carbon.CLOSED);
    double charges = totals.cationsMeq() + totals.anionsMeq();
    assertThat(state.chargeMeq()).isCloseTo(0, within(1e-7 * charges));
    assertThat(state.alkalinityMeq()).isCloseTo(totals.alkalinityMeq(), within(1e-7 * charges));
    assertThat(state.totals().mmol(Ion.CARBON)).isCloseTo(totals.mmol(Ion.CARBON), within(1e-7));
    double calcium =
        state.freeMmol(Ion.CALCIUM)
            + state.mmol("CaSO4")
            + state.mmol("CaHPO4")
            + state.mmol("CaH2PO4")
            + state.mmol("CaPO4")
            + state.mmol("CaHCO3")
            + state.mmol("CaCO3");
    assertThat(calcium).isCloseTo(totals.mmol(Ion.CALCIUM), within(1e-7 * charges));
  }

  /**
   * Three thousand solutions from rain to tank strength, at any temperature, with and without air.
   */
  @Test
  void everySolutionSettles() {
    for (long seed = 0; seed < 3000; seed++) {
      double temperature = new SplittableRandom(seed).nextDouble(0, 60);
      Composition totals = Seeds.solution(seed);
      Carbon carbon = seed % 2 == 0 ? Carbon.OPEN : Carbon.CLOSED;
      double ph = Speciation.at(temperature).solve(totals, carbon).ph();
      assertThat(ph).as("seed %d", seed).isBetween(1.0, 12.0);
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void mixingOrderDoesNotMatter(long seed) {
    Composition a = Seeds.solution(seed);
    Composition b = Seeds.solution(seed + 1000);
    Composition c = Seeds.solution(seed + 2000);
    Composition first = Composition.mix(Composition.mix(a, 10, b, 20), 30, c, 5);
    Composition second = Composition.mix(c, 5, Composition.mix(b, 20, a, 10), 30);
    assertThat(Seeds.difference(first, second)).isLessThan(1e-12);
    double sum =
        10 * a.mg(Nutrient.NITROGEN) + 20 * b.mg(Nutrient.NITROGEN) + 5 * c.mg(Nutrient.NITROGEN);
    assertThat(35 * first.mg(Nutrient.NITROGEN)).isCloseTo(sum, within(1e-9 * (1 + sum)));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void dilutingAndConcentratingReturns(long seed) {
    Composition full = Seeds.solution(seed);
    Composition back = Composition.mix(full, 1, Composition.EMPTY, 6).times(7);
    assertThat(Seeds.difference(full, back)).isLessThan(1e-12);
    Speciation model = Speciation.at(20);
    assertThat(model.solve(back, Carbon.OPEN).ph())
        .isCloseTo(model.solve(full, Carbon.OPEN).ph(), within(1e-7));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void acidNeverRaisesPhAndAirNeverMattersForTheCharges(long seed) {
    Composition solution = Seeds.solution(seed);
    Speciation model = Speciation.at(20);
    for (Carbon carbon : new Carbon[] {Carbon.CLOSED, Carbon.OPEN}) {
      double last = 14;
      for (int step = 0; step < 12; step++) {
        Composition acid = solution.plus(Composition.of(Ion.NITRATE, 0.3 * step));
        double ph = model.solve(acid, carbon).ph();
        assertThat(ph).isLessThan(last + 1e-9);
        last = ph;
      }
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void theLedgerLosesNothing(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Composition fresh = Seeds.solution(seed);
    Composition topUp = Seeds.solution(seed + 5000);
    IonLedger ledger = IonLedger.fresh(fresh, 40);
    Composition in = fresh.times(40);
    UptakePrior plants = UptakePrior.find("lettuce").orElseThrow();
    for (int week = 0; week < 8; week++) {
      double drunk = random.nextDouble(10);
      double evaporated = random.nextDouble(5);
      ledger = ledger.drunk(7, drunk, evaporated, plants).toppedUp(topUp, drunk + evaporated);
      in = in.plus(topUp.times(drunk + evaporated));
    }
    Composition out = ledger.perLitre().times(ledger.litres()).plus(ledger.takenMmol());
    assertThat(ledger.litres()).isCloseTo(40, within(1e-9));
    assertThat(Seeds.difference(in, out)).isLessThan(1e-9);
    assertThat(out.alkalinityMeq()).isCloseTo(in.alkalinityMeq(), within(1e-6));
  }
}
