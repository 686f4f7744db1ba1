package sallet.crop;

import static java.util.Map.entry;

import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.OptionalDouble;
import java.util.TreeMap;
import sallet.cases.CaseFolder;
import sallet.cases.CaseRow;
import sallet.cases.Checks;
import sallet.cases.Outcome;
import sallet.cases.RowCheck;
import sallet.crop.risk.NitrateLimits;

/** Germination, seed counts, risks and the plant model against their check files. */
public final class CropChecks implements Checks {
  private static final String EMERGENCE = "crop/germination_harrington_minges.csv";
  private static final String THERMAL_TIME = "crop/germination_thermal_time.csv";

  private final PlantRuns runs = new PlantRuns();
  private final TwoStateChecks twoState = new TwoStateChecks();
  private final TomatoChecks tomato = new TomatoChecks();

  @Override
  public Map<String, RowCheck> byFile() {
    return Map.ofEntries(
        entry(EMERGENCE, CropChecks::tabulatedEmergence),
        entry(THERMAL_TIME, CropChecks::thermalTimeFit),
        entry("crop/germination_checks.csv", CropChecks::thermalTime),
        entry("crop/germination_standards_7cfr201_31.csv", CropChecks::germinationStandard),
        entry(PublishedYields.FILE, PublishedYields::check),
        entry("crop/nitrate_limits_eu.csv", CropChecks::nitrateLimit),
        entry("crop/servings.csv", CropChecks::serving),
        entry("crop/storage_life.csv", CropChecks::storageLife),
        entry("crop/seed_count_checks.csv", CropChecks::seedCount),
        entry("crop/risk_checks.csv", RiskChecks::check),
        entry("crop/vanhenten_rates.csv", TwoStateChecks::rates),
        entry("crop/vanhenten_scenarios.csv", TwoStateChecks::hasTrajectory),
        entry("crop/vanhenten_trajectories.csv", twoState::trajectory),
        entry("crop/tomato_reduced_model.csv", tomato::check),
        entry("crop/plant_model_parameters.csv", CropChecks::parameters),
        entry("crop/plant_model_scenarios.csv", runs::hasTrajectory),
        entry("crop/plant_model_trajectories.csv", runs::check));
  }

  /** The table is returned exactly at its points; where it says NG, nothing emerges. */
  private static List<Outcome> tabulatedEmergence(CaseRow row, CaseFolder folder) {
    if (!row.has("days_to_emergence")) {
      return List.of();
    }
    OptionalDouble ours = tabulated(row.text("crop"), folder).daysAt(row.number("T_C"));
    if (!isNumber(row, "days_to_emergence")) {
      return List.of(Outcome.same("emerges", "false", Boolean.toString(ours.isPresent())));
    }
    return List.of(
        Outcome.number(
            "days to emergence", row.number("days_to_emergence"), ours.orElse(Double.NaN), 1e-9));
  }

  /**
   * The fit misses the table by its stated error at most, in its range. Base, sum and error are
   * printed with two, one and two decimals: their rounding is the tolerance.
   */
  private static List<Outcome> thermalTimeFit(CaseRow row, CaseFolder folder) {
    double baseC = row.number("Tb_C");
    double thermalTimeCd = row.number("theta_Cd");
    Germination fit = thermal(baseC, thermalTimeCd);
    double worst = 0;
    double rounding = 0;
    for (Map.Entry<Double, Double> point :
        table(row.text("crop"), folder)
            .subMap(row.number("T_min_fit"), true, row.number("T_max_fit"), true)
            .entrySet()) {
      double days = fit.daysAt(point.getKey()).orElseThrow();
      worst = Math.max(worst, Math.abs(days - point.getValue()));
      rounding =
          Math.max(
              rounding, days * (0.05 / thermalTimeCd + 0.005 / (point.getKey() - baseC)) + 0.005);
    }
    return List.of(
        Outcome.number(
            "largest error of the fit, days", row.number("max_abs_error_days"), worst, rounding));
  }

  private static List<Outcome> thermalTime(CaseRow row, CaseFolder folder) {
    Germination germination = thermal(row.number("Tb_C"), row.number("theta_Cd"));
    OptionalDouble days = germination.daysAt(row.number("T_C"));
    return List.of(
        Outcome.number(
            "days to emergence",
            row.number("expected_days"),
            days.orElse(Double.NaN),
            row.number("tolerance")));
  }

  /** Data: every kind has a share between 1 and 99 percent. */
  private static List<Outcome> germinationStandard(CaseRow row, CaseFolder folder) {
    double percent = row.number("minimum_germination_percent");
    return List.of(
        Outcome.same("a share of seed", "true", Boolean.toString(percent > 0 && percent < 100)));
  }

  /** Every maximum of the file is the one Sallet shows. */
  private static List<Outcome> nitrateLimit(CaseRow row, CaseFolder folder) {
    double ours =
        NitrateLimits.all().stream()
            .filter(max -> max.product().equals(row.text("product")))
            .filter(max -> max.growing().equals(row.text("growing")))
            .filter(max -> max.period().equals(row.text("harvest_period")))
            .mapToDouble(NitrateLimits.Maximum::mgPerKg)
            .findFirst()
            .orElse(Double.NaN);
    return List.of(
        Outcome.number(
            "largest nitrate, mg/kg", row.number("max_mg_NO3_per_kg_fresh"), ours, 1e-9));
  }

  /** Grams of the servings that Sallet uses; the other rows are for comparison. */
  private static List<Outcome> serving(CaseRow row, CaseFolder folder) {
    String item = row.text("item");
    double ours =
        item.startsWith("lettuce green leaf")
            ? Servings.CUP_G
            : item.startsWith("one portion of vegetables")
                ? Servings.PORTION_G
                : item.startsWith("side salad")
                    ? Servings.SIDE_SALAD_G
                    : item.startsWith("main-dish salad") ? Servings.MAIN_SALAD_G : Double.NaN;
    return Double.isNaN(ours)
        ? List.of()
        : List.of(Outcome.number("grams", row.number("grams"), ours, 1e-9));
  }

  /** Data: days do not fall from low to high, at a temperature of a store. */
  private static List<Outcome> storageLife(CaseRow row, CaseFolder folder) {
    double low = row.number("life_days_low");
    boolean sound = low > 0 && low <= row.number("life_days_high") && row.number("T_C") >= 0;
    return List.of(Outcome.same("a range of days", "true", Boolean.toString(sound)));
  }

  private static List<Outcome> seedCount(CaseRow row, CaseFolder folder) {
    double p = row.number("p_or_a");
    double certainty = row.number("P_or_b");
    double ours =
        switch (row.text("check")) {
          case "seeds_per_cell" -> SeedCount.seedsPerCell(p, certainty);
          case "cells_to_sow_one_seed_each" ->
              SeedCount.cellsForKnownShare((int) row.number("k_or_data"), p, certainty);
          case "beta_binomial_posterior_mean" -> {
            String[] data = row.text("k_or_data").split(" of ", -1);
            yield new SeedLot(p, certainty)
                .seen(Integer.parseInt(data[0]), Integer.parseInt(data[1]))
                .mean();
          }
          default -> Double.NaN;
        };
    return List.of(
        Outcome.number(row.text("check"), row.number("expected"), ours, row.number("tolerance")));
  }

  /** Data: every parameter set of the file is a valid one. */
  private static List<Outcome> parameters(CaseRow row, CaseFolder folder) {
    return List.of(
        Outcome.number("yield of growth", row.number("Y"), PlantRuns.plant(row).growthYield(), 0));
  }

  private static Germination tabulated(String crop, CaseFolder folder) {
    CaseRow fit =
        folder.rows(THERMAL_TIME).stream()
            .filter(row -> row.text("crop").equals(crop))
            .findFirst()
            .orElseThrow(() -> new RowCheck.Skipped(THERMAL_TIME + " has no " + crop));
    return new Germination(
        table(crop, folder), fit.number("Tb_C"), 60, 70, fit.number("theta_Cd"), 1);
  }

  private static NavigableMap<Double, Double> table(String crop, CaseFolder folder) {
    NavigableMap<Double, Double> days = new TreeMap<>();
    for (CaseRow row : folder.rows(EMERGENCE)) {
      if (row.text("crop").equals(crop) && isNumber(row, "days_to_emergence")) {
        days.put(row.number("T_C"), row.number("days_to_emergence"));
      }
    }
    return days;
  }

  /** Thermal time whose best temperature lies above every temperature checked. */
  private static Germination thermal(double baseC, double thermalTimeCd) {
    return new Germination(new TreeMap<>(), baseC, 60, 70, thermalTimeCd, 1);
  }

  private static boolean isNumber(CaseRow row, String column) {
    return row.has(column) && !row.text(column).equals("NG");
  }
}
