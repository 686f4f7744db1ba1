package sallet.feed;

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
import sallet.feed.meter.CellCheck;
import sallet.feed.meter.MeterReading;
import sallet.feed.meter.SaltScale;
import sallet.feed.solution.Carbon;
import sallet.feed.solution.Conductivity;
import sallet.feed.solution.Speciation;

/** Conductivity standards and "ppm" scales against published tables. */
final class MeterChecks {
  private MeterChecks() {}

  private static final Pattern STANDARD = Pattern.compile("KCl ([\\d.]+) mol/kg water at (\\d+) C");
  private static final Pattern WATER = Pattern.compile("water saturated with .* at (\\d+) C");
  private static final Pattern CURVE = Pattern.compile("EC ([\\d.]+) uS/cm at 25 C, scale (\\w+)");
  private static final Pattern LINEAR =
      Pattern.compile("reading ([\\d.]+) ppm on a linear ([\\d.]+) scale");

  static Map<String, RowCheck> byFile() {
    return Map.of(
        "feed/check_kcl_standard.csv", MeterChecks::standard,
        "feed/check_tds.csv", MeterChecks::scale);
  }

  /**
   * The conductivity model against the standards; the water itself against the cell check's line.
   */
  private static List<Outcome> standard(CaseRow row, CaseFolder folder) {
    Matcher kcl = STANDARD.matcher(row.text("input"));
    if (kcl.matches()) {
      double mmol = 1000 * Double.parseDouble(kcl.group(1));
      Composition solution = Composition.of(Ion.POTASSIUM, mmol).with(Ion.CHLORIDE, mmol);
      Speciation model = Speciation.at(Double.parseDouble(kcl.group(2)));
      double ours = Conductivity.msCm(model.solve(solution, Carbon.CLOSED));
      return List.of(Tolerance.compare(row, 1000 * ours));
    }
    Matcher water = WATER.matcher(row.text("input"));
    if (!water.matches()) {
      throw new IllegalArgumentException("cannot read " + row.text("input"));
    }
    return List.of(
        Tolerance.compare(row, 1000 * CellCheck.waterMsCm(Double.parseDouble(water.group(1)))));
  }

  private static List<Outcome> scale(CaseRow row, CaseFolder folder) {
    Matcher curve = CURVE.matcher(row.text("input"));
    if (curve.matches()) {
      SaltScale scale =
          switch (curve.group(2)) {
            case "KCl" -> SaltScale.KCL;
            case "NaCl" -> SaltScale.NACL;
            case "442" -> SaltScale.MIX_442;
            default -> throw new IllegalArgumentException("unknown scale " + curve.group(2));
          };
      return List.of(
          Tolerance.compare(row, scale.shownPpm(Double.parseDouble(curve.group(1)) / 1000)));
    }
    Matcher linear = LINEAR.matcher(row.text("input"));
    if (!linear.matches()) {
      throw new IllegalArgumentException("cannot read " + row.text("input"));
    }
    double ours =
        MeterReading.parse(linear.group(1) + " ppm").meanings().stream()
            .filter(m -> m.scale().startsWith("ppm scale " + linear.group(2) + " "))
            .findFirst()
            .orElseThrow()
            .msCm();
    return List.of(Tolerance.compare(row, ours));
  }
}
