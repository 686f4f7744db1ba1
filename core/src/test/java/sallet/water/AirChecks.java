package sallet.water;

import java.util.List;
import java.util.Map;
import sallet.air.ColdSurface;
import sallet.air.MoistAir;
import sallet.air.RoomHeat;
import sallet.air.RoomVapour;
import sallet.air.Vapour;
import sallet.cases.CaseFolder;
import sallet.cases.CaseRow;
import sallet.cases.Outcome;
import sallet.cases.RowCheck;

/** Vapour, dew, cold panes and the warmth of a room. */
final class AirChecks {
  private AirChecks() {}

  static Map<String, RowCheck> byFile() {
    return Map.of(
        "water/psychrometrics.csv", AirChecks::psychrometrics,
        "water/climate.csv", AirChecks::climate);
  }

  private static List<Outcome> psychrometrics(CaseRow row, CaseFolder folder) {
    double ours =
        switch (row.text("quantity")) {
          case "es_kPa" -> Vapour.saturationKpa(row.number("T_C"));
          case "es_Pa" -> 1000 * Vapour.saturationKpa(row.number("T_C"));
          case "slope_kPa_per_C" -> Vapour.slopeKpaPerC(row.number("T_C"));
          case "P_kPa" -> Vapour.pressureKpa(row.number("z_m"));
          case "standard_pressure_Pa" -> 1000 * Vapour.pressureKpa(row.number("z_m"));
          case "gamma_kPa_per_C" -> Vapour.psychrometricKpaPerC(pressureKpa(row));
          case "ea_from_psychrometer_kPa" ->
              Vapour.ofPsychrometerKpa(row.number("T_C"), row.number("T2_C"), row.number("P_kPa"));
          case "ea_from_RHmax_RHmin_kPa" ->
              (air(row).vapourKpa()
                      + MoistAir.of(row.number("T2_C"), row.number("RH2_pct")).vapourKpa())
                  / 2;
          case "ea_from_Tdew_kPa" -> Vapour.saturationKpa(row.number("T2_C"));
          case "wet_bulb_C" ->
              Vapour.wetBulbC(row.number("T_C"), air(row).vapourKpa(), row.number("P_kPa"));
          case "dew_point_C" -> air(row).dewPointC();
          case "surface_T_at_RH80_C" -> Vapour.dewPointC(air(row).vapourKpa() / 0.8);
          case "vpd_air_kPa" -> air(row).deficitKpa();
          case "vpd_leaf_kPa" -> air(row).deficitToLeafKpa(row.number("T2_C"));
          case "vapour_concentration_g_m3" -> air(row).waterGM3();
          case "vapour_concentration_deficit_g_m3" -> air(row).deficitGM3();
          default -> throw new IllegalArgumentException("unknown " + row.text("quantity"));
        };
    return Compare.number(row, ours);
  }

  private static double pressureKpa(CaseRow row) {
    return row.has("P_kPa") ? row.number("P_kPa") : Vapour.pressureKpa(row.number("z_m"));
  }

  private static MoistAir air(CaseRow row) {
    return MoistAir.of(row.number("T_C"), row.number("RH_pct"));
  }

  private static List<Outcome> climate(CaseRow row, CaseFolder folder) {
    double ours =
        switch (row.text("quantity")) {
          case "RH_in_steady_pct" -> settled(row).humidityPercent();
          case "T_surface_C" ->
              surface(row).temperatureC(row.number("T_in_C"), row.number("T_out_C"));
          case "RH_surface_pct" ->
              surface(row).humidityPercent(settled(row), row.number("T_out_C"));
          case "f_Rsi" -> surface(row).factor();
          case "T_in_steady_C" ->
              new RoomHeat(row.number("UA_W_K"), row.number("volume_m3"), row.number("ach"))
                  .settledC(row.number("T_out_C"), row.number("Q_W"));
          case "T_after_steps_C" ->
              new RoomHeat(row.number("UA_W_K"), 0, 0)
                  .afterC(
                      row.number("T0_C"),
                      row.number("T_out_C"),
                      row.number("Q_W"),
                      row.number("C_kJ_K"),
                      row.number("dt_h"),
                      (int) row.number("steps"));
          case "latent_W" -> RoomHeat.latentW(row.number("vapour_g_h"), row.number("T_in_C"));
          default -> throw new IllegalArgumentException("unknown " + row.text("quantity"));
        };
    return Compare.number(row, ours);
  }

  private static MoistAir settled(CaseRow row) {
    return new RoomVapour(row.number("volume_m3"), row.number("ach"))
        .settled(
            MoistAir.of(row.number("T_out_C"), row.number("RH_out_pct")),
            row.number("T_in_C"),
            row.number("vapour_g_h"));
  }

  private static ColdSurface surface(CaseRow row) {
    return new ColdSurface(row.number("U_W_m2K"), row.number("Rsi"));
  }
}
