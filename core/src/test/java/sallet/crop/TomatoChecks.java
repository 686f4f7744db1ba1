package sallet.crop;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import sallet.cases.CaseFolder;
import sallet.cases.CaseRow;
import sallet.cases.Outcome;

/** Rows of tomato_reduced_model.csv. */
final class TomatoChecks {
  /** One day of a run with the flows that led to it. */
  private record Ran(ReducedTomato.Stand stand, double gross, double upkeep) {}

  private final Map<String, List<Ran>> runs = new ConcurrentHashMap<>();

  List<Outcome> check(CaseRow row, CaseFolder folder) {
    Ran ours =
        runs.computeIfAbsent(row.text("days;ppfd;hours;T_light;T_dark;co2"), TomatoChecks::run)
            .get((int) row.number("day") - 1);
    return List.of(
        compare(row, "N", ours.stand().nodes()),
        compare(row, "LAI", ours.stand().leafIndex()),
        compare(row, "W_g_m2", ours.stand().dryGM2()),
        compare(row, "Wf_g_m2", ours.stand().fruitGM2()),
        compare(row, "Wm_g_m2", ours.stand().ripeGM2()),
        compare(row, "Pg_g_m2_d", ours.gross()),
        compare(row, "Rm_g_m2_d", ours.upkeep()));
  }

  private static Outcome compare(CaseRow row, String column, double ours) {
    return Outcome.relative(column, row.number(column), ours, row.number("rel_tol"));
  }

  private static List<Ran> run(String scenario) {
    double[] v = Stream.of(scenario.split(";", -1)).mapToDouble(Double::parseDouble).toArray();
    ReducedTomato.Day day = new ReducedTomato.Day(v[1], (int) v[2], v[3], v[4], v[5]);
    List<Ran> days = new ArrayList<>();
    ReducedTomato.Stand stand = ReducedTomato.Stand.TRANSPLANT;
    for (int i = 0; i < v[0]; i++) {
      double gross = ReducedTomato.gross(stand, day);
      double upkeep = ReducedTomato.upkeep(stand, day);
      stand = ReducedTomato.step(stand, day);
      days.add(new Ran(stand, gross, upkeep));
    }
    return days;
  }
}
