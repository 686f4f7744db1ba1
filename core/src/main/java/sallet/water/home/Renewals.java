package sallet.water.home;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sallet.feed.FeedFault;
import sallet.feed.UnsafeDose;
import sallet.feed.home.FeedSheet;
import sallet.feed.home.FeedWish;
import sallet.feed.home.HomeFeed;
import sallet.feed.ion.Composition;
import sallet.feed.ion.Ion;
import sallet.feed.reservoir.IonLedger;
import sallet.feed.reservoir.UptakePrior;
import sallet.household.Household;

/** When the books of the ions say that the solution is spent, if it is fresh today. */
final class Renewals {
  private static final int LONGEST_DAYS = 60;
  private static final int TOP_UP_DAYS = 7;

  private Renewals() {}

  /**
   * The renewal of a tank that is topped up every week to its conductivity.
   *
   * @param drunkL water through the plants each day, L
   * @param lossL all water lost each day, L
   */
  static Optional<WaterSheet.Renewal> of(
      Household household, LocalDate day, double drunkL, double lossL) {
    double litres = household.reservoir().volumeL();
    if (lossL * TOP_UP_DAYS > 0.9 * litres) {
      return Optional.empty();
    }
    try {
      FeedSheet sheet =
          HomeFeed.sheet(
              household.feed(),
              new FeedWish(litres, Optional.empty(), Optional.empty(), Optional.empty(), 0, 1));
      return renewal(sheet, litres, day, drunkL, lossL);
    } catch (FeedFault | UnsafeDose e) {
      return Optional.empty();
    }
  }

  private static Optional<WaterSheet.Renewal> renewal(
      FeedSheet sheet, double litres, LocalDate day, double drunkL, double lossL) {
    UptakePrior plants = UptakePrior.find("lettuce").orElseThrow();
    Composition water = sheet.water().composition();
    Composition salts = without(sheet.perLitre(), water);
    IonLedger ledger = IonLedger.fresh(sheet.perLitre(), litres);
    double wanted = ledger.ecMsCm();
    double topUpL = TOP_UP_DAYS * lossL;
    for (int d = TOP_UP_DAYS; d <= LONGEST_DAYS; d += TOP_UP_DAYS) {
      IonLedger low =
          ledger.drunk(TOP_UP_DAYS, TOP_UP_DAYS * drunkL, TOP_UP_DAYS * (lossL - drunkL), plants);
      double strength = IonLedger.topUpStrength(low, water, salts, topUpL, wanted);
      ledger = low.toppedUp(water.plus(salts.times(strength)), topUpL);
      List<String> why = ledger.reasonsToRenew();
      if (!why.isEmpty()) {
        return Optional.of(new WaterSheet.Renewal(day.plusDays(d), why));
      }
    }
    return Optional.empty();
  }

  /** What the salts brought; acid may have driven some of the water's carbonate out. */
  private static Composition without(Composition solution, Composition water) {
    Map<Ion, Double> salts = new EnumMap<>(Ion.class);
    solution.mmol().forEach((ion, mmol) -> salts.put(ion, Math.max(0, mmol - water.mmol(ion))));
    return new Composition(salts);
  }
}
