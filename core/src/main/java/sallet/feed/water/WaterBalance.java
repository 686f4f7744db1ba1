package sallet.feed.water;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sallet.feed.FeedFault;
import sallet.feed.ion.Composition;
import sallet.feed.ion.Ion;
import sallet.feed.solution.Carbon;
import sallet.feed.solution.Conductivity;
import sallet.feed.solution.Speciation;

/**
 * Turns an analysis into a water whose charges balance.
 *
 * <p>The error is (cations − anions) / (cations + anions), bicarbonate among the anions;
 * laboratories accept 5 %, Sallet refuses more than 10 %. A missing sodium or chloride is taken
 * from the balance, as most reports leave one of them out.
 */
public final class WaterBalance {
  private static final double REFUSED_ERROR = 0.10;

  /** Charge too small to judge by percent, meq/L. */
  private static final double NEGLIGIBLE_MEQ = 0.06;

  private static final double PURE_WATER_MS_CM = 0.3;

  /** Share of hardness that is calcium when only hardness is stated (common practice). */
  private static final double CALCIUM_SHARE = 0.8;

  /** No water fit for a salad bench has more of anything, mmol/L (judgement). */
  private static final double MOST_MMOL = 30;

  private static final double USUAL_PH = 7.6;

  private final WaterReport report;
  private final EnumMap<Ion, Double> mmol = new EnumMap<>(Ion.class);
  private final List<String> notes = new ArrayList<>();
  private double alkalinityMeq;

  private WaterBalance(WaterReport report) {
    this.report = report;
  }

  /**
   * The water behind a report.
   *
   * @throws FeedFault when a figure is impossible or the charges do not balance
   */
  public static SourceWater of(WaterReport report) {
    return new WaterBalance(report).water();
  }

  private SourceWater water() {
    checkFigures();
    report.entries().forEach(this::take);
    takeHardness();
    balance();
    Composition ions = new Composition(mmol);
    double ph = report.ph().orElse(USUAL_PH);
    if (report.ph().isEmpty()) {
      notes.add("No pH stated: taken as %.1f".formatted(USUAL_PH));
    }
    Composition withCarbon =
        ions.alkalinityMeq() > 0
            ? Speciation.at(25).withCarbonFor(ions, ions.alkalinityMeq(), ph)
            : ions;
    compareConductivity(withCarbon);
    return new SourceWater(report.name(), withCarbon, notes);
  }

  private void checkFigures() {
    List<String> faults = new ArrayList<>();
    report
        .entries()
        .forEach(
            (entry, value) -> {
              double amount = entry.toMmol(value.number(), value.unit());
              if (!(amount >= 0 && amount <= MOST_MMOL)) {
                faults.add(
                    "%s: %s must be 0 to %.0f mmol/L, was %s %s, which makes %.0f: check figure and unit"
                        .formatted(
                            report.name(),
                            entry.word(),
                            MOST_MMOL,
                            value.number(),
                            value.unit().symbol(),
                            amount));
              }
            });
    report
        .ph()
        .filter(ph -> !(ph >= 3 && ph <= 11))
        .ifPresent(ph -> faults.add("%s: pH must be 3 to 11, was %s".formatted(report.name(), ph)));
    report
        .ecMsCm()
        .filter(ec -> !(ec >= 0 && ec <= 10))
        .ifPresent(
            ec -> faults.add("%s: EC must be 0 to 10 mS/cm, was %s".formatted(report.name(), ec)));
    report
        .ecMsCm()
        .filter(ec -> report.pure())
        .flatMap(ec -> tooMuchForPure(report.name(), ec))
        .ifPresent(faults::add);
    if (!faults.isEmpty()) {
      throw new FeedFault(faults);
    }
  }

  private static Optional<String> tooMuchForPure(String name, double ecMsCm) {
    return ecMsCm > PURE_WATER_MS_CM
        ? Optional.of(
            "%s: rain or reverse-osmosis water has less than %.1f mS/cm, not %s mS/cm; check the unit (µS/cm?) or the filter"
                .formatted(name, PURE_WATER_MS_CM, ecMsCm))
        : Optional.empty();
  }

  /**
   * Lets a conductivity of rain or reverse-osmosis water pass.
   *
   * @throws FeedFault when no pure water has so much
   */
  public static void checkPure(String name, double ecMsCm) {
    tooMuchForPure(name, ecMsCm)
        .ifPresent(
            sentence -> {
              throw new FeedFault(sentence);
            });
  }

  private void take(WaterEntry entry, WaterReport.Value value) {
    double amount = entry.toMmol(value.number(), value.unit());
    if (entry == WaterEntry.ALKALINITY) {
      alkalinityMeq = amount;
    } else if (entry != WaterEntry.HARDNESS && mmol.putIfAbsent(entry.ion(), amount) != null) {
      throw new FeedFault(
          "%s: %s is stated twice in different forms"
              .formatted(report.name(), entry.ion().symbol()));
    }
  }

  private void takeHardness() {
    WaterReport.Value stated = report.entries().get(WaterEntry.HARDNESS);
    if (stated == null) {
      return;
    }
    double hardness = WaterEntry.HARDNESS.toMmol(stated.number(), stated.unit());
    Double calcium = mmol.get(Ion.CALCIUM);
    Double magnesium = mmol.get(Ion.MAGNESIUM);
    if (calcium == null && magnesium == null) {
      mmol.put(Ion.CALCIUM, CALCIUM_SHARE * hardness);
      mmol.put(Ion.MAGNESIUM, (1 - CALCIUM_SHARE) * hardness);
      notes.add("Hardness taken as four parts calcium and one part magnesium");
    } else if (calcium == null || magnesium == null) {
      double known = calcium == null ? magnesium == null ? 0 : magnesium : calcium;
      if (known > 1.02 * hardness) {
        throw new FeedFault(
            "%s: calcium or magnesium alone exceeds the stated hardness".formatted(report.name()));
      }
      mmol.put(calcium == null ? Ion.CALCIUM : Ion.MAGNESIUM, Math.max(0, hardness - known));
    } else if (Math.abs(calcium + magnesium - hardness) > 0.1 * hardness) {
      notes.add(
          "Calcium and magnesium make %.2f mmol/L, the stated hardness is %.2f"
              .formatted(calcium + magnesium, hardness));
    }
  }

  /** Closes the charge gap, with the ion a report usually leaves out, else within 10 %. */
  private void balance() {
    Composition ions = new Composition(mmol);
    boolean stated = report.entries().containsKey(WaterEntry.ALKALINITY);
    if (!stated && ions.alkalinityMeq() >= -NEGLIGIBLE_MEQ) {
      notes.add(
          "No alkalinity stated: taken as what balances the charges, %.2f meq/L"
              .formatted(Math.max(0, ions.alkalinityMeq())));
      alkalinityMeq = Math.max(0, ions.alkalinityMeq());
    }
    double gap = ions.alkalinityMeq() - alkalinityMeq;
    double error = gap / (ions.cationsMeq() + ions.anionsMeq() + alkalinityMeq);
    if (Math.abs(gap) < 1e-9) {
      return;
    }
    Map.Entry<Ion, Ion> missing =
        gap > 0
            ? Map.entry(Ion.CHLORIDE, Ion.OTHER_ANION)
            : Map.entry(Ion.SODIUM, Ion.OTHER_CATION);
    boolean unstated = !mmol.containsKey(missing.getKey());
    if (!unstated && Math.abs(error) > REFUSED_ERROR && Math.abs(gap) > NEGLIGIBLE_MEQ) {
      throw new FeedFault(
          "%s: the charges do not balance by %.0f %% (cations %.2f, anions with alkalinity %.2f meq/L); more than 10 %% means a wrong figure or unit"
              .formatted(
                  report.name(),
                  100 * Math.abs(error),
                  ions.cationsMeq(),
                  ions.anionsMeq() + alkalinityMeq));
    }
    Ion closing = unstated ? missing.getKey() : missing.getValue();
    mmol.merge(closing, Math.abs(gap), Double::sum);
    notes.add(
        unstated
            ? "%s is not stated: %.2f mmol/L taken from the charge balance"
                .formatted(closing.symbol(), Math.abs(gap))
            : "Charges differ by %.1f %%; closed with %.2f meq/L of %s"
                .formatted(100 * Math.abs(error), Math.abs(gap), closing.symbol()));
  }

  private void compareConductivity(Composition water) {
    report
        .ecMsCm()
        .ifPresent(
            measured -> {
              double computed = Conductivity.msCm25(water, Carbon.CLOSED);
              if (report.entries().isEmpty()) {
                throw new FeedFault(
                    "%s: EC alone does not tell what is in the water; state at least hardness and alkalinity"
                        .formatted(report.name()));
              }
              if (Math.abs(computed - measured) > 0.25 * measured + 0.03) {
                notes.add(
                    "The analysis makes %.2f mS/cm, the meter says %.2f: one of them is off"
                        .formatted(computed, measured));
              }
            });
  }
}
