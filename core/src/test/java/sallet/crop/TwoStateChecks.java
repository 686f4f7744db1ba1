package sallet.crop;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import sallet.cases.CaseFolder;
import sallet.cases.CaseRow;
import sallet.cases.Outcome;
import sallet.cases.RowCheck;

/** Rates and trajectories of the two-state lettuce model. */
final class TwoStateChecks {
  private static final String SCENARIOS = "crop/vanhenten_scenarios.csv";
  private static final String TRAJECTORIES = "crop/vanhenten_trajectories.csv";

  private final Map<String, List<TwoStateLettuce.State>> runs = new ConcurrentHashMap<>();

  /** All four rates; light in W/m² at 4.57 µmol/J. */
  static List<Outcome> rates(CaseRow row, CaseFolder folder) {
    TwoStateLettuce.Rates ours =
        new TwoStateLettuce(row.number("c_tau"))
            .rates(
                new TwoStateLettuce.State(row.number("x_nsdw"), row.number("x_sdw")),
                new TwoStateLettuce.Spell(
                    1, row.number("par_W_m2") * 4.57, row.number("T_C"), row.number("co2_ppm")));
    return List.of(
        rate(row, "f_phot_max_g_m2_s", ours.closedCo2()),
        rate(row, "f_phot_g_m2_s", ours.grossCo2()),
        rate(row, "r_gr_per_s", ours.growthPerS()),
        rate(row, "f_resp_g_m2_s", ours.upkeepGM2S()));
  }

  private static Outcome rate(CaseRow row, String column, double ours) {
    return Outcome.relative(column, row.number(column), ours, row.number("rel_tol"));
  }

  /** Both states of one midnight. */
  List<Outcome> trajectory(CaseRow row, CaseFolder folder) {
    CaseRow scenario =
        folder.rows(SCENARIOS).stream()
            .filter(s -> s.text("scenario").equals(row.text("scenario")))
            .findFirst()
            .orElseThrow(() -> new RowCheck.Skipped(SCENARIOS + " has no " + row.text("scenario")));
    TwoStateLettuce.State ours =
        runs.computeIfAbsent(folder.root() + " " + row.text("scenario"), key -> run(scenario))
            .get((int) row.number("day"));
    return List.of(
        rate(row, "x_nsdw_g_m2", ours.reserveGM2()), rate(row, "x_sdw_g_m2", ours.structureGM2()));
  }

  /** A scenario has one row for each midnight of its trajectory. */
  static List<Outcome> hasTrajectory(CaseRow scenario, CaseFolder folder) {
    long rows =
        folder.rows(TRAJECTORIES).stream()
            .filter(row -> row.text("scenario").equals(scenario.text("scenario")))
            .count();
    return List.of(Outcome.number("midnights", scenario.number("days") + 1, (double) rows, 0));
  }

  private static List<TwoStateLettuce.State> run(CaseRow scenario) {
    TwoStateLettuce model =
        scenario.text("parameter_set").equals("P94")
            ? TwoStateLettuce.IN_SOIL
            : TwoStateLettuce.IN_WATER;
    List<TwoStateLettuce.Spell> day = day(scenario);
    List<TwoStateLettuce.State> states = new ArrayList<>();
    states.add(
        new TwoStateLettuce.State(scenario.number("x_nsdw0_g_m2"), scenario.number("x_sdw0_g_m2")));
    for (int i = 0; i < scenario.number("days"); i++) {
      states.add(model.after(states.get(i), day));
    }
    return states;
  }

  /** The 24 hours of a day: a lamp from 06:00 on, or the half sine the scenario describes. */
  private static List<TwoStateLettuce.Spell> day(CaseRow scenario) {
    boolean lamp = scenario.text("light_profile").startsWith("lamp on 06:00");
    List<TwoStateLettuce.Spell> hours = new ArrayList<>();
    for (int h = 0; h < 24; h++) {
      double ppfdUmol =
          lamp
              ? (h + 18) % 24 < scenario.number("light_hours") ? scenario.number("ppfd_umol") : 0
              : h >= 7 && h <= 16 ? 180 * Math.max(0, Math.sin(Math.PI * (h + 0.5 - 7) / 10)) : 0;
      boolean warm = lamp ? ppfdUmol > 0 : h >= 6 && h < 18;
      hours.add(
          new TwoStateLettuce.Spell(
              1,
              ppfdUmol,
              scenario.number(warm ? "T_light_C" : "T_dark_C"),
              scenario.number(ppfdUmol > 0 ? "co2_light_ppm" : "co2_dark_ppm")));
    }
    return hours;
  }
}
