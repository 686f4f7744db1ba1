package sallet.feed.home;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import sallet.feed.FeedFault;
import sallet.feed.dose.Bottle;
import sallet.feed.dose.PhDose;
import sallet.feed.dose.PhRange;
import sallet.feed.ion.Composition;
import sallet.feed.recipe.Recipe;
import sallet.feed.recipe.WeighingScale;
import sallet.feed.reservoir.EcCorrection;
import sallet.feed.solution.Carbon;
import sallet.feed.solution.Conductivity;
import sallet.feed.stock.TraceStock;
import sallet.household.FeedShelf;

/** Mends one measured value of the running reservoir. */
final class Correcting {
  private static final Pattern PH =
      Pattern.compile("(?i)\\s*pH\\s*=?\\s*([0-9]+(?:\\.[0-9]+)?)\\s*");
  private static final Pattern EC = Pattern.compile("(?i)\\s*EC\\s*=?\\s*(.*)");

  private static final double TEMPERATURE_C = 20;
  private static final int USUAL_STOCK = 100;

  private final FeedWish wish;
  private final Mixture mixture;
  private final Optional<TraceStock> traceStock;
  private final HomeMeter meter;
  private final Bottle acid;
  private final WeighingScale scale;

  Correcting(
      FeedShelf shelf,
      FeedWish wish,
      Mixture mixture,
      Optional<TraceStock> traceStock,
      HomeMeter meter) {
    this.wish = wish;
    this.mixture = mixture;
    this.traceStock = traceStock;
    this.meter = meter;
    acid = HomeShelf.acid(shelf);
    scale = HomeShelf.scale(shelf);
  }

  /**
   * What mends a reservoir.
   *
   * @param text what was measured
   * @param full the solution as mixed, per litre
   */
  FeedSheet.Correction of(String text, Composition full) {
    Matcher ph = PH.matcher(text);
    if (ph.matches()) {
      return ofPh(text.strip(), Double.parseDouble(ph.group(1)), full);
    }
    Matcher ec = EC.matcher(text);
    if (ec.matches()) {
      return ofEc(text.strip(), meter.sure(ec.group(1)), full);
    }
    throw new FeedFault(
        "Cannot read \"%s\"; write what was measured, like pH 6.9 or EC 1.1 mS/cm".formatted(text));
  }

  private FeedSheet.Correction ofPh(String asked, double measured, Composition full) {
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
    return new FeedSheet.Correction(asked, words, dose, Optional.empty(), List.of(), 0);
  }

  private FeedSheet.Correction ofEc(String asked, double measuredMsCm, Composition full) {
    double waterEc = Conductivity.msCm25(mixture.treated(), Carbon.OPEN);
    double wanted = Conductivity.msCm25(full, Carbon.OPEN);
    int factor = wish.stockFactor().orElse(USUAL_STOCK);
    EcCorrection c =
        EcCorrection.of(wish.litres(), measuredMsCm, wanted, waterEc, wanted - waterEc, factor);
    if (c.waterL() > 0) {
      return new FeedSheet.Correction(
          asked, thin(c, wanted), Optional.empty(), Optional.of(c), List.of(), 0);
    }
    double more = c.strengthWanted() - c.strengthNow();
    List<Recipe.Dose> salts =
        mixture.main().doses().stream()
            .map(d -> new Recipe.Dose(d.product(), scale.round(more * d.amount())))
            .filter(d -> d.amount() >= scale.smallestG())
            .toList();
    double traceMl =
        traceStock.map(t -> t.millilitresPerLitre() * more * wish.litres()).orElse(0.0);
    String words =
        "Add %.0f mL of each %d-fold stock, or the salts below; EC goes to %.2f mS/cm"
            .formatted(c.stockMl(), factor, wanted);
    return new FeedSheet.Correction(asked, words, Optional.empty(), Optional.of(c), salts, traceMl);
  }

  private String thin(EcCorrection c, double wantedMsCm) {
    double replaced = wish.litres() * (1 - c.strengthWanted() / c.strengthNow());
    return "Add %.1f L of water, or in a full reservoir take out %.1f L and pour in as much water; EC goes to %.2f mS/cm"
        .formatted(c.waterL(), replaced, wantedMsCm);
  }
}
