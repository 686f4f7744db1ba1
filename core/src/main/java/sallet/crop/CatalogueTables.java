package sallet.crop;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Joins the tables of the catalogue: what handbooks say of a crop (catalogue.csv), which parameter
 * set, germination row and picking rule it has (crop_map.csv), the parameter sets
 * (plant_model_parameters.csv), days to emergence (germination_harrington_minges.csv), how long
 * seed keeps (seed_longevity.csv) and what else a crop is called (common_names.csv).
 */
final class CatalogueTables {
  /** Entry that stands for "does not run to seed while it is a salad crop". */
  private static final double NEVER_BOLTS_CD = 9999;

  /** Entry that stands for "margins do not burn". */
  private static final double NEVER_BURNS = 9;

  private static final String BY_AREA = "per 100 cm2: ";

  /** Catalogue columns that may hold words where a number or range is usual. */
  private static final List<String> MIXED =
      List.of(
          "spacing_cm",
          "days_sow_to_first_cut",
          "days_sow_to_full",
          "cuts",
          "yield_g_per_plant_low",
          "storage_days_4C_low",
          "storage_days_4C_high");

  private final Map<String, Table.Row> map = byName("crop_map.csv", "crop");
  private final Map<String, Table.Row> parameters = byName("plant_model_parameters.csv", "crop");
  private final Map<String, Table.Row> longevity = byName("seed_longevity.csv", "crop");
  private final List<Table.Row> names = Table.rows("common_names.csv");
  private final List<Table.Row> emergence = Table.rows("germination_harrington_minges.csv");

  /** All crops in catalogue order. */
  List<Crop> crops() {
    return Table.rows("catalogue.csv").stream().map(this::crop).toList();
  }

  /** Plants the catalogue lacks, by name, with the crop each is most like, if any. */
  Map<String, Optional<String>> relatives() {
    return names.stream()
        .filter(row -> !row.yes("same"))
        .collect(
            Collectors.toMap(
                row -> row.text("name"),
                row -> row.has("crop") ? Optional.of(row.text("crop")) : Optional.empty()));
  }

  private static Map<String, Table.Row> byName(String file, String column) {
    return Table.rows(file).stream()
        .collect(Collectors.toMap(row -> row.text(column), Function.identity()));
  }

  private Crop crop(Table.Row row) {
    Table.Row rule = required(map, row.text("crop"));
    return new Crop(
        row.text("crop"),
        alsoCalled(row.text("crop")),
        row.text("species"),
        growth(rule),
        germination(row, rule),
        seed(row, rule),
        rule.yes("plannable") ? Optional.of(harvest(rule)) : Optional.empty(),
        bolting(row),
        rule.text("why_not_plannable"),
        guide(row),
        new Crop.Sources(
            row.text("source") + "; " + row.text("known_as"),
            rule.text("known_as"),
            rule.has("parameter_set") ? growthSource(rule) : ""));
  }

  private List<String> alsoCalled(String crop) {
    return names.stream()
        .filter(row -> row.yes("same") && row.text("crop").equals(crop))
        .map(row -> row.text("name"))
        .toList();
  }

  private static Table.Row required(Map<String, Table.Row> rows, String name) {
    Table.Row row = rows.get(name);
    if (row == null) {
      throw new IllegalStateException("the crop tables hold nothing for " + name);
    }
    return row;
  }

  private String growthSource(Table.Row rule) {
    Table.Row set = required(parameters, rule.text("parameter_set"));
    String how = set.text("how").replace("README section 3", "docs/models/growth.md");
    return set.text("crop") + ": " + set.text("known_as") + "; " + how;
  }

  private Optional<PlantParameters> growth(Table.Row rule) {
    if (!rule.has("parameter_set")) {
      return Optional.empty();
    }
    PlantParameters p = parameters(required(parameters, rule.text("parameter_set")));
    return Optional.of(rule.ifNumber("DMC0_override").map(p::withDryMatterShare).orElse(p));
  }

  static PlantParameters parameters(Table.Row row) {
    return new PlantParameters(
        row.number("c"),
        row.number("mu"),
        row.number("Tb"),
        row.number("To1"),
        row.number("To2"),
        row.number("Tc"),
        row.number("W0"),
        row.number("LA0"),
        row.number("tau"),
        row.number("lam"),
        row.number("SLA0"),
        row.number("sD"),
        row.number("Dref"),
        row.number("DMC0"),
        row.number("dD"),
        row.number("dT"),
        row.number("Y"),
        row.number("rmax"),
        row.number("q"),
        row.number("gsc"),
        row.number("ms"),
        row.number("mr"),
        row.number("Tph"),
        row.number("phyl"));
  }

  /** Crops without a thermal time of their own get the one that gives their days at 20 °C. */
  private Germination germination(Table.Row row, Table.Row rule) {
    double baseC = rule.ifNumber("germ_Tb_C").orElse(row.number("germ_Tb_C"));
    double optimumC = row.number("germ_Topt_high_C");
    double ceilingC = row.number("germ_Tmax_C");
    double thermalTimeCd =
        rule.ifNumber("germ_theta_Cd")
            .orElse(
                row.number("days_to_emergence_20C")
                    * Germination.degreesAt(20, baseC, optimumC, ceilingC));
    return new Germination(
        emergenceDays(rule.text("germ_table_crop")),
        baseC,
        optimumC,
        ceilingC,
        thermalTimeCd,
        rule.ifNumber("germ_time_factor").orElse(1.0));
  }

  private NavigableMap<Double, Double> emergenceDays(String tableCrop) {
    NavigableMap<Double, Double> days = new TreeMap<>();
    for (Table.Row row : emergence) {
      if (row.text("crop").equals(tableCrop)) {
        row.ifNumber("days_to_emergence").ifPresent(d -> days.put(row.number("T_C"), d));
      }
    }
    return days;
  }

  private Seed seed(Table.Row row, Table.Row rule) {
    return new Seed(
        row.number("germ_Tb_C"),
        new Span(row.number("germ_Topt_low_C"), row.number("germ_Topt_high_C")),
        row.number("germ_Tmax_C"),
        normalSeedlings(rule.text("germ_table_crop")),
        rule.ifNumber("germ_T50_inhibition_C"),
        row.ifNumber("legal_min_germ_percent").map(percent -> percent / 100),
        Optional.ofNullable(longevity.get(row.text("crop")))
            .map(years -> years.number("keeps_years")));
  }

  private NavigableMap<Double, Double> normalSeedlings(String tableCrop) {
    NavigableMap<Double, Double> shares = new TreeMap<>();
    for (Table.Row row : emergence) {
      if (row.text("crop").equals(tableCrop)) {
        row.ifNumber("normal_seedlings_percent")
            .ifPresent(percent -> shares.put(row.number("T_C"), percent / 100));
      }
    }
    return shares;
  }

  private static HarvestRule harvest(Table.Row rule) {
    return new HarvestRule(
        rule.yes("leaf_pick"),
        rule.number("lift_from_g"),
        rule.count("over_age_d"),
        rule.count("ageing_from_d"),
        rule.number("ageing_per_week"),
        rule.count("fridge_carry_d"),
        rule.number("edible_share"),
        rule.count("plants_per_pot"),
        rule.number("p_use"));
  }

  private static Optional<Bolting> bolting(Table.Row row) {
    return row.ifNumber("bolt_B50_Cd")
        .filter(sum -> sum < NEVER_BOLTS_CD)
        .map(sum -> new Bolting(sum, row.number("bolt_critical_photoperiod_h")));
  }

  private static CropGuide guide(Table.Row row) {
    return new CropGuide(
        row.text("group"),
        row.ifNumber("legal_min_germ_percent"),
        row.has("needs_light_or_dark") ? row.text("needs_light_or_dark") : "",
        row.ifSpan("nursery_days"),
        row.ifSpan("spacing_cm"),
        new Span(row.number("DLI_seedling_min"), row.number("DLI_seedling_target")),
        new Span(row.number("DLI_grow_min"), row.number("DLI_grow_max")),
        row.number("DLI_grow_target"),
        new Span(row.number("EC_min_mS_cm"), row.number("EC_max_mS_cm")),
        new Span(row.number("pH_min"), row.number("pH_max")),
        row.number("T_day_C"),
        row.number("T_night_C"),
        row.ifSpan("days_sow_to_baby_leaf"),
        row.ifSpan("days_sow_to_first_cut"),
        row.ifSpan("days_sow_to_full"),
        row.ifSpan("cut_interval_d"),
        row.ifSpan("cuts"),
        row.ifSpan("yield_g_per_plant_low", "yield_g_per_plant_high"),
        row.ifNumber("yield_g_per_plant_low")
            .flatMap(x -> row.ifNumber("yield_g_per_plant_typical")),
        tray(row),
        row.has("bolting_risk") ? row.text("bolting_risk") : "",
        row.has("tipburn_risk") ? row.text("tipburn_risk") : "",
        row.ifNumber("tipburn_k").filter(factor -> factor < NEVER_BURNS),
        row.ifSpan("storage_days_4C_low", "storage_days_4C_high"),
        remarks(row));
  }

  /** Yields of tray crops are written by area: "per 100 cm2: 20", and so for typical and high. */
  private static Optional<TrayYield> tray(Table.Row row) {
    String low = row.text("yield_g_per_plant_low");
    if (!low.startsWith(BY_AREA)) {
      return Optional.empty();
    }
    return Optional.of(
        new TrayYield(
            Double.parseDouble(low.substring(BY_AREA.length())),
            row.number("yield_g_per_plant_typical"),
            row.number("yield_g_per_plant_high")));
  }

  private static List<String> remarks(Table.Row row) {
    List<String> remarks = new ArrayList<>();
    for (String column : MIXED) {
      if (row.has(column) && row.ifSpan(column).isEmpty()) {
        remarks.add(column + ": " + row.text(column));
      }
    }
    return remarks;
  }
}
