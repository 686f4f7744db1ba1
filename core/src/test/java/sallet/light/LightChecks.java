package sallet.light;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import sallet.cases.CaseFolder;
import sallet.cases.CaseRow;
import sallet.cases.Checks;
import sallet.cases.Outcome;
import sallet.cases.RowCheck;
import sallet.weather.SkyChecks;
import sallet.weather.SunPosition;

/** Light outdoors, through windows and from lamps against independently computed values. */
public final class LightChecks implements Checks {
  @Override
  public Map<String, RowCheck> byFile() {
    Map<String, RowCheck> checks = new HashMap<>(new SkyChecks().byFile());
    checks.put("light/glazing_transmission.csv", LightChecks::glazing);
    checks.put("light/window_sky_component.csv", LightChecks::skyThroughWindow);
    checks.put("light/window_reveal_skyline.csv", LightChecks::revealAndSkyline);
    checks.put("light/sun_patch.csv", LightChecks::sunPatch);
    checks.put("light/sun_patch_reveal.csv", LightChecks::sunPatch);
    checks.put("light/lamp_panel_ppfd.csv", LightChecks::lampPanel);
    checks.put("light/lamp_uniformity.csv", LightChecks::lampUniformity);
    checks.put("light/lamp_distribution_flux.csv", LightChecks::lampFlux);
    checks.put("light/average_daylight_factor.csv", LightChecks::averageDaylightFactor);
    checks.put("light/end_to_end_monthly_dli.csv", new EndToEndCheck());
    checks.putAll(new LampChecks().byFile());
    return Map.copyOf(checks);
  }

  private static List<Outcome> glazing(CaseRow row, CaseFolder folder) {
    String model = row.text("panes_or_model");
    double tolerance = row.number("tolerance");
    if (model.startsWith("ASHRAE") || model.startsWith("Rivero")) {
      double angle = Math.toRadians(row.number("theta_deg"));
      double ours =
          model.startsWith("ASHRAE") ? GlazingFits.ashrae(angle) : GlazingFits.rivero(angle);
      return List.of(
          Outcome.number("tau/tau(0)", row.number("expect_tau_over_tau0"), ours, tolerance));
    }
    Glazing glazing =
        Glazing.panes(
            Integer.parseInt(model),
            row.number("n"),
            row.number("K_per_m"),
            row.number("pane_thickness_m"));
    double tau =
        row.text("theta_deg").equals("diffuse_hemispherical")
            ? glazing.diffuse()
            : glazing.at(Math.cos(Math.toRadians(row.number("theta_deg"))));
    return List.of(
        Outcome.number("tau", row.number("expect_tau"), tau, tolerance),
        Outcome.number(
            "tau/tau(0)", row.number("expect_tau_over_tau0"), tau / glazing.at(1), tolerance));
  }

  private static Rectangle hole(CaseRow row) {
    return new Rectangle(
        row.number("x1_m"), row.number("x2_m"), row.number("z1_m"), row.number("z2_m"));
  }

  /** "1e-5 closed forms; 5e-4 glazed". */
  private static List<Outcome> skyThroughWindow(CaseRow row, CaseFolder folder) {
    String[] tolerances = row.text("tolerance").split(";");
    double closed = Double.parseDouble(tolerances[0].strip().split(" ")[0]);
    double glazed = Double.parseDouble(tolerances[1].strip().split(" ")[0]);
    Rectangle hole = hole(row);
    double d = row.number("d_m");
    Opening opening = new Opening(hole, d, 0);
    List<Outcome> outcomes = new ArrayList<>();
    compare(outcomes, row, "expect_F_uniform_unglazed", SkyFactor.even(hole, d), closed);
    compare(outcomes, row, "expect_SC_CIE_overcast_unglazed", SkyFactor.overcast(hole, d), closed);
    compare(
        outcomes,
        row,
        "expect_F_vertical_element_facing_window",
        SkyFactor.upright(hole, d),
        closed);
    for (int panes = 1; panes <= 3; panes++) {
      SkyCoefficients rays = SkyCoefficients.of(opening, Glazing.clear(panes), 0);
      compare(outcomes, row, "expect_F_uniform_" + panes + "pane", rays.even(), glazed);
      if (panes == 2) {
        compare(outcomes, row, "expect_SC_CIE_2pane", rays.overcast(), glazed);
      }
    }
    return outcomes;
  }

  private static void compare(
      List<Outcome> outcomes, CaseRow row, String column, double ours, double tolerance) {
    outcomes.add(Outcome.number(column, row.number(column), ours, tolerance));
  }

  private static List<Outcome> revealAndSkyline(CaseRow row, CaseFolder folder) {
    int panes = (int) row.number("panes");
    SkyCoefficients rays =
        SkyCoefficients.aboveSkyline(
            new Opening(hole(row), row.number("d_m"), row.number("reveal_m")),
            panes == 0 ? Glazing.none() : Glazing.clear(panes),
            row.number("skyline_deg"));
    List<Outcome> outcomes = new ArrayList<>();
    compare(outcomes, row, "expect_even", rays.even(), row.number("tolerance"));
    compare(outcomes, row, "expect_overcast", rays.overcast(), row.number("tolerance"));
    return outcomes;
  }

  private static List<Outcome> sunPatch(CaseRow row, CaseFolder folder) {
    double d = row.number("d_m_from_inner_face");
    SunPatch sun =
        SunPatch.of(
            new SunPosition(row.number("sun_altitude_deg"), row.number("sun_azimuth_deg")),
            row.number("window_outward_azimuth_deg"));
    Opening opening = new Opening(hole(row), d, row.number("reveal_m"));
    List<Outcome> outcomes = new ArrayList<>();
    outcomes.add(
        Outcome.same("lit", row.text("expect_lit"), sun.lights(opening) ? "lit" : "shade"));
    if (row.has("expect_hit_x_m_inner")) {
      double tolerance = row.number("tolerance");
      compare(outcomes, row, "expect_hit_x_m_inner", sun.hitXM(d), tolerance);
      compare(outcomes, row, "expect_hit_z_m_inner", sun.hitZM(d), tolerance);
    }
    return outcomes;
  }

  /** "1e-5 F; 0.1 percent PPFD". */
  private static List<Outcome> lampPanel(CaseRow row, CaseFolder folder) {
    String[] tolerances = row.text("tolerance").split(";");
    double ofFactor = Double.parseDouble(tolerances[0].strip().split(" ")[0]);
    double ofPpfd = Double.parseDouble(tolerances[1].strip().split(" ")[0]) / 100;
    double size = row.number("size_x_or_diameter_m");
    double height = row.number("height_m");
    boolean disc = row.text("source").equals("disc");
    double x = row.number("offset_x_m");
    double y = row.number("offset_y_m");
    double factor =
        disc
            ? Panel.disc(size, Math.hypot(x, y), height)
            : Panel.rectangle(size, row.number("size_y_m"), x, y, height);
    double area = disc ? Math.PI * size * size / 4 : size * row.number("size_y_m");
    List<Outcome> outcomes = new ArrayList<>();
    compare(outcomes, row, "expect_configuration_factor", factor, ofFactor);
    outcomes.add(
        Outcome.relative(
            "expect_ppfd_umol_m2_s",
            row.number("expect_ppfd_umol_m2_s"),
            row.number("ppf_umol_s") / area * factor,
            ofPpfd));
    return outcomes;
  }

  /** "0.1 percent", taken of each value; the ratios are printed to four places. */
  private static List<Outcome> lampUniformity(CaseRow row, CaseFolder folder) {
    double benchX = row.number("bench_x_m");
    double benchY = row.number("bench_y_m");
    int nx = (int) row.number("nx");
    int ny = (int) row.number("ny");
    double panelX = row.number("panel_x_m");
    double panelY = row.number("panel_y_m");
    double ppf = row.number("ppf_umol_s");
    double height = row.number("height_m");
    Evenness map =
        Evenness.of(
            IntStream.range(0, nx * ny)
                .mapToObj(
                    i ->
                        ppf
                            / (panelX * panelY)
                            * Panel.rectangle(
                                panelX,
                                panelY,
                                benchX * ((i % nx + 0.5) / nx - 0.5),
                                benchY * ((Math.floorDiv(i, nx) + 0.5) / ny - 0.5),
                                height))
                .toList());
    double share = Double.parseDouble(row.text("tolerance").split(" ")[0]) / 100;
    List<Outcome> outcomes = new ArrayList<>();
    relative(outcomes, row, "expect_mean", map.meanUmol(), share);
    relative(outcomes, row, "expect_min", map.minUmol(), share);
    relative(outcomes, row, "expect_max", map.maxUmol(), share);
    relative(outcomes, row, "expect_min_over_mean", map.minOverMean(), share);
    relative(outcomes, row, "expect_cv", map.variation(), share);
    relative(outcomes, row, "expect_utilisation", map.utilisation(benchX * benchY, ppf), share);
    return outcomes;
  }

  private static void relative(
      List<Outcome> outcomes, CaseRow row, String column, double ours, double share) {
    outcomes.add(Outcome.relative(column, row.number(column), ours, share));
  }

  private static List<Outcome> lampFlux(CaseRow row, CaseFolder folder) {
    double power = row.number("m");
    double tolerance = row.number("tolerance");
    List<Outcome> outcomes = new ArrayList<>();
    if (row.has("expect_half_angle_deg")) {
      compare(outcomes, row, "expect_flux_per_I0", Beam.cosineFlux(power), tolerance);
      compare(outcomes, row, "expect_half_angle_deg", Beam.halfAngleDeg(power), tolerance);
    } else {
      double[] angles = DoubleStream.iterate(0, a -> a + 5).limit(19).toArray();
      double[] intensities =
          DoubleStream.of(angles).map(a -> Math.pow(Math.cos(Math.toRadians(a)), power)).toArray();
      compare(outcomes, row, "expect_flux_per_I0", Beam.zonalFlux(angles, intensities), tolerance);
    }
    return outcomes;
  }

  private static List<Outcome> averageDaylightFactor(CaseRow row, CaseFolder folder) {
    double ours =
        new AverageDaylightFactor(
                row.number("T_diffuse"),
                row.number("window_area_m2"),
                row.number("maintenance") * row.number("frame_factor"),
                row.number("theta_deg"),
                row.number("A_room_m2"),
                row.number("R_mean"))
            .percent();
    return List.of(
        Outcome.number(
            "expect_ADF_percent", row.number("expect_ADF_percent"), ours, row.number("tolerance")));
  }
}
