package sallet.feed;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import sallet.cases.CaseFolder;
import sallet.cases.CaseRow;
import sallet.cases.Outcome;
import sallet.cases.RowCheck;
import sallet.feed.dose.AcidVolume;
import sallet.feed.ion.Composition;
import sallet.feed.ion.Element;
import sallet.feed.ion.Formula;
import sallet.feed.ion.Nutrient;
import sallet.feed.product.Label;
import sallet.feed.product.Oxide;
import sallet.feed.product.Reagent;
import sallet.feed.product.Salt;
import sallet.feed.product.Use;
import sallet.feed.water.AnalysisUnit;

/** Formulas, labels, acids and units of analyses against stoichiometry and published tables. */
final class ProductChecks {
  private ProductChecks() {}

  private static final Pattern PERCENT_OF = Pattern.compile("mass percent (\\w+)");
  private static final Pattern CONTENT = Pattern.compile("(\\w+) content for a label");
  private static final Pattern IN_SOLUTION = Pattern.compile("(\\w+) (?:mg/L )?in solution.*");
  private static final Pattern GRADE = Pattern.compile("([\\d.]+) g/L of a product labelled (.*)");
  private static final Pattern STRENGTH =
      Pattern.compile("(\\w+) ([\\d.]+) % w/w, density ([\\d.]+) g/mL");
  private static final Pattern ALKALINITY =
      Pattern.compile(
          "([\\d.]+) L water, alkalinity ([\\d.]+) meq/L to ([\\d.]+) meq/L with (\\w+) ([\\d.]+) % \\(density ([\\d.]+)\\), (\\d) eq per mol");
  private static final Pattern FLUID_OUNCE =
      Pattern.compile(
          ".*\\(([\\d.]+) mL\\) of (\\d+) % (.*) acid, sp. gr. ([\\d.]+), .*\\(([\\d.]+) L\\)");
  private static final Pattern VALUE = Pattern.compile("([\\d.]+) (.*)");

  static Map<String, RowCheck> byFile() {
    return Map.of(
        "feed/check_salts.csv", ProductChecks::salt,
        "feed/check_recipe_label_acid.csv", ProductChecks::recipeLabelOrAcid);
  }

  private static List<Outcome> salt(CaseRow row, CaseFolder folder) {
    Formula formula = Formula.parse(row.text("input"));
    Matcher percent = PERCENT_OF.matcher(row.text("quantity"));
    double ours =
        percent.matches()
            ? 100 * formula.massFraction(Element.of(percent.group(1)).orElseThrow())
            : formula.molarMass();
    return List.of(Tolerance.compare(row, ours));
  }

  private static List<Outcome> recipeLabelOrAcid(CaseRow row, CaseFolder folder) {
    String id = row.text("case_id");
    String kind = id.substring(0, id.indexOf('_'));
    double ours =
        switch (kind) {
          case "ppm" -> inSolution(row);
          case "label" -> labelContent(row);
          case "factor" ->
              Oxide.of(row.text("input").replaceAll(" to .*", "")).orElseThrow().toElement();
          case "grade" -> grade(row);
          case "acid" -> molarity(row);
          case "acidvol" -> acidVolume(row);
          case "ext" -> extensionTable(row, folder);
          case "unit" -> unit(row);
          default -> throw new IllegalArgumentException("unknown kind of row " + id);
        };
    return List.of(Tolerance.compare(row, ours));
  }

  /** "can4=1.1807 g/L;kno3=0.5055 g/L". */
  private static double inSolution(CaseRow row) {
    Composition solution = Composition.EMPTY;
    for (String part : row.text("input").split(";", -1)) {
      String[] pair = part.replace("g/L", "").split("=", -1);
      Salt salt = Salt.find(pair[0]).orElseThrow();
      solution =
          solution.plus(salt.product(1).perUnit().times(Double.parseDouble(pair[1].strip())));
    }
    return solution.mg(nutrient(row));
  }

  private static Nutrient nutrient(CaseRow row) {
    Matcher m = IN_SOLUTION.matcher(row.text("quantity"));
    if (!m.matches()) {
      throw new IllegalArgumentException("cannot read " + row.text("quantity"));
    }
    return Nutrient.of(m.group(1)).orElseThrow();
  }

  private static double labelContent(CaseRow row) {
    Matcher m = CONTENT.matcher(row.text("quantity"));
    if (!m.matches()) {
      throw new IllegalArgumentException("cannot read " + row.text("quantity"));
    }
    Formula formula = Formula.parse(row.text("input"));
    Optional<Oxide> oxide = Oxide.of(m.group(1));
    return oxide
        .map(o -> 100 * formula.massFraction(o.nutrient().element()) / o.toElement())
        .orElseGet(() -> 100 * formula.massFraction(Element.of(m.group(1)).orElseThrow()));
  }

  private static double grade(CaseRow row) {
    Matcher m = GRADE.matcher(row.text("input"));
    if (!m.matches()) {
      throw new IllegalArgumentException("cannot read " + row.text("input"));
    }
    Composition perGram = Label.grade("bag", m.group(2)).product(Use.MACRO).perUnit();
    return perGram.times(Double.parseDouble(m.group(1))).mg(nutrient(row));
  }

  private static Reagent reagent(String formulaOrName) {
    return Arrays.stream(Reagent.values())
        .filter(
            r -> r.formula().equals(formulaOrName) || r.plainName().equals(formulaOrName + " acid"))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("unknown reagent " + formulaOrName));
  }

  private static double molarity(CaseRow row) {
    Matcher m = STRENGTH.matcher(row.text("input"));
    if (!m.matches()) {
      throw new IllegalArgumentException("cannot read " + row.text("input"));
    }
    return reagent(m.group(1))
        .molarity(Double.parseDouble(m.group(2)), Double.parseDouble(m.group(3)));
  }

  private static double acidVolume(CaseRow row) {
    Matcher m = ALKALINITY.matcher(row.text("input"));
    if (!m.matches()) {
      throw new IllegalArgumentException("cannot read " + row.text("input"));
    }
    Reagent acid = reagent(m.group(4));
    double molL = acid.molarity(Double.parseDouble(m.group(5)), Double.parseDouble(m.group(6)));
    double meqL = Double.parseDouble(m.group(2)) - Double.parseDouble(m.group(3));
    return AcidVolume.millilitres(
        meqL * Double.parseDouble(m.group(1)), molL, Integer.parseInt(m.group(7)));
  }

  private static double extensionTable(CaseRow row, CaseFolder folder) {
    CaseRow described =
        folder.rows(row.file()).stream()
            .filter(r -> FLUID_OUNCE.matcher(r.text("input")).matches())
            .findFirst()
            .orElseThrow(() -> new RowCheck.Skipped("no row describes the dose"));
    Matcher m = FLUID_OUNCE.matcher(described.text("input"));
    if (!m.matches()) {
      throw new IllegalArgumentException("cannot read " + described.text("input"));
    }
    double millilitresPerL = Double.parseDouble(m.group(1)) / Double.parseDouble(m.group(5));
    double sulfuricMmolL =
        millilitresPerL
            * reagent(m.group(3))
                .molarity(Double.parseDouble(m.group(2)), Double.parseDouble(m.group(4)));
    return switch (row.text("quantity")) {
      case "alkalinity removed" -> 2 * sulfuricMmolL / AnalysisUnit.MG_L_CACO3.toMmol(1, 1, 1);
      case "S added" -> sulfuricMmolL * Element.SULFUR.weight();
      case "P added" ->
          millilitresPerL * Reagent.PHOSPHORIC_ACID.molarity(75) * Element.PHOSPHORUS.weight();
      default -> throw new IllegalArgumentException("unknown quantity " + row.text("quantity"));
    };
  }

  private static double unit(CaseRow row) {
    Matcher m = VALUE.matcher(row.text("input"));
    if (!m.matches()) {
      throw new IllegalArgumentException("cannot read " + row.text("input"));
    }
    double value = Double.parseDouble(m.group(1));
    AnalysisUnit unit =
        m.group(2).startsWith("deg dH")
            ? AnalysisUnit.GERMAN_DEGREE
            : m.group(2).startsWith("deg f")
                ? AnalysisUnit.FRENCH_DEGREE
                : m.group(2).startsWith("deg e")
                    ? AnalysisUnit.ENGLISH_DEGREE
                    : AnalysisUnit.of(m.group(2)).orElseThrow();
    int charge = row.text("unit").startsWith("mmol/L Ca+Mg") ? 2 : 1;
    return unit.toMmol(value, 61.016, charge);
  }
}
