package sallet.feed.home;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import sallet.feed.FeedFault;
import sallet.feed.dose.Bottle;
import sallet.feed.dose.PhDose;
import sallet.feed.dose.PhRange;
import sallet.feed.ion.Composition;
import sallet.feed.reservoir.EcCorrection;
import sallet.feed.solution.Carbon;
import sallet.feed.solution.Conductivity;

/** Mends one measured value of the running reservoir. */
final class Correcting {
  private static final Pattern PH =
      Pattern.compile("(?i)\\s*pH\\s*=?\\s*([0-9]+(?:\\.[0-9]+)?)\\s*");
  private static final Pattern EC = Pattern.compile("(?i)\\s*EC\\s*=?\\s*(.*)");

  private static final double TEMPERATURE_C = 20;
  private static final int USUAL_STOCK = 100;

  private final Composition full;
  private final Composition water;
  private final Bottle acid;
  private final HomeMeter meter;
  private final FeedWish wish;

  /**
   * @param full the solution as mixed, per litre
   * @param water the water it was mixed with, as treated
   */
  Correcting(Composition full, Composition water, Bottle acid, HomeMeter meter, FeedWish wish) {
    this.full = full;
    this.water = water;
    this.acid = acid;
    this.meter = meter;
    this.wish = wish;
  }

  FeedSheet.Correction of(String text) {
    Matcher ph = PH.matcher(text);
    if (ph.matches()) {
      return ofPh(text.strip(), Double.parseDouble(ph.group(1)));
    }
    Matcher ec = EC.matcher(text);
    if (ec.matches()) {
      return ofEc(text.strip(), meter.sure(ec.group(1)));
    }
    throw new FeedFault(
        "Cannot read \"%s\"; write what was measured, like pH 6.9 or EC 1.1 mS/cm".formatted(text));
  }

  private FeedSheet.Correction ofPh(String asked, double measured) {
    if (!(measured >= 3 && measured <= 9)) {
      throw new FeedFault("A reservoir's pH must be 3 to 9, was %s".formatted(measured));
    }
    Composition now = PhDose.measured(full, measured, TEMPERATURE_C);
    Optional<PhDose> dose =
        PhRange.mend(now, measured, PhRange.LOW, wish.litres(), acid, TEMPERATURE_C);
    String words =
        dose.map(
                d ->
                    "Stir in %.1f mL of %s of %.0f %%, half of it first; pH goes to %.1f"
                        .formatted(
                            d.millilitres(),
                            d.bottle().reagent().plainName(),
                            d.bottle().percent(),
                            d.phLater()))
            .orElse("pH is fine between %s and %s: leave it".formatted(PhRange.LOW, PhRange.HIGH));
    return new FeedSheet.Correction(asked, words, dose);
  }

  private FeedSheet.Correction ofEc(String asked, double measuredMsCm) {
    double waterEc = Conductivity.msCm25(water, Carbon.OPEN);
    double wanted = Conductivity.msCm25(full, Carbon.OPEN);
    int factor = wish.stockFactor().orElse(USUAL_STOCK);
    EcCorrection c =
        EcCorrection.of(wish.litres(), measuredMsCm, wanted, waterEc, wanted - waterEc, factor);
    String words =
        c.waterL() > 0
            ? "Add %.1f L of water; EC goes to %.2f mS/cm".formatted(c.waterL(), wanted)
            : "Add %.0f mL of each %d-fold stock; EC goes to %.2f mS/cm"
                .formatted(c.stockMl(), factor, wanted);
    return new FeedSheet.Correction(asked, words, Optional.empty());
  }
}
