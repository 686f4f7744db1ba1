package sallet.feed.reservoir;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sallet.feed.dose.Bottle;
import sallet.feed.dose.PhDose;
import sallet.feed.dose.PhRange;
import sallet.feed.ion.Composition;
import sallet.feed.ion.Ion;
import sallet.feed.ion.Nutrient;

/**
 * A reservoir at the end of a week: topped up to its mark, pH mended.
 *
 * @param week weeks since the solution was fresh
 * @param ledger what is in it
 * @param topUpL water or solution poured in during the week, L
 * @param topUpStrength mean strength of that, 1 being full
 * @param phBefore pH before it was mended
 * @param ph pH afterwards
 * @param dose acid or base, when pH had left its range
 * @param reasons why the solution should be renewed; empty while it need not be
 */
public record TankWeek(
    int week,
    IonLedger ledger,
    double topUpL,
    double topUpStrength,
    double phBefore,
    double ph,
    Optional<PhDose> dose,
    List<String> reasons) {
  /** What is told of each week. */
  public static final List<Nutrient> TOLD =
      List.of(
          Nutrient.NITROGEN,
          Nutrient.PHOSPHORUS,
          Nutrient.POTASSIUM,
          Nutrient.CALCIUM,
          Nutrient.MAGNESIUM,
          Nutrient.SULFUR,
          Nutrient.SODIUM,
          Nutrient.CHLORIDE);

  private static final double TEMPERATURE_C = 20;
  private static final int DAYS = 7;

  /** The tank is topped up before so much of it is gone (judgement). */
  private static final double LOWEST_SHARE = 0.7;

  /**
   * Share of the alkalinity of uptake that shows in the tank; leaves keep the rest as organic acids
   * (judgement: reported values are about a third of the balance of what leaves contain).
   */
  private static final double SHOWN_SHARE = 1.0 / 3;

  public TankWeek {
    reasons = List.copyOf(reasons);
  }

  /**
   * Follows a reservoir.
   *
   * @param water source water as treated, per litre
   * @param salts what a full-strength recipe adds to it, per litre
   */
  public static List<TankWeek> follow(
      IonLedger fresh, Composition water, Composition salts, TankHabit habit, int weeks) {
    List<TankWeek> all = new ArrayList<>();
    IonLedger ledger = fresh;
    double ec = fresh.ecMsCm();
    for (int week = 1; week <= weeks; week++) {
      TankWeek next = next(week, ledger, water, salts, habit, ec);
      all.add(next);
      ledger = next.ledger;
    }
    return all;
  }

  private static TankWeek next(
      int week,
      IonLedger start,
      Composition water,
      Composition salts,
      TankHabit habit,
      double ecMsCm) {
    double usedL = DAYS * (habit.drunkLPerDay() + habit.evaporatedLPerDay());
    int turns = (int) Math.max(1, Math.ceil(usedL / ((1 - LOWEST_SHARE) * start.litres())));
    double pouredL = usedL / turns;
    IonLedger ledger = start;
    double strengths = 0;
    for (int turn = 0; turn < turns; turn++) {
      IonLedger low = drink(ledger, habit, (double) DAYS / turns);
      double strength =
          switch (habit.topUp()) {
            case HOLD_EC -> IonLedger.topUpStrength(low, water, salts, pouredL, ecMsCm);
            case SOLUTION -> 1;
            case WATER -> 0;
          };
      strengths += strength;
      ledger = low.toppedUp(water.plus(salts.times(strength)), pouredL);
    }
    double before = ledger.ph(TEMPERATURE_C);
    Optional<PhDose> dose = mend(ledger, before, habit.acid());
    IonLedger mended = dose.isPresent() ? ledger.plus(dose.get().addedMmol()) : ledger;
    return new TankWeek(
        week,
        mended,
        usedL,
        strengths / turns,
        before,
        dose.map(PhDose::phLater).orElse(before),
        dose,
        mended.reasonsToRenew());
  }

  private static Optional<PhDose> mend(IonLedger ledger, double ph, Bottle acid) {
    return PhRange.mend(ledger.perLitre(), ph, PhRange.LOW, ledger.litres(), acid, TEMPERATURE_C);
  }

  /** Days of drinking; the part of the alkalinity of uptake that leaves keep is balanced here. */
  private static IonLedger drink(IonLedger ledger, TankHabit habit, double days) {
    IonLedger low =
        ledger.drunk(
            days, days * habit.drunkLPerDay(), days * habit.evaporatedLPerDay(), habit.plants());
    double left = ledger.takenMmol().alkalinityMeq() - low.takenMmol().alkalinityMeq();
    Ion keeper = left > 0 ? Ion.OTHER_ANION : Ion.OTHER_CATION;
    return low.plus(Composition.of(keeper, (1 - SHOWN_SHARE) * Math.abs(left)));
  }
}
