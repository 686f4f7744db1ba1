package sallet.feed.home;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import sallet.feed.FeedFault;
import sallet.feed.dose.PhDose;
import sallet.feed.ion.Composition;
import sallet.feed.meter.MeterReading;
import sallet.feed.product.Reagent;
import sallet.feed.reservoir.EcCorrection;
import sallet.feed.solution.Carbon;
import sallet.feed.solution.Conductivity;

/** Mends one measured value of the running reservoir. */
final class Correcting {
  private static final Pattern PH =
      Pattern.compile("(?i)\\s*pH\\s*=?\\s*([0-9]+(?:\\.[0-9]+)?)\\s*");
  private static final Pattern EC = Pattern.compile("(?i)\\s*EC\\s*=?\\s*(.*)");

  /** In the middle of what leaf crops like (extension tables 5.5 to 6.2). */
  private static final double WANTED_PH = 5.8;

  private static final double FINE_LOW = 5.5;
  private static final double FINE_HIGH = 6.3;
  private static final double ACID_PERCENT = 5;
  private static final double BASE_PERCENT = 2;
  private static final double TEMPERATURE_C = 20;
  private static final int USUAL_STOCK = 100;

  private Correcting() {}

  static FeedSheet.Correction of(
      String text, Composition full, Composition water, double litres, FeedWish wish) {
    Matcher ph = PH.matcher(text);
    if (ph.matches()) {
      return ofPh(text.strip(), Double.parseDouble(ph.group(1)), full, litres);
    }
    Matcher ec = EC.matcher(text);
    if (ec.matches()) {
      return ofEc(text.strip(), ec.group(1), full, water, litres, wish);
    }
    throw new FeedFault(
        "Cannot read \"%s\"; write what was measured, like pH 6.9 or EC 1.1 mS/cm".formatted(text));
  }

  private static FeedSheet.Correction ofPh(
      String asked, double measured, Composition full, double litres) {
    if (!(measured >= 3 && measured <= 9)) {
      throw new FeedFault("A reservoir's pH must be 3 to 9, was %s".formatted(measured));
    }
    if (measured >= FINE_LOW && measured <= FINE_HIGH) {
      return new FeedSheet.Correction(
          asked,
          "pH is fine between %s and %s: leave it".formatted(FINE_LOW, FINE_HIGH),
          Optional.empty());
    }
    boolean high = measured > WANTED_PH;
    Reagent reagent = high ? Reagent.PHOSPHORIC_ACID : Reagent.POTASSIUM_HYDROXIDE;
    double percent = high ? ACID_PERCENT : BASE_PERCENT;
    Composition now = PhDose.measured(full, measured, TEMPERATURE_C);
    PhDose dose = PhDose.toPh(now, litres, WANTED_PH, reagent, percent, TEMPERATURE_C);
    return new FeedSheet.Correction(
        asked,
        "Stir in %.1f mL of %s of %.0f %%, half of it first; pH goes to %.1f"
            .formatted(dose.millilitres(), reagent.plainName(), percent, dose.phLater()),
        Optional.of(dose));
  }

  private static FeedSheet.Correction ofEc(
      String asked,
      String reading,
      Composition full,
      Composition water,
      double litres,
      FeedWish wish) {
    MeterReading read = MeterReading.parse(reading);
    if (read.meanings().size() > 1) {
      throw new FeedFault(
          "\"%s\" could mean several conductivities; ask with --reading first, then correct in mS/cm"
              .formatted(reading));
    }
    double waterEc = Conductivity.msCm25(water, Carbon.OPEN);
    double wanted = Conductivity.msCm25(full, Carbon.OPEN);
    int factor = wish.stockFactor().orElse(USUAL_STOCK);
    EcCorrection c =
        EcCorrection.of(
            litres, read.meanings().get(0).msCm(), wanted, waterEc, wanted - waterEc, factor);
    String words =
        c.waterL() > 0
            ? "Add %.1f L of water; EC goes to %.2f mS/cm".formatted(c.waterL(), wanted)
            : "Add %.0f mL of each %d-fold stock; EC goes to %.2f mS/cm"
                .formatted(c.stockMl(), factor, wanted);
    return new FeedSheet.Correction(asked, words, Optional.empty());
  }
}
