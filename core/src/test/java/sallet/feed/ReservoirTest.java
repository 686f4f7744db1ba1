package sallet.feed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import sallet.feed.ion.Composition;
import sallet.feed.ion.Ion;
import sallet.feed.ion.Nutrient;
import sallet.feed.meter.MeterFactor;
import sallet.feed.reservoir.EcCorrection;
import sallet.feed.reservoir.IonLedger;
import sallet.feed.reservoir.UptakePrior;
import sallet.feed.solution.Carbon;
import sallet.feed.solution.Conductivity;

final class ReservoirTest {
  private static final Composition LETTUCE =
      ChemistryChecks.totals("K=5.5;NH4=0.1;Ca=2.1;Mg=1;NO3=8.8;SO4=1;P=1");
  private static final UptakePrior PLANTS = UptakePrior.find("lettuce").orElseThrow();

  /** Alkaline tap water with sodium: EC is held, yet nitrogen falls and sodium piles up. */
  @Test
  void heldEcHidesWhatTheLedgerSees() {
    Composition water =
        ChemistryChecks.totals("Ca=1.3;Mg=0.3;Na=2.8;Cl=2.8;S=0.3").with(Ion.CARBON, 2.6);
    IonLedger ledger = IonLedger.fresh(LETTUCE.plus(water), 40);
    double ec = ledger.ecMsCm();
    for (int week = 0; week < 5; week++) {
      IonLedger low = ledger.drunk(7, 10, 1, PLANTS);
      double strength = IonLedger.topUpStrength(low, water, LETTUCE, 11, ec);
      ledger = low.toppedUp(water.plus(LETTUCE.times(strength)), 11);
      assertThat(ledger.ecMsCm()).isCloseTo(ec, within(0.01));
    }
    assertThat(ledger.perLitre().mg(Nutrient.SODIUM))
        .isGreaterThan(1.8 * ledger.fresh().mg(Nutrient.SODIUM));
    assertThat(ledger.perLitre().mg(Nutrient.NITROGEN))
        .isLessThan(0.8 * ledger.fresh().mg(Nutrient.NITROGEN));
    assertThat(ledger.reasonsToRenew())
        .anyMatch(r -> r.startsWith("Sodium has piled up"))
        .anyMatch(r -> r.contains("days old"));
  }

  /** Nitrate feeding lifts pH, as in every running reservoir. */
  @Test
  void uptakeOfNitrateLeavesAlkalinityBehind() {
    IonLedger fresh = IonLedger.fresh(LETTUCE, 40);
    IonLedger later = fresh.drunk(7, 10, 0, PLANTS).toppedUp(LETTUCE, 10);
    assertThat(later.ph(20)).isGreaterThan(fresh.ph(20));
  }

  @Test
  void aFreshSolutionNeedsNoRenewal() {
    assertThat(IonLedger.fresh(LETTUCE, 40).reasonsToRenew()).isEmpty();
  }

  @Test
  void noReservoirRunsDry() {
    assertThatThrownBy(() -> IonLedger.fresh(LETTUCE, 10).drunk(7, 9, 1, PLANTS))
        .isInstanceOf(FeedFault.class);
  }

  /** The power law of strength, checked with the full model: what is poured gives the wanted EC. */
  @Test
  void theCorrectionBringsTheWantedEc() {
    double full = Conductivity.msCm25(LETTUCE, Carbon.OPEN);
    double read = Conductivity.msCm25(LETTUCE.times(0.7), Carbon.OPEN);
    EcCorrection up = EcCorrection.of(40, read, 1.3, 0, full, 100);
    Composition mended =
        Composition.mix(LETTUCE.times(0.7), 40, LETTUCE.times(100), up.stockMl() / 1000);
    assertThat(Conductivity.msCm25(mended, Carbon.OPEN)).isCloseTo(1.3, within(0.02));
    EcCorrection down = EcCorrection.of(40, full, 1.0, 0, full, 100);
    Composition thinned = Composition.mix(LETTUCE, 40, Composition.EMPTY, down.waterL());
    assertThat(Conductivity.msCm25(thinned, Carbon.OPEN)).isCloseTo(1.0, within(0.02));
  }

  @Test
  void anEcThatBurnsIsRefusedAndOneBelowTheWaterIsAFault() {
    assertThatThrownBy(() -> EcCorrection.of(40, 1, 5, 0.1, 1.4, 100))
        .isInstanceOf(UnsafeDose.class);
    assertThatThrownBy(() -> EcCorrection.of(40, 1, 0.3, 0.4, 1.4, 100))
        .isInstanceOf(FeedFault.class);
  }

  /** Normal posterior by hand: two batches at +4 % against a 5 % prior and 3 % batches. */
  @Test
  void aMeterFactorIsLearnedSlowly() {
    MeterFactor factor = MeterFactor.learn(List.of(1.04, 1.04));
    double weight = 2 / 0.0009 / (2 / 0.0009 + 1 / 0.0025);
    assertThat(factor.factor()).isCloseTo(Math.pow(1.04, weight), within(1e-12));
    assertThat(MeterFactor.learn(List.of()).factor()).isEqualTo(1);
  }
}
