package sallet.crop;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import sallet.cases.CaseFolder;
import sallet.cases.CaseRow;
import sallet.cases.Outcome;

/** Rows of risk_checks.csv. */
final class RiskChecks {
  private RiskChecks() {}

  static List<Outcome> check(CaseRow row, CaseFolder folder) {
    Inputs in = Inputs.of(row.text("inputs"));
    double ours =
        switch (row.text("check")) {
          case "tipburn_index" ->
              TipBurn.index(
                  in.number("DLI5"),
                  in.number("T24"),
                  in.number("air"),
                  in.number("type_k"),
                  in.number("enclosed") == 1);
          case "stretch_multiplier" -> Stretch.stemFactor(in.number("DLI"));
          case "bolting_probability" -> boltedShare(in);
          default -> Double.NaN;
        };
    return List.of(
        Outcome.number(row.text("check"), row.number("expected"), ours, row.number("tolerance")));
  }

  private static double boltedShare(Inputs in) {
    Bolting bolting = new Bolting(in.number("B50"), in.number("Pc"));
    double[] hoursC = new double[24];
    Arrays.fill(hoursC, in.number("T24"));
    double dayCd = bolting.dayCd(RoomDays.boltingHeatCd(hoursC), in.number("photoperiod"));
    return bolting.boltedShare(in.number("days") * dayCd);
  }

  /** Inputs written as {@code name=number unit;...}. */
  private record Inputs(Map<String, Double> values) {
    static Inputs of(String text) {
      Map<String, Double> values = new HashMap<>();
      for (String part : text.split(";", -1)) {
        String[] sides = part.split("=", -1);
        values.put(sides[0].strip(), Double.parseDouble(sides[1].strip().split(" ", -1)[0]));
      }
      return new Inputs(values);
    }

    double number(String name) {
      return Objects.requireNonNull(values.get(name), name);
    }
  }
}
