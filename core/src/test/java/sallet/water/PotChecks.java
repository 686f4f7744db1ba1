package sallet.water;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import sallet.cases.CaseFolder;
import sallet.cases.CaseRow;
import sallet.cases.Outcome;
import sallet.cases.RowCheck;
import sallet.water.flood.Flood;
import sallet.water.flood.FloodSchedule;
import sallet.water.flood.FloodTimes;
import sallet.water.flood.PotDay;
import sallet.water.flood.PumpCurve;
import sallet.water.flood.Timer;
import sallet.water.medium.Medium;
import sallet.water.medium.PotShape;
import sallet.water.medium.PotWater;
import sallet.water.medium.Retention;

/** Media, pots, floods and the times of floods. */
final class PotChecks {
  private PotChecks() {}

  static Map<String, RowCheck> byFile() {
    return Map.of(
        "water/retention_container.csv", PotChecks::retention,
        "water/media_defaults.csv", PotChecks::medium,
        "water/flood.csv", PotChecks::flood,
        "water/flood_schedule.csv", PotChecks::schedule);
  }

  private static List<Outcome> retention(CaseRow row, CaseFolder folder) {
    return switch (row.text("quantity")) {
      case "theta" -> Compare.number(row, curve(row).at(row.number("head_cm")));
      case "container_capacity" -> Compare.number(row, pot(row).drainedContent(curve(row)));
      case "air_space" -> Compare.number(row, pot(row).airShare(curve(row)));
      case "volume_mL" -> Compare.number(row, pot(row).volumeMl());
      case "easily_available_water_mL" ->
          Compare.number(
              row,
              pot(row).volumeMl()
                  * (pot(row).drainedContent(curve(row)) - curve(row).at(Medium.EASY_CM)));
      case "air_space_trend" -> trend(row);
      default -> throw new IllegalArgumentException("unknown " + row.text("quantity"));
    };
  }

  private static Retention curve(CaseRow row) {
    return new Retention(
        row.number("theta_r"), row.number("theta_s"), row.number("alpha_per_cm"), row.number("n"));
  }

  private static PotShape pot(CaseRow row) {
    return new PotShape(row.number("H_cm"), row.number("r_bottom_cm"), row.number("r_top_cm"));
  }

  /** Measured: in every mix a low cell holds less air than a tall pot. */
  private static List<Outcome> trend(CaseRow row) {
    String[] air = row.text("expected").split(" -> ", -1);
    boolean falls = Double.parseDouble(air[1]) < Double.parseDouble(air[0]);
    PotShape tall = new PotShape(17, 7, 8);
    PotShape cell = new PotShape(5, 1.5, 2);
    return Medium.catalogue().stream()
        .map(Medium::retention)
        .map(m -> Outcome.same("air falls", "" + falls, "" + (cell.airShare(m) < tall.airShare(m))))
        .toList();
  }

  /** The table's curve parameters must give its own points, as exactly as it prints them. */
  private static List<Outcome> medium(CaseRow row, CaseFolder folder) {
    Retention curve = curve(row);
    double rounding = 0.0015;
    return Stream.of(10, 50, 100)
        .map(
            head ->
                Outcome.number(
                    "content at " + head + " cm",
                    row.number("theta_" + head + "cm"),
                    curve.at(head),
                    rounding))
        .toList();
  }

  private static List<Outcome> flood(CaseRow row, CaseFolder folder) {
    double ours =
        switch (row.text("quantity")) {
          case "flood_volume_L" ->
              new Flood(
                      row.number("A_tray_m2"),
                      (int) row.number("N_pots"),
                      row.number("a_pot_m2"),
                      row.number("h_flood_m"))
                  .volumeL(row.number("theta_s"), row.number("theta_before"));
          case "fill_time_min" -> fillMinutes(row).orElse(Double.NaN);
          case "pump_flow_L_h" -> curveOf(row).flowLh(row.number("lift_m"));
          case "drain_time_min" ->
              Flood.drainMinutes(
                  row.number("fill_area_m2"),
                  row.number("h_flood_m"),
                  row.number("d_orifice_mm"),
                  row.number("Cd"),
                  row.number("head_below_m"));
          case "hours_between_floods" ->
              PotDay.steady("", allowedMl(row), row.number("E_mL_h"), row.number("E_mL_h"), 0, 0)
                      .lastsMinutes(0)
                  / 60;
          default -> throw new IllegalArgumentException("unknown " + row.text("quantity"));
        };
    return Compare.number(row, ours);
  }

  private static OptionalDouble fillMinutes(CaseRow row) {
    return PumpCurve.straight(row.number("Qmax_L_h"), row.number("Hmax_m"))
        .fillMinutes(row.number("lift_m"), row.number("h_flood_m"), row.number("fill_area_m2"));
  }

  private static PumpCurve curveOf(CaseRow row) {
    return new PumpCurve(
        Arrays.stream(row.text("points").split(" ", -1))
            .map(point -> point.split(":", -1))
            .map(p -> new PumpCurve.Point(Double.parseDouble(p[0]), Double.parseDouble(p[1])))
            .toList());
  }

  private static double allowedMl(CaseRow row) {
    double volume = row.number("V_pot_mL");
    double full = volume * row.number("theta_cc");
    double easy = full - volume * row.number("theta_trigger");
    return new PotWater(volume, full, easy, row.number("p"), 0, 0, 0, false).allowedMl();
  }

  private static List<Outcome> schedule(CaseRow row, CaseFolder folder) {
    int on = (int) row.number("lights_on");
    int off = (int) row.number("lights_off");
    PotDay pot =
        PotDay.steady(
            "A1",
            row.number("capacity_mL"),
            row.number("E_day_mL_h"),
            row.number("E_night_mL_h"),
            on,
            off);
    FloodSchedule found =
        FloodTimes.of(
            List.of(pot),
            new FloodTimes.Light(60 * on, off - on),
            new Timer.Segments((int) row.number("grid_min")),
            new FloodTimes.Length(15, 15));
    return Compare.word(row, String.join(" ", found.clockTimes()));
  }
}
