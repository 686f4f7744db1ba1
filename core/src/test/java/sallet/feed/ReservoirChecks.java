package sallet.feed;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import sallet.cases.CaseFolder;
import sallet.cases.CaseRow;
import sallet.cases.Outcome;
import sallet.cases.RowCheck;
import sallet.feed.ion.Nutrient;
import sallet.feed.meter.TemperatureCompensation;
import sallet.feed.reservoir.Drift;
import sallet.feed.reservoir.Strength;
import sallet.feed.reservoir.Tissue;

/** Drift, correction, uptake and compensation against worked balances. */
final class ReservoirChecks {
  private ReservoirChecks() {}

  private static final Pattern NUMBER = Pattern.compile("(?<![A-Za-z])[0-9]+(?:\\.[0-9]+)?");
  private static final Pattern TISSUE = Pattern.compile("tissue (\\w+) ([\\d.]+) g");

  static Map<String, RowCheck> byFile() {
    return Map.of("feed/check_drift.csv", ReservoirChecks::drift);
  }

  private static List<Outcome> drift(CaseRow row, CaseFolder folder) {
    String input = row.text("input");
    double[] n = numbers(input);
    String id = row.text("case_id");
    double ours =
        switch (id.substring(0, id.indexOf('_'))) {
          case "topup" -> Drift.keptFull(n[0], n[3], n[4], n[2] * n[5], n[1]);
          case "notopup" -> Drift.notRefilled(n[0], n[3], n[2] * n[4], n[1]);
          case "adjust" -> Strength.litresToAdd(n[0], n[1], n[2], n[3]);
          case "refill" -> tissue(input).uptakeMgL(nutrient(input), n[1]);
          case "use" -> tissue(input).removedG(nutrient(input), n[0], n[1]);
          case "ec" -> compensated(input);
          case "uptakecharge" -> charge(input);
          default -> throw new IllegalArgumentException("unknown kind of row " + id);
        };
    return List.of(Tolerance.compare(row, ours));
  }

  private static double[] numbers(String text) {
    return NUMBER.matcher(text).results().mapToDouble(m -> Double.parseDouble(m.group())).toArray();
  }

  private static Nutrient nutrient(String input) {
    Matcher m = TISSUE.matcher(input);
    if (!m.find()) {
      throw new IllegalArgumentException("cannot read " + input);
    }
    return Nutrient.of(m.group(1)).orElseThrow();
  }

  private static Tissue tissue(String input) {
    Matcher m = TISSUE.matcher(input);
    if (!m.find()) {
      throw new IllegalArgumentException("cannot read " + input);
    }
    return new Tissue(
        Map.of(Nutrient.of(m.group(1)).orElseThrow(), Double.parseDouble(m.group(2))));
  }

  /** "EC 1.72 mS/cm read at 18 C without compensation, alpha 2 %/C". */
  private static double compensated(String input) {
    double[] n = numbers(input);
    return TemperatureCompensation.at25(n[0], n[1], n[2] / 100);
  }

  /** "N,P,K,Ca,Mg,S = (45, 5, 50, 5, 3, 3); NH4 share of N 0.1; 300 L water per kg dry". */
  private static double charge(String input) {
    String inBrackets = input.replaceAll(".*\\(|\\).*", "");
    double[] g =
        Arrays.stream(inBrackets.split(",", -1))
            .mapToDouble(s -> Double.parseDouble(s.strip()))
            .toArray();
    Tissue tissue =
        new Tissue(
            Map.of(
                Nutrient.NITROGEN, g[0],
                Nutrient.PHOSPHORUS, g[1],
                Nutrient.POTASSIUM, g[2],
                Nutrient.CALCIUM, g[3],
                Nutrient.MAGNESIUM, g[4],
                Nutrient.SULFUR, g[5]));
    double[] rest = numbers(input.replaceAll(".*\\);", "").replace("NH4", ""));
    return tissue.alkalinityLeftMeqL(rest[0], rest[1]);
  }
}
