package sallet.feed.dose;

import java.util.Optional;
import sallet.feed.ion.Composition;
import sallet.feed.product.Reagent;

/** The pH leaf crops like (extension tables: 5.5 to 6.2), and the dose that leads back into it. */
public final class PhRange {
  /** pH is left alone from here, */
  public static final double LOW = 5.5;

  /** to here. */
  public static final double HIGH = 6.3;

  /** A dose leads here. */
  public static final double WANTED = 5.8;

  /** A fresh solution may start here: nitrate feeding lifts it within days (judgement). */
  public static final double FRESH_LOW = 4.9;

  /** Doses are thinned to this before they are measured out, % by mass (common practice). */
  public static final double ACID_PERCENT = 5;

  private static final double BASE_PERCENT = 2;

  private PhRange() {}

  /**
   * What to add at a pH; nothing while it is fine.
   *
   * @param now what is in a litre
   * @param ph its pH in air
   * @param low pH from which it is fine
   * @param acid the acid at hand
   */
  public static Optional<PhDose> mend(
      Composition now, double ph, double low, double litres, Bottle acid, double temperatureC) {
    if (ph >= low && ph <= HIGH) {
      return Optional.empty();
    }
    Bottle bottle =
        ph > HIGH
            ? acid.thinnedTo(ACID_PERCENT)
            : Bottle.of(Reagent.POTASSIUM_HYDROXIDE, BASE_PERCENT);
    PhDose dose = PhDose.toPh(now, litres, WANTED, bottle, temperatureC);
    return Optional.of(making(dose, acid).map(dose::with).orElse(dose));
  }

  /** How the thin acid or base is made from what stands on the shelf. */
  private static Optional<String> making(PhDose dose, Bottle acid) {
    Bottle thin = dose.bottle();
    if (!thin.reagent().isAcid()) {
      return Optional.of(
          "For %s of %.0f %%: dissolve %.0f g in small pieces in a litre of cold water"
              .formatted(thin.reagent().plainName(), thin.percent(), 10 * thin.percent()));
    }
    if (thin.percent() >= acid.percent()) {
      return Optional.empty();
    }
    double ofBottle = dose.millilitres() * thin.molarity() / acid.molarity();
    return Optional.of(
        "For %s of %.0f %%: pour %.1f mL of that of %.0f %% into %.1f mL of water"
            .formatted(
                thin.reagent().plainName(),
                thin.percent(),
                ofBottle,
                acid.percent(),
                dose.millilitres() - ofBottle));
  }
}
