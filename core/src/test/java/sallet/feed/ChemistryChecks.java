package sallet.feed;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import sallet.cases.CaseFolder;
import sallet.cases.CaseRow;
import sallet.cases.Outcome;
import sallet.cases.RowCheck;
import sallet.feed.ion.Composition;
import sallet.feed.ion.Ion;
import sallet.feed.solution.Apatite;
import sallet.feed.solution.Carbon;
import sallet.feed.solution.Carbonate;
import sallet.feed.solution.Conductivity;
import sallet.feed.solution.GypsumSolubility;
import sallet.feed.solution.Mineral;
import sallet.feed.solution.SolutionState;
import sallet.feed.solution.Speciation;

/**
 * Equilibrium chemistry against an independent public-domain geochemistry code, the international
 * conductivity standards and published constants, as each row's source says.
 */
final class ChemistryChecks {
  private ChemistryChecks() {}

  static final Map<String, Ion> IONS =
      Map.ofEntries(
          Map.entry("K", Ion.POTASSIUM),
          Map.entry("Na", Ion.SODIUM),
          Map.entry("NH4", Ion.AMMONIUM),
          Map.entry("Ca", Ion.CALCIUM),
          Map.entry("Mg", Ion.MAGNESIUM),
          Map.entry("NO3", Ion.NITRATE),
          Map.entry("Cl", Ion.CHLORIDE),
          Map.entry("SO4", Ion.SULFATE),
          Map.entry("S", Ion.SULFATE),
          Map.entry("P", Ion.PHOSPHATE),
          Map.entry("P_total", Ion.PHOSPHATE));

  private static final Pattern BETWEEN_PHS = Pattern.compile("from pH ([\\d.]+) to ([\\d.]+)");
  private static final Pattern STEINER_OR_OTHER = Pattern.compile("check_saturation.csv (\\S+)\\)");
  private static final Pattern GYPSUM_IN =
      Pattern.compile("gypsum_in_(?:(water)|(\\w+?)_(\\d+)mM) at (\\d+) C");

  static Map<String, RowCheck> byFile() {
    return Map.of(
        "feed/check_constants.csv", ChemistryChecks::constant,
        "feed/check_ec_ph.csv", ChemistryChecks::ecAndPh,
        "feed/check_acid_titration.csv", ChemistryChecks::titration,
        "feed/check_saturation.csv", ChemistryChecks::saturation,
        "feed/check_base_demand.csv", ChemistryChecks::baseDemand,
        "feed/check_gypsum.csv", ChemistryChecks::gypsum);
  }

  private static List<Outcome> constant(CaseRow row, CaseFolder folder) {
    double t = Double.parseDouble(row.text("input").replace("C", "").strip());
    String quantity = row.text("quantity").replace("log10 ", "");
    double ours =
        switch (quantity) {
          case "K1" -> Carbonate.logK1(t);
          case "K2" -> Carbonate.logK2(t);
          case "KH" -> Carbonate.logHenry(t);
          case "Kw" -> Carbonate.logWater(t);
          default -> throw new IllegalArgumentException("unknown constant " + quantity);
        };
    return List.of(Tolerance.compare(row, ours));
  }

  private static List<Outcome> ecAndPh(CaseRow row, CaseFolder folder) {
    Composition totals = Composition.EMPTY;
    for (String column : List.of("K", "Na", "NH4", "Ca", "Mg", "NO3", "Cl", "SO4", "P_total")) {
      totals = totals.with(ChemistryChecks.ion(column), row.number(column));
    }
    Speciation model = Speciation.at(row.number("T_C"));
    SolutionState state;
    if (row.text("carbon").startsWith("open")) {
      double log10Atm = Double.parseDouble(row.text("carbon").replaceAll(".*= *", ""));
      state = model.solve(totals, new Carbon.Open(log10Atm));
    } else {
      double ph = row.number("pH_given");
      if (row.has("alkalinity_meq")) {
        totals = model.withCarbonFor(totals, row.number("alkalinity_meq"), ph);
      }
      state = model.solveAtPh(totals, Carbon.CLOSED, ph);
    }
    List<Outcome> outcomes = new ArrayList<>();
    outcomes.add(
        Outcome.relative(
            "EC, uS/cm",
            row.number("expected_EC_uScm_at_T"),
            1000 * Conductivity.msCm(state),
            row.number("tol_pct") / 100));
    outcomes.add(
        Outcome.relative(
            "ionic strength, mol/kg",
            row.number("expected_ionic_strength_mol"),
            state.ionicStrengthMol(),
            row.number("tol_I_pct") / 100));
    if (row.has("expected_pH")) {
      outcomes.add(
          Outcome.number("pH", row.number("expected_pH"), state.ph(), row.number("tol_pH")));
    }
    return outcomes;
  }

  private static List<Outcome> titration(CaseRow row, CaseFolder folder) {
    Speciation model = Speciation.at(row.number("T_C"));
    Composition water =
        model.withCarbonFor(
            totals(row.text("water_totals_mmol_per_kg")),
            row.number("alkalinity0_meq"),
            row.number("pH0"));
    double dose = row.number("acid_dose_mmol_per_kg");
    Ion anion =
        switch (row.text("acid")) {
          case "HNO3" -> Ion.NITRATE;
          case "H2SO4" -> Ion.SULFATE;
          case "H3PO4" -> Ion.PHOSPHATE;
          case "HCl" -> Ion.CHLORIDE;
          case "citric" -> Ion.CITRATE;
          default -> throw new IllegalArgumentException("unknown acid " + row.text("acid"));
        };
    Carbon carbon =
        row.text("open_or_closed_to_CO2").startsWith("open") ? Carbon.OPEN : Carbon.CLOSED;
    SolutionState state = model.solve(water.plus(Composition.of(anion, dose)), carbon);
    return List.of(
        Outcome.number("pH", row.number("expected_pH"), state.ph(), row.number("tol_pH")),
        Outcome.number(
            "alkalinity, meq/L",
            row.number("expected_alkalinity_meq"),
            state.alkalinityMeq(),
            0.005),
        Outcome.relative(
            "EC, uS/cm",
            row.number("expected_EC_uScm"),
            1000 * Conductivity.msCm(state),
            row.number("tol_EC_pct") / 100));
  }

  private static List<Outcome> saturation(CaseRow row, CaseFolder folder) {
    SolutionState state =
        Speciation.at(row.number("T_C"))
            .solveAtPh(totals(row.text("totals_mmol_per_kg")), Carbon.CLOSED, row.number("pH"));
    double tolerance = row.number("tol_SI");
    Map<String, Double> ours = new LinkedHashMap<>();
    ours.put("expected_SI_gypsum", Mineral.GYPSUM.saturationIndex(state));
    ours.put("expected_SI_brushite(logK -6.59)", Mineral.BRUSHITE.saturationIndex(state));
    ours.put("expected_SI_hydroxyapatite(phreeqc.dat)", Apatite.saturationIndex(state));
    ours.put(
        "expected_SI_hydroxyapatite(McDowell 1977)", Apatite.saturationIndexAfterMcDowell(state));
    List<Outcome> outcomes = new ArrayList<>();
    ours.forEach(
        (column, value) -> {
          outcomes.add(
              row.has(column)
                  ? Outcome.number(column, row.number(column), value, tolerance)
                  : Outcome.same(
                      column,
                      "no solid possible",
                      Double.isFinite(value) ? "possible" : "no solid possible"));
        });
    return outcomes;
  }

  private static List<Outcome> baseDemand(CaseRow row, CaseFolder folder) {
    Matcher phs = BETWEEN_PHS.matcher(row.text("quantity"));
    Matcher solution = STEINER_OR_OTHER.matcher(row.text("input"));
    if (!phs.find() || !solution.find()) {
      throw new IllegalArgumentException("cannot read " + row.text("input"));
    }
    CaseRow saturationRow =
        folder.rows("feed/check_saturation.csv").stream()
            .filter(r -> r.text("case_id").equals(solution.group(1)))
            .findFirst()
            .or(() -> sameSolution(folder, solution.group(1)))
            .orElseThrow(
                () ->
                    new RowCheck.Skipped(
                        "no row " + solution.group(1) + " in check_saturation.csv"));
    Composition totals = totals(saturationRow.text("totals_mmol_per_kg"));
    Speciation model = Speciation.at(25);
    double from = alkalinity(model, totals, Double.parseDouble(phs.group(1)));
    double to = alkalinity(model, totals, Double.parseDouble(phs.group(2)));
    return List.of(Tolerance.compare(row, to - from));
  }

  /** The totals are the same at every pH, so a neighbouring row of the same solution will do. */
  private static java.util.Optional<CaseRow> sameSolution(CaseFolder folder, String id) {
    String name = id.replaceAll("_pH.*", "_pH");
    return folder.rows("feed/check_saturation.csv").stream()
        .filter(r -> r.text("case_id").startsWith(name))
        .findFirst();
  }

  private static double alkalinity(Speciation model, Composition totals, double ph) {
    return model.solveAtPh(totals, Carbon.CLOSED, ph).alkalinityMeq();
  }

  private static List<Outcome> gypsum(CaseRow row, CaseFolder folder) {
    String input = row.text("input").replace("pure water 25 C", "gypsum_in_water at 25 C");
    Matcher m = GYPSUM_IN.matcher(input);
    if (!m.find()) {
      throw new IllegalArgumentException("cannot read " + input);
    }
    Composition totals =
        m.group(1) != null ? Composition.EMPTY : salt(m.group(2), Double.parseDouble(m.group(3)));
    return List.of(
        Tolerance.compare(row, GypsumSolubility.mmol(totals, Double.parseDouble(m.group(4)))));
  }

  private static Composition salt(String name, double mmol) {
    return switch (name) {
      case "CaNO3" -> Composition.of(Ion.CALCIUM, mmol).with(Ion.NITRATE, 2 * mmol);
      case "K2SO4" -> Composition.of(Ion.POTASSIUM, 2 * mmol).with(Ion.SULFATE, mmol);
      case "KNO3" -> Composition.of(Ion.POTASSIUM, mmol).with(Ion.NITRATE, mmol);
      case "MgSO4" -> Composition.of(Ion.MAGNESIUM, mmol).with(Ion.SULFATE, mmol);
      case "NaCl" -> Composition.of(Ion.SODIUM, mmol).with(Ion.CHLORIDE, mmol);
      case "KCl" -> Composition.of(Ion.POTASSIUM, mmol).with(Ion.CHLORIDE, mmol);
      case "MgNO3" -> Composition.of(Ion.MAGNESIUM, mmol).with(Ion.NITRATE, 2 * mmol);
      default -> throw new IllegalArgumentException("unknown salt " + name);
    };
  }

  /** "Ca=0.45;Mg=0.08" in mmol per litre. */
  static Composition totals(String text) {
    Composition totals = Composition.EMPTY;
    for (String part : text.split(";", -1)) {
      String[] pair = part.split("=", -1);
      totals = totals.with(ion(pair[0].strip()), Double.parseDouble(pair[1]));
    }
    return totals;
  }

  private static Ion ion(String name) {
    Ion ion = IONS.get(name);
    if (ion == null) {
      throw new IllegalArgumentException("unknown ion " + name);
    }
    return ion;
  }
}
