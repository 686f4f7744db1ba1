package sallet.feed.home;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import sallet.feed.ion.Composition;
import sallet.feed.ion.Ion;
import sallet.feed.solution.Carbon;
import sallet.feed.solution.Conductivity;
import sallet.feed.solution.Mineral;
import sallet.feed.solution.OsmoticPressure;
import sallet.feed.solution.SolutionState;
import sallet.feed.solution.Speciation;
import sallet.feed.water.SourceWater;
import sallet.units.Step;

/** How the numbers of water and finished solution come about. */
final class SolutionExplanation {
  private static final double TEMPERATURE_C = 20;

  /** Conductivities below this share are told together. */
  private static final double SMALL_SHARE = 0.01;

  private static final String FILE = "your file or our default";
  private static final String MCCLESKEY = "McCleskey and others 2012";
  private static final String CONSTANTS =
      "constants: Plummer and Busenberg 1982; Parkhurst and Appelo 2013";

  private final FeedSheet sheet;

  private SolutionExplanation(FeedSheet sheet) {
    this.sheet = sheet;
  }

  static Map<String, Supplier<List<Step>>> of(FeedSheet sheet) {
    SolutionExplanation told = new SolutionExplanation(sheet);
    Map<String, Supplier<List<Step>>> paths = new LinkedHashMap<>();
    SourceWater water = sheet.water();
    paths.put("water.ecMsCm", () -> conductivity(water.stateAsDrawn(25)));
    paths.put("water.alkalinityMeqL", () -> alkalinity(water.composition()));
    paths.put("water.hardnessMmolL", told::hardness);
    paths.put(
        "solution.ecMsCm",
        () -> conductivity(Speciation.at(25).solve(sheet.perLitre(), Carbon.OPEN)));
    paths.put("solution.meterShowsMsCm", told::meterShows);
    paths.put("solution.ph", told::ph);
    paths.put("solution.alkalinityMeqL", () -> alkalinity(sheet.perLitre()));
    paths.put("solution.osmoticKPa", told::osmotic);
    paths.put("solution.bufferMeqPerPh", told::buffer);
    for (Mineral mineral : Mineral.values()) {
      if (Double.isFinite(sheet.state().saturation().getOrDefault(mineral, Double.NaN))) {
        paths.put(
            "solution.saturationIndex." + mineral.plainName(), () -> told.saturation(mineral));
      }
    }
    return paths;
  }

  private static Step step(String name, double value, String unit, String how, String source) {
    return new Step(name, value, unit, how, source);
  }

  private static List<Step> conductivity(SolutionState state) {
    List<Step> steps = new ArrayList<>();
    steps.add(strength(state));
    double all = Conductivity.msCm(state);
    double rest = all;
    List<Conductivity.Term> terms = new ArrayList<>(Conductivity.terms(state));
    terms.sort(Comparator.comparingDouble(t -> -t.msCm()));
    for (Conductivity.Term term : terms) {
      if (term.msCm() >= SMALL_SHARE * all) {
        rest -= term.msCm();
        steps.add(
            step(
                name(term.species()),
                term.msCm(),
                "mS/cm",
                "%.1f S cm²/mol x %.3f mmol/L free".formatted(term.lambda(), term.mmol()),
                MCCLESKEY));
      }
    }
    steps.add(step("all other ions", rest, "mS/cm", "likewise", MCCLESKEY));
    steps.add(
        step(
            "EC at 25 °C",
            all,
            "mS/cm",
            "sum; good to 5 %, in hard water 8 %",
            "compared with an independent code: docs/validation.md"));
    return steps;
  }

  /** Free ions go by the name of their ion; pairs by their formula. */
  private static String name(String species) {
    for (Ion ion : Ion.values()) {
      if (ion.name().equals(species)) {
        return ion.symbol();
      }
    }
    return species;
  }

  private static Step strength(SolutionState state) {
    return step(
        "ionic strength",
        state.ionicStrengthMol(),
        "mol/kg",
        "half the sum of charge² x amount, pairs formed",
        CONSTANTS);
  }

  private static List<Step> alkalinity(Composition composition) {
    return List.of(
        step(
            "positive charge",
            composition.cationsMeq(),
            "meq/L",
            "calcium and magnesium twice, potassium, sodium, ammonium",
            "analysis and labels: " + FILE),
        step(
            "negative charge",
            composition.anionsMeq(),
            "meq/L",
            "sulfate twice, nitrate, chloride, phosphate once",
            "analysis and labels: " + FILE),
        step(
            "alkalinity",
            composition.alkalinityMeq(),
            "meq/L",
            "the difference; bicarbonate carries it",
            "charge balance"));
  }

  private List<Step> hardness() {
    Composition water = sheet.water().composition();
    return List.of(
        step("calcium", water.mmol(Ion.CALCIUM), "mmol/L", "from the analysis", FILE),
        step("magnesium", water.mmol(Ion.MAGNESIUM), "mmol/L", "from the analysis", FILE),
        step("hardness", sheet.water().hardnessMmol(), "mmol/L", "sum", ""));
  }

  private List<Step> meterShows() {
    return List.of(
        step("EC at 25 °C", sheet.state().ecMsCm(), "mS/cm", "see solution.ecMsCm", ""),
        step(
            "your meter shows",
            sheet.state().meterShowsMsCm(),
            "mS/cm",
            "EC x (1 + 0.02 x (reference - 25 °C)) / factor",
            "reference: your file or our default; factor: learned from your fresh solutions, 1"
                + " without"));
  }

  private SolutionState state() {
    return Speciation.at(TEMPERATURE_C).solve(sheet.perLitre(), Carbon.OPEN);
  }

  private List<Step> ph() {
    SolutionState state = state();
    return List.of(
        step(
            "carbon dioxide of the air",
            Carbon.OUTDOOR_LOG10_ATM,
            "log10 atm",
            "the solution has stood in air",
            "judgement: outdoors; a lived-in room has -3.2 to -2.9"),
        step("alkalinity", state.alkalinityMeq(), "meq/L", "see solution.alkalinityMeqL", ""),
        step("of it bicarbonate", state.mmol("HCO3"), "mmol/L", "K1 CO2 / (H γ)", CONSTANTS),
        step(
            "of it hydrogen phosphate",
            state.mmol("HPO4"),
            "mmol/L",
            "pK 7.2 of phosphoric acid and pairs",
            CONSTANTS),
        strength(state),
        step(
            "pH",
            state.ph(),
            "",
            "-log10 of the activity of H that balances all charges at 20 °C",
            "within 0.05 of an independent code: docs/validation.md"));
  }

  private List<Step> osmotic() {
    SolutionState state = state();
    double mmol = state.species().values().stream().mapToDouble(SolutionState.Amount::mmol).sum();
    return List.of(
        step("all that is dissolved", mmol, "mmol/L", "ions and pairs", ""),
        step(
            "osmotic coefficient",
            OsmoticPressure.coefficient(state),
            "",
            "of the Davies equation by Gibbs and Duhem",
            "Davies 1962"),
        step(
            "osmotic pressure",
            OsmoticPressure.kPa(state),
            "kPa",
            "R T density x coefficient x amount at 20 °C",
            "van 't Hoff"));
  }

  private List<Step> buffer() {
    Speciation model = Speciation.at(TEMPERATURE_C);
    double high = model.solveAtPh(sheet.perLitre(), Carbon.OPEN, 6.5).alkalinityMeq();
    double low = model.solveAtPh(sheet.perLitre(), Carbon.OPEN, 5.5).alkalinityMeq();
    return List.of(
        step("alkalinity at pH 6.5", high, "meq/L", "in air", CONSTANTS),
        step("alkalinity at pH 5.5", low, "meq/L", "in air", CONSTANTS),
        step("base that lifts pH by one", high - low, "meq/L", "the difference", ""));
  }

  private List<Step> saturation(Mineral mineral) {
    SolutionState state = state();
    return List.of(
        step(
            "log10 of the activity product",
            mineral.logProduct(state),
            "",
            "activities of the free ions at 20 °C",
            "Truesdell and Jones 1974; " + CONSTANTS),
        step(
            "log10 of the solubility product",
            mineral.logSolubility(TEMPERATURE_C),
            "",
            "of " + mineral.plainName(),
            "docs/models/feed.md"),
        step(
            "saturation index",
            mineral.saturationIndex(state),
            "",
            "the difference; above 0 it can fall out",
            "good to 0.3"));
  }
}
