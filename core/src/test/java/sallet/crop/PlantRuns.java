package sallet.crop;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import sallet.cases.CaseFolder;
import sallet.cases.CaseRow;
import sallet.cases.Outcome;
import sallet.cases.RowCheck;

/**
 * The scenarios of the plant model, each run once from hourly light and air through to fresh mass,
 * and compared day by day.
 */
final class PlantRuns {
  private static final String SCENARIOS = "crop/plant_model_scenarios.csv";
  private static final String PARAMETERS = "crop/plant_model_parameters.csv";
  private static final String PHASES = "phases(days;ppfd;hours;T_light;T_dark;co2;site_cm2)";
  private static final String CUTS = "leaf_cuts(day:fraction)";

  /** An emptied reserve is a difference of equal numbers and leaves their rounding, g. */
  private static final double ROUNDING = 1e-15;

  private static final LocalDate EMERGENCE = SteadyPlace.FIRST;

  /** A rule without ageing, one plant a pot. */
  static final HarvestRule NO_AGEING = new HarvestRule(true, 100, 365, 365, 1, 0, 1, 1, 1);

  private final Map<String, List<Map<String, Double>>> days = new ConcurrentHashMap<>();

  /** Every column of one day of a trajectory. */
  List<Outcome> check(CaseRow row, CaseFolder folder) {
    CaseRow scenario = find(folder, SCENARIOS, "scenario", row.text("scenario"));
    List<Map<String, Double>> run =
        days.computeIfAbsent(
            folder.root() + " " + row.text("scenario"), key -> run(scenario, folder));
    int day = (int) row.number("day_after_emergence");
    return compare(row, run.get(day - 1));
  }

  private static List<Outcome> compare(CaseRow row, Map<String, Double> ours) {
    List<Outcome> outcomes = new ArrayList<>();
    for (Map.Entry<String, Double> value : ours.entrySet()) {
      double expected = row.number(value.getKey());
      double tolerance = row.number("rel_tol") * Math.abs(expected) + ROUNDING;
      outcomes.add(Outcome.number(value.getKey(), expected, value.getValue(), tolerance));
    }
    return outcomes;
  }

  /** A scenario has a trajectory and runs as long as its phases say. */
  List<Outcome> hasTrajectory(CaseRow scenario, CaseFolder folder) {
    long rows =
        folder.rows("crop/plant_model_trajectories.csv").stream()
            .filter(row -> row.text("scenario").equals(scenario.text("scenario")))
            .count();
    return List.of(Outcome.number("days", (double) rows, run(scenario, folder).size(), 0));
  }

  static PlantParameters plant(CaseRow row) {
    double[] v = new double[24];
    String[] columns =
        "c mu Tb To1 To2 Tc W0 LA0 tau lam SLA0 sD Dref DMC0 dD dT Y rmax q gsc ms mr Tph phyl"
            .split(" ", -1);
    for (int i = 0; i < v.length; i++) {
      v[i] = row.number(columns[i]);
    }
    return new PlantParameters(
        v[0], v[1], v[2], v[3], v[4], v[5], v[6], v[7], v[8], v[9], v[10], v[11], v[12], v[13],
        v[14], v[15], v[16], v[17], v[18], v[19], v[20], v[21], v[22], v[23]);
  }

  private static CaseRow find(CaseFolder folder, String file, String column, String value) {
    if (!folder.has(file)) {
      throw new RowCheck.Skipped("needs " + file);
    }
    return folder.rows(file).stream()
        .filter(row -> row.text(column).equals(value))
        .findFirst()
        .orElseThrow(() -> new RowCheck.Skipped(file + " has no " + value));
  }

  private static List<Map<String, Double>> run(CaseRow scenario, CaseFolder folder) {
    PlantParameters p = plant(find(folder, PARAMETERS, "crop", scenario.text("crop")));
    List<double[]> phases = phases(scenario);
    int length = (int) phases.stream().mapToDouble(phase -> phase[0]).sum();
    double vigour = scenario.number("q_multiplier");
    List<Stay> stays = stays(phases, length);
    PlantDay[] life =
        LifeDays.of(p, NO_AGEING, vigour, EMERGENCE, stays, EMERGENCE.plusDays(length));
    Map<Integer, Double> cuts = cuts(scenario);
    List<Map<String, Double>> run = new ArrayList<>();
    PlantState plant = PlantState.atEmergence(p);
    for (int i = 0; i < length; i++) {
      double crownCm2 = PlantModel.crownCm2(plant.leafCm2(), p.crownC(), life[i].siteCm2());
      plant = PlantModel.step(plant, p, life[i]);
      double freshG = plant.freshG(life[i].dryMatterShare());
      double share = cuts.getOrDefault(i + 1, 0.0);
      plant = plant.picked(share);
      Map<String, Double> day = new LinkedHashMap<>();
      PlaceDays place = current(stays, i).place();
      day.put("G_g_CH2O_m2", life[i].assimilateGPerCm2() * 1e4);
      day.put("DLI_mol", place.dliMol(i));
      day.put("T24_C", place.meanC(i));
      day.put("Ws_g", plant.shootG());
      day.put("Wr_g", plant.rootG());
      day.put("R_g", plant.reserveG());
      day.put("LA_cm2", plant.leafCm2());
      day.put("A_cm2", crownCm2);
      day.put("leaves", plant.leaves());
      day.put("DMC", life[i].dryMatterShare());
      day.put("fresh_shoot_g", freshG);
      day.put("harvested_g", share * freshG);
      run.add(day);
    }
    return run;
  }

  private static Stay current(List<Stay> stays, int day) {
    Stay current = stays.get(0);
    for (Stay stay : stays) {
      current = stay.from().isAfter(EMERGENCE.plusDays(day)) ? current : stay;
    }
    return current;
  }

  private static List<double[]> phases(CaseRow scenario) {
    List<double[]> phases = new ArrayList<>();
    for (String phase : scenario.text(PHASES).split("\\|", -1)) {
      String[] parts = phase.strip().split(";", -1);
      double[] numbers = new double[parts.length];
      for (int i = 0; i < parts.length; i++) {
        numbers[i] = Double.parseDouble(parts[i]);
      }
      phases.add(numbers);
    }
    return phases;
  }

  private static Map<Integer, Double> cuts(CaseRow scenario) {
    Map<Integer, Double> cuts = new HashMap<>();
    if (scenario.has(CUTS)) {
      for (String cut : scenario.text(CUTS).split(" ", -1)) {
        String[] parts = cut.split(":", -1);
        cuts.put(Integer.parseInt(parts[0]), Double.parseDouble(parts[1]));
      }
    }
    return cuts;
  }

  private static List<Stay> stays(List<double[]> phases, int length) {
    List<Stay> stays = new ArrayList<>();
    LocalDate from = EMERGENCE;
    for (double[] phase : phases) {
      stays.add(new Stay(from, place(phase, length), phase[6]));
      from = from.plusDays((long) phase[0]);
    }
    return stays;
  }

  private static PlaceDays place(double[] phase, int length) {
    return new SteadyPlace(phase[1], (int) phase[2], phase[3], phase[4], phase[5]).days(length);
  }
}
