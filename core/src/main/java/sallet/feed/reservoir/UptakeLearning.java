package sallet.feed.reservoir;

import java.util.List;
import sallet.feed.FeedFault;
import sallet.feed.ion.Composition;

/**
 * Learns how much water plants drink for a kilogram of dry mass, and so how strong a solution they
 * take up, from readings of a reservoir that was kept at its mark.
 *
 * <p>Normal prior on the logarithm of the litres, its 10 and 90 % points the low and high litres of
 * {@link UptakePrior}; each reading counts with {@link #READING_SPREAD}.
 */
public final class UptakeLearning {
  /** Between the 10 % and the 90 % point of a normal distribution, in standard deviations. */
  private static final double TENTHS = 2 * 1.2815515655446004;

  /** Spread of the logarithm of the litres that one reading tells (judgement). */
  private static final double READING_SPREAD = 0.2;

  /** Plants drink more than this for a kilogram of dry mass, L, */
  private static final double LEAST_LITRES = 40;

  /** and less than this. */
  private static final double MOST_LITRES = 3000;

  /** The reservoir is followed in parts of this share of its volume. */
  private static final double PART = 0.1;

  private final UptakePrior prior;
  private final IonLedger fresh;
  private final Composition water;
  private final Composition salts;

  private UptakeLearning(UptakePrior prior, IonLedger fresh, Composition water, Composition salts) {
    this.prior = prior;
    this.fresh = fresh;
    this.water = water;
    this.salts = salts;
  }

  /**
   * The prior narrowed by what was seen.
   *
   * @param fresh the fresh reservoir
   * @param water source water as treated, per litre
   * @param salts what a full-strength recipe adds to it, per litre
   * @throws FeedFault when no uptake could lead to a reading
   */
  public static UptakePrior learn(
      UptakePrior prior,
      IonLedger fresh,
      Composition water,
      Composition salts,
      List<SeenDrink> seen) {
    return new UptakeLearning(prior, fresh, water, salts).learn(seen);
  }

  private UptakePrior learn(List<SeenDrink> seen) {
    double spread = Math.log(prior.highLitres() / prior.lowLitres()) / TENTHS;
    double precision = 1 / (spread * spread);
    double sum = precision * Math.log(prior.litresPerKgDry());
    for (SeenDrink one : seen) {
      double weight = 1 / (READING_SPREAD * READING_SPREAD);
      precision += weight;
      sum += weight * Math.log(litresPerKgDry(one));
    }
    double middle = Math.exp(sum / precision);
    double half = TENTHS / 2 / Math.sqrt(precision);
    return seen.isEmpty()
        ? prior
        : prior.withLitres(middle, middle * Math.exp(-half), middle * Math.exp(half));
  }

  /** The litres for a kilogram of dry mass that lead to a reading; EC rises with them. */
  private double litresPerKgDry(SeenDrink seen) {
    double least = ecMsCm(seen, LEAST_LITRES);
    double most = ecMsCm(seen, MOST_LITRES);
    if (!(seen.readMsCm() > least && seen.readMsCm() < most)) {
      throw new FeedFault(
          "EC %.2f mS/cm after %.1f L of %.0f %% strength cannot be: uptake leads to between %.2f and %.2f; check the reading, or leave it out"
              .formatted(seen.readMsCm(), seen.pouredL(), 100 * seen.strength(), least, most));
    }
    double low = Math.log(LEAST_LITRES);
    double high = Math.log(MOST_LITRES);
    for (int i = 0; i < 30; i++) {
      double middle = (low + high) / 2;
      if (ecMsCm(seen, Math.exp(middle)) < seen.readMsCm()) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return Math.exp((low + high) / 2);
  }

  private double ecMsCm(SeenDrink seen, double litresPerKgDry) {
    UptakePrior plants = prior.withLitres(litresPerKgDry, litresPerKgDry, litresPerKgDry);
    Composition topUp = water.plus(salts.times(seen.strength()));
    int parts = (int) Math.max(1, Math.ceil(seen.pouredL() / (PART * fresh.litres())));
    double part = seen.pouredL() / parts;
    IonLedger ledger = fresh;
    for (int i = 0; i < parts; i++) {
      ledger = ledger.drunk(0, part, 0, plants).toppedUp(topUp, part);
    }
    return ledger.ecMsCm();
  }
}
