package sallet.feed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import sallet.feed.dose.Bottle;
import sallet.feed.dose.PhRange;
import sallet.feed.ion.Composition;
import sallet.feed.ion.Ion;
import sallet.feed.ion.Nutrient;
import sallet.feed.product.Reagent;
import sallet.feed.reservoir.IonLedger;
import sallet.feed.reservoir.SeenDrink;
import sallet.feed.reservoir.TankHabit;
import sallet.feed.reservoir.TankWeek;
import sallet.feed.reservoir.UptakeLearning;
import sallet.feed.reservoir.UptakePrior;

/** The running reservoir followed week by week. */
final class TankWeekTest {
  private static final double LITRES = 60;
  private static final Composition SALTS =
      ChemistryChecks.totals("K=5.5;NH4=0.1;Ca=2.1;Mg=1;NO3=8.8;SO4=1;P=1");

  /** Tap water with 0.5 meq/L of its alkalinity left by nitric acid. */
  private static final Composition WATER =
      ChemistryChecks.totals("Ca=1.3;Mg=0.3;Na=2.8;Cl=2.8;S=0.3;NO3=2.1").with(Ion.CARBON, 0.5);

  private static List<TankWeek> follow(TankHabit.TopUp topUp, double drunkLPerDay) {
    TankHabit habit =
        new TankHabit(
            UptakePrior.find("lettuce").orElseThrow(),
            drunkLPerDay,
            0.2,
            topUp,
            Bottle.of(Reagent.NITRIC_ACID, 3));
    IonLedger fresh = IonLedger.fresh(WATER.plus(SALTS), LITRES);
    return TankWeek.follow(fresh, WATER, SALTS, habit, 5);
  }

  /**
   * What was there and what was poured in is what is there and what was taken up; nitric acid holds
   * no phosphorus, so salts alone bring it: 31 mg/L at full strength (1 mmol/L).
   */
  @ParameterizedTest
  @EnumSource(TankHabit.TopUp.class)
  void phosphorusIsNeitherMadeNorLost(TankHabit.TopUp topUp) {
    double poured = 0;
    for (TankWeek week : follow(topUp, 1.5)) {
      poured += week.topUpL() * week.topUpStrength() * 30.974;
      double now =
          week.ledger().litres() * week.ledger().perLitre().mg(Nutrient.PHOSPHORUS)
              + week.ledger().takenMmol().mg(Nutrient.PHOSPHORUS);
      assertThat(now).isCloseTo(LITRES * 30.974 + poured, within(1e-6));
      assertThat(week.ledger().litres()).isCloseTo(LITRES, within(1e-9));
    }
  }

  @Test
  void heldEcStaysButSodiumRisesAndNitrogenFalls() {
    List<TankWeek> weeks = follow(TankHabit.TopUp.HOLD_EC, 1.5);
    IonLedger last = weeks.get(4).ledger();
    assertThat(last.ecMsCm())
        .isCloseTo(IonLedger.fresh(last.fresh(), LITRES).ecMsCm(), within(0.1));
    assertThat(last.perLitre().mg(Nutrient.SODIUM))
        .isGreaterThan(1.4 * last.fresh().mg(Nutrient.SODIUM));
    assertThat(last.perLitre().mg(Nutrient.NITROGEN))
        .isLessThan(0.9 * last.fresh().mg(Nutrient.NITROGEN));
    assertThat(weeks.get(4).reasons()).anyMatch(r -> r.contains("days old"));
  }

  @Test
  void waterAloneThinsTheSolution() {
    List<TankWeek> weeks = follow(TankHabit.TopUp.WATER, 1.5);
    IonLedger first = weeks.get(0).ledger();
    IonLedger last = weeks.get(4).ledger();
    assertThat(last.ecMsCm()).isLessThan(first.ecMsCm());
    assertThat(last.perLitre().mg(Nutrient.POTASSIUM))
        .isLessThan(0.6 * first.perLitre().mg(Nutrient.POTASSIUM));
    assertThat(weeks).allSatisfy(w -> assertThat(w.topUpStrength()).isZero());
  }

  /** Nitrate feeding lifts pH; each week ends where leaf crops like it. */
  @Test
  void phIsMendedEachWeek() {
    List<TankWeek> weeks = follow(TankHabit.TopUp.HOLD_EC, 3);
    assertThat(weeks).anySatisfy(w -> assertThat(w.dose()).isPresent());
    assertThat(weeks)
        .allSatisfy(w -> assertThat(w.ph()).isBetween(PhRange.LOW - 0.01, PhRange.HIGH + 0.01));
    assertThat(weeks)
        .filteredOn(w -> w.dose().isPresent())
        .allSatisfy(w -> assertThat(w.phBefore()).isGreaterThan(PhRange.HIGH));
  }

  /** Sixty litres a day from a tank of sixty are poured back in many small parts. */
  @Test
  void aThirstyBenchIsToppedUpBeforeTheTankRunsLow() {
    assertThat(follow(TankHabit.TopUp.SOLUTION, 60)).hasSize(5);
  }

  private static IonLedger drunk(double litresPerKgDry, double pouredL) {
    UptakePrior plants =
        UptakePrior.find("lettuce")
            .orElseThrow()
            .withLitres(litresPerKgDry, litresPerKgDry, litresPerKgDry);
    IonLedger ledger = IonLedger.fresh(WATER.plus(SALTS), LITRES);
    for (int i = 0; i < 50; i++) {
      ledger = ledger.drunk(0, pouredL / 50, 0, plants).toppedUp(WATER, pouredL / 50);
    }
    return ledger;
  }

  private static UptakePrior learn(SeenDrink... seen) {
    return UptakeLearning.learn(
        UptakePrior.find("lettuce").orElseThrow(),
        IonLedger.fresh(WATER.plus(SALTS), LITRES),
        WATER,
        SALTS,
        List.of(seen));
  }

  /**
   * Plants that drink 200 L for a kilogram: the posterior of normal logarithms, prior 300 with a
   * spread of ln(400/150)/2.563, readings of 20 %, by hand.
   */
  @ParameterizedTest
  @ValueSource(ints = {1, 4})
  void thirstIsLearnedFromReadings(int readings) {
    SeenDrink one = new SeenDrink(25, 0, drunk(200, 25).ecMsCm());
    SeenDrink[] seen = new SeenDrink[readings];
    Arrays.fill(seen, one);
    double prior = Math.pow(2.5631 / Math.log(400.0 / 150), 2);
    double data = readings / 0.04;
    double middle = Math.exp((prior * Math.log(300) + data * Math.log(200)) / (prior + data));
    UptakePrior learned = learn(seen);
    assertThat(learned.litresPerKgDry()).isCloseTo(middle, within(0.02 * middle));
    assertThat(Math.log(learned.highLitres() / learned.lowLitres()))
        .isCloseTo(2.5631 / Math.sqrt(prior + data), within(1e-3));
  }

  @Test
  void withoutReadingsThePriorStandsAndAnImpossibleOneIsAFault() {
    assertThat(learn()).isEqualTo(UptakePrior.find("lettuce").orElseThrow());
    assertThatThrownBy(() -> learn(new SeenDrink(25, 0, 3)))
        .isInstanceOf(FeedFault.class)
        .hasMessageContaining("cannot be");
    assertThatThrownBy(() -> new SeenDrink(0, 0, 1)).isInstanceOf(FeedFault.class);
  }

  /** Little water for much growth takes more out of each litre. */
  @Test
  void hungryPlantsLeaveLessNitrogen() {
    assertThat(drunk(150, 25).perLitre().mg(Nutrient.NITROGEN))
        .isLessThan(drunk(400, 25).perLitre().mg(Nutrient.NITROGEN));
  }

  @Test
  void aBenchThatTakesNothingIsAFault() {
    assertThatThrownBy(
            () ->
                new TankHabit(
                    UptakePrior.find("lettuce").orElseThrow(),
                    0,
                    0,
                    TankHabit.TopUp.WATER,
                    Bottle.of(Reagent.NITRIC_ACID, 3)))
        .isInstanceOf(FeedFault.class);
    assertThatThrownBy(() -> TankHabit.TopUp.of("beer")).isInstanceOf(FeedFault.class);
  }
}
