package sallet.water;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import sallet.cases.CaseFolder;
import sallet.cases.CaseRow;
import sallet.cases.Outcome;
import sallet.cases.RowCheck;
import sallet.cost.Electricity;
import sallet.units.Dimension;
import sallet.units.Quantity;
import sallet.units.Unit;
import sallet.water.caution.CleaningDose;
import sallet.water.caution.FloorLoad;
import sallet.water.learn.Outliers;
import sallet.water.learn.UseFactor;
import sallet.water.reservoir.Autonomy;
import sallet.water.reservoir.Demand;
import sallet.water.reservoir.Oxygen;
import sallet.water.reservoir.Salinity;

/** The reservoir, its salt and oxygen, what readings teach, and the figures of cautions. */
final class TankChecks {
  /** Energy of one head in a greenhouse, the sun's with it, kWh. Graamans et al. 2017 sec. 6.3. */
  private static final double WITH_SUN_KWH = 8.08;

  private TankChecks() {}

  static Map<String, RowCheck> byFile() {
    return Map.of(
        "water/reservoir.csv", TankChecks::reservoir,
        "water/oxygen.csv", TankChecks::oxygen,
        "water/sensors_safety.csv", TankChecks::sensorsAndSafety,
        "water/cost.csv", TankChecks::cost);
  }

  private static List<Outcome> reservoir(CaseRow row, CaseFolder folder) {
    double ours =
        switch (row.text("quantity")) {
          case "EC_after" ->
              Salinity.after(
                  row.number("EC0"),
                  row.number("V0_L"),
                  row.number("V_L"),
                  row.number("cu_EC"),
                  row.number("f_transp"));
          case "EC_after_topup" ->
              Salinity.mixed(
                  row.number("EC0"),
                  row.number("V_L"),
                  row.number("topup_EC"),
                  row.number("topup_L"));
          case "EC_start_allowed" ->
              Salinity.highestStart(
                  row.number("ECmax"),
                  row.number("V0_L"),
                  row.number("V_L"),
                  row.number("cu_EC"),
                  row.number("f_transp"));
          case "days_autonomy" ->
              Autonomy.days(row.number("E0_L_d"), row.number("r_per_d"), row.number("Vuse_L"));
          case "probability_lasts" -> demand(row).lasts(row.number("Vuse_L"));
          case "volume_for_95pct_L" -> demand(row).litresFor(0.95);
          case "kE_posterior_median" -> learned(row).median();
          case "kE_posterior_sd_log" -> learned(row).logSd();
          default -> throw new IllegalArgumentException("unknown " + row.text("quantity"));
        };
    return Compare.number(row, ours);
  }

  private static Demand demand(CaseRow row) {
    return new Demand(row.number("median_L"), row.number("sigma"));
  }

  private static UseFactor learned(CaseRow row) {
    return new UseFactor(row.number("prior_median"), row.number("prior_sd"), 0)
        .after(numbers(row.text("ratios")), row.number("obs_sd"));
  }

  private static List<Double> numbers(String text) {
    return Arrays.stream(text.split(" ", -1)).map(Double::valueOf).toList();
  }

  private static List<Outcome> oxygen(CaseRow row, CaseFolder folder) {
    return Compare.number(
        row,
        Oxygen.saturationMgL(row.number("T_C"), row.number("P_mmHg"), row.number("salinity_psu")));
  }

  private static List<Outcome> sensorsAndSafety(CaseRow row, CaseFolder folder) {
    return switch (row.text("quantity")) {
      case "convert" -> Compare.number(row, converted(row));
      case "hampel_flags" ->
          Compare.word(
              row,
              Outliers.flags(numbers(row.text("series")), row.number("k"), 0).stream()
                  .map(flag -> flag ? "1" : "0")
                  .collect(Collectors.joining(" ")));
      case "chlorine_ppm" ->
          Compare.number(
              row,
              CleaningDose.chlorineMgL(
                  row.number("mL"), row.number("L"), row.number("percent_wv")));
      case "floor_load_kN_m2" ->
          Compare.number(row, FloorLoad.kNPerM2(row.number("L_res"), row.number("area_m2")));
      case "psf_to_kN_m2" ->
          Compare.number(row, FloorLoad.kNPerM2(row.number("psf") * 0.45359237, 0.3048 * 0.3048));
      default -> throw new IllegalArgumentException("unknown " + row.text("quantity"));
    };
  }

  /** The dimension is the one that knows both units. */
  private static double converted(CaseRow row) {
    Dimension dimension =
        Arrays.stream(Dimension.values())
            .filter(d -> d.unit(row.text("unit_in")).isPresent())
            .filter(d -> d.unit(row.text("unit_out")).isPresent())
            .findFirst()
            .orElseThrow();
    String written = row.text("value") + " " + row.text("unit_in");
    Unit out = dimension.unit(row.text("unit_out")).orElseThrow();
    return out.fromBase(Quantity.parse(written, dimension).inBase());
  }

  private static List<Outcome> cost(CaseRow row, CaseFolder folder) {
    double ours =
        switch (row.text("quantity")) {
          case "energy_kWh" -> Electricity.kwh(row.number("watts"), row.number("hours"));
          case "cost" ->
              Electricity.kwh(row.number("watts"), row.number("hours"))
                  * row.number("price_per_kWh");
          case "lamp_kWh_per_kg" ->
              Electricity.lampKwhPerKg(
                  row.number("efficacy_umol_J"), row.number("capture"), row.number("LUE_g_mol"));
          case "price_per_kg" -> row.number("lb_price") / 0.45359237;
          case "kWh_per_kg" ->
              Electricity.kwhPerKg(publishedKwh(row.text("source")), row.number("mass_kg"));
          case "kWh_per_kg_greenhouse_incl_sun" ->
              Electricity.kwhPerKg(WITH_SUN_KWH, row.number("mass_kg"));
          default -> throw new IllegalArgumentException("unknown " + row.text("quantity"));
        };
    return Compare.number(row, ours);
  }

  private static double publishedKwh(String source) {
    return source.contains("kJ/kg")
        ? Double.parseDouble(source.replaceAll(".*: ([\\d ]+) \\+-.*", "$1").replace(" ", ""))
            / 3600
        : Double.parseDouble(source.replaceAll(".*: ([\\d.]+) kWh.*", "$1"));
  }
}
