package sallet.feed.dose;

import sallet.feed.ion.Composition;
import sallet.feed.solution.Carbon;
import sallet.feed.solution.Speciation;

/** How hard a solution resists a change of pH, and what that means for soft water. */
public final class Buffer {
  /** Below this a day's uptake moves pH visibly, meq/L per pH (judgement). */
  private static final double WEAK = 0.4;

  private Buffer() {}

  /** Strong base that lifts pH by one around a pH, carbon dioxide already gone, meq/L. */
  public static double meqPerPh(Composition perLitre, double ph, double temperatureC) {
    Speciation model = Speciation.at(temperatureC);
    return model.solveAtPh(perLitre, Carbon.OPEN, ph + 0.5).alkalinityMeq()
        - model.solveAtPh(perLitre, Carbon.OPEN, ph - 0.5).alkalinityMeq();
  }

  /** One sentence on the steadiness of pH. */
  public static String words(double meqPerPh) {
    return meqPerPh < WEAK
        ? "pH is held by phosphate alone (%.2f meq/L for one pH): it will swing with uptake. Half a millimole of potassium bicarbonate a litre, or 10 to 20 %% tap water, steadies it"
            .formatted(meqPerPh)
        : "pH is well held (%.2f meq/L for one pH)".formatted(meqPerPh);
  }
}
