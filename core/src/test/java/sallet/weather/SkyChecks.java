package sallet.weather;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import net.e175.klaus.solarpositioning.SunriseResult;
import sallet.cases.CaseFolder;
import sallet.cases.CaseRow;
import sallet.cases.Checks;
import sallet.cases.Outcome;
import sallet.cases.RowCheck;
import sallet.household.Place;
import sallet.household.WeatherSource;

/** Sun, sky and climate against published and independently computed values. */
public final class SkyChecks implements Checks {
  private static final List<String> MONTHS =
      List.of("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec");

  private static final double[] MONTH_DAYS = {31, 28.25, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};

  /** Day of the year whose light is the month's mean. Source: Klein 1977, table 1. */
  private static final int[] MEAN_DAY = {17, 47, 75, 105, 135, 162, 198, 228, 258, 288, 318, 344};

  @Override
  public Map<String, RowCheck> byFile() {
    return Map.of(
        "light/sun_position.csv", SkyChecks::sunPosition,
        "light/sun_rise_set.csv", SkyChecks::sunRiseSet,
        "light/decomposition_hourly.csv", SkyChecks::hourlySplit,
        "light/diffuse_fraction_daily_monthly.csv", SkyChecks::dailySplit,
        "light/diffuse_fraction_edges.csv", SkyChecks::dailySplit,
        "light/fao56_radiation.csv", SkyChecks::dailyRadiation,
        "light/hourly_profile.csv", SkyChecks::hourShape,
        "light/transposition.csv", SkyChecks::ontoPlane,
        "light/climate_sunshine_cities.csv", SkyChecks::sunshine);
  }

  private static Place place(CaseRow row, double elevationM) {
    return new Place(
        row.number("lat_deg"),
        row.number("lon_deg_east"),
        elevationM,
        ZoneId.of("UTC"),
        new WeatherSource.Nearest());
  }

  private static List<Outcome> sunPosition(CaseRow row, CaseFolder folder) {
    Place place = place(row, row.number("elev_m"));
    Instant when = Instant.parse(row.text("datetime_utc"));
    double deltaT = row.number("delta_t_s");
    double tolerance = row.number("tolerance");
    SunPosition seen =
        Sun.precisely(when, place, deltaT, row.number("pressure_hPa"), row.number("temp_C"));
    List<Outcome> outcomes = new ArrayList<>();
    outcomes.add(
        Outcome.number(
            "apparent zenith, deg",
            row.number("expect_zenith_apparent_deg"),
            90 - seen.altitudeDeg(),
            tolerance));
    outcomes.add(
        Outcome.number(
            "azimuth, deg",
            row.number("expect_azimuth_deg_from_north"),
            seen.azimuthDeg(),
            tolerance));
    if (row.has("expect_zenith_true_deg")) {
      SunPosition withoutAir = Sun.precisely(when, place, deltaT, 0, 10);
      outcomes.add(
          Outcome.number(
              "true zenith, deg",
              row.number("expect_zenith_true_deg"),
              90 - withoutAir.altitudeDeg(),
              tolerance));
      outcomes.add(
          Outcome.number(
              "equation of time, min",
              row.number("expect_eot_min"),
              equationOfTimeMin(when, place, withoutAir),
              tolerance * 4));
    }
    return outcomes;
  }

  /** Sun time less mean time; four minutes are a degree. */
  private static double equationOfTimeMin(Instant when, Place place, SunPosition sun) {
    double meanMin = (when.getEpochSecond() % 86400) / 60.0 + 4 * place.longitudeDeg();
    double sunMin = 720 + 4 * Math.toDegrees(sun.hourAngleRad(place.latitudeDeg()));
    return Math.IEEEremainder(sunMin - meanMin, 1440);
  }

  private static List<Outcome> sunRiseSet(CaseRow row, CaseFolder folder) {
    SunriseResult events =
        Sun.riseAndSet(place(row, 0), LocalDate.parse(row.text("utc_day")), ZoneOffset.UTC);
    double tolerance = row.number("tolerance");
    List<Outcome> outcomes = new ArrayList<>();
    outcomes.add(
        time("transit", row, "expect_transit_utc", events.transit().toInstant(), tolerance));
    boolean regular = events instanceof SunriseResult.RegularDay;
    outcomes.add(
        Outcome.same(
            "kind of day",
            row.text("expect_kind(none=polar day or night)"),
            regular ? "regular" : "none"));
    if (events instanceof SunriseResult.RegularDay day && row.has("expect_sunrise_utc")) {
      outcomes.add(time("rise", row, "expect_sunrise_utc", day.sunrise().toInstant(), tolerance));
      outcomes.add(time("set", row, "expect_sunset_utc", day.sunset().toInstant(), tolerance));
    }
    return outcomes;
  }

  /** Time of day in seconds: which of two days a set near midnight belongs to is a convention. */
  private static Outcome time(
      String what, CaseRow row, String column, Instant ours, double toleranceS) {
    Instant expected = Instant.parse(row.text(column));
    double apart = Math.IEEEremainder(Duration.between(expected, ours).toMillis() / 1000.0, 86400);
    return Outcome.number(what + ", s from " + expected, 0, apart, toleranceS);
  }

  private static List<Outcome> hourlySplit(CaseRow row, CaseFolder folder) {
    double global = row.number("ghi_Wm2");
    double sine = Math.cos(Math.toRadians(row.number("zenith_deg")));
    double clearness = row.number("kt");
    double tolerance = row.number("tolerance");
    double erbs = global * DiffuseFraction.erbsHourly(clearness);
    return List.of(
        Outcome.number(
            "clearness",
            clearness,
            DiffuseFraction.clearness(global, row.number("dni_extra_Wm2"), sine),
            1e-5),
        Outcome.number(
            "outside the air, W/m2",
            row.number("dni_extra_Wm2"),
            Sun.normalWm2((int) row.number("doy")),
            tolerance),
        Outcome.number("Erbs diffuse, W/m2", row.number("expect_erbs_dhi"), erbs, tolerance),
        Outcome.number(
            "Erbs beam, W/m2", row.number("expect_erbs_dni"), (global - erbs) / sine, tolerance),
        Outcome.number(
            "Orgill-Hollands diffuse, W/m2",
            row.number("expect_orgill_hollands_dhi"),
            global * DiffuseFraction.orgillHollandsHourly(clearness),
            tolerance),
        Outcome.number(
            "Boland diffuse, W/m2",
            row.number("expect_boland_dhi"),
            global * DiffuseFraction.bolandHourly(clearness),
            tolerance));
  }

  private static List<Outcome> dailySplit(CaseRow row, CaseFolder folder) {
    double clearness = row.number("KT");
    double sunset = row.number("ws_deg");
    double tolerance = row.number("tolerance");
    return List.of(
        Outcome.number(
            "monthly diffuse share",
            row.number("expect_Hd_over_H_monthly(0.3<=KT<=0.8)"),
            DiffuseFraction.erbsMonthly(clearness, sunset),
            tolerance),
        Outcome.number(
            "daily diffuse share",
            row.number("expect_Hd_over_H_daily"),
            DiffuseFraction.erbsDaily(clearness, sunset),
            tolerance));
  }

  private static List<Outcome> dailyRadiation(CaseRow row, CaseFolder folder) {
    double latitude = row.number("lat_deg");
    int day = (int) row.number("day_of_year");
    double tolerance = row.number("tolerance");
    List<Outcome> outcomes = new ArrayList<>();
    outcomes.add(
        Outcome.number(
            "outside the air, MJ/m2",
            row.number("expect_Ra_MJ"),
            DailyRadiation.outsideAirMegaJoules(latitude, day),
            tolerance));
    outcomes.add(
        Outcome.number(
            "day length, h",
            row.number("expect_N_h"),
            DailyRadiation.dayLengthHours(latitude, day),
            tolerance));
    outcomes.add(
        Outcome.number(
            "clear sky, MJ/m2",
            row.number("expect_Rso_MJ"),
            DailyRadiation.clearSkyMegaJoules(latitude, day, row.number("elev_m")),
            tolerance));
    if (row.has("expect_Rs_angstrom_MJ") && row.has("sunshine_hours_n")) {
      outcomes.add(
          Outcome.number(
              "from sunshine, MJ/m2",
              row.number("expect_Rs_angstrom_MJ"),
              DailyRadiation.fromSunshineMegaJoules(latitude, day, row.number("sunshine_hours_n")),
              tolerance));
    }
    return outcomes;
  }

  private static List<Outcome> hourShape(CaseRow row, CaseFolder folder) {
    double angle = Math.toRadians(row.number("hour_angle_deg"));
    double sunset = Math.toRadians(row.number("ws_deg"));
    double tolerance = row.number("tolerance");
    return List.of(
        Outcome.number(
            "global share", row.number("expect_rt"), HourShape.global(angle, sunset), tolerance),
        Outcome.number(
            "diffuse share", row.number("expect_rd"), HourShape.diffuse(angle, sunset), tolerance));
  }

  private static List<Outcome> ontoPlane(CaseRow row, CaseFolder folder) {
    SunPosition sun =
        new SunPosition(90 - row.number("zenith_apparent_deg"), row.number("azimuth_deg"));
    SkyMoment moment =
        new SkyMoment(
            0,
            1,
            sun,
            row.number("ghi_Wm2"),
            row.number("dhi_Wm2"),
            row.number("dni_Wm2"),
            row.number("dni_extra_Wm2"));
    Plane plane = new Plane(row.number("surface_tilt_deg"), row.number("surface_azimuth_deg"));
    double tolerance = row.number("tolerance");
    List<Outcome> outcomes = new ArrayList<>(onPlane(row, moment, plane, tolerance));
    if (row.text("sky").equals("clear TL=3")) {
      outcomes.addAll(clearSky(row, folder, moment, tolerance));
    }
    return outcomes;
  }

  /** The air pressure of the places stands in the file of sun positions. */
  private static List<Outcome> clearSky(
      CaseRow row, CaseFolder folder, SkyMoment moment, double tolerance) {
    double pressure =
        folder.rows("light/sun_position.csv").stream()
            .filter(other -> other.text("site").equals(row.text("site")))
            .findFirst()
            .orElseThrow()
            .number("pressure_hPa");
    ClearSky clear =
        ClearSky.of(
            moment.sun().sinAltitude(),
            row.number("airmass_rel") * pressure / Sun.SEA_LEVEL_HPA,
            moment.outsideWm2(),
            row.number("elev_m"));
    return List.of(
        Outcome.number("clear, W/m2", moment.globalWm2(), clear.globalWm2(), tolerance),
        Outcome.number("clear sky, W/m2", moment.diffuseWm2(), clear.diffuseWm2(), tolerance),
        Outcome.number("clear beam, W/m2", moment.beamWm2(), clear.beamWm2(), tolerance));
  }

  private static List<Outcome> onPlane(
      CaseRow row, SkyMoment moment, Plane plane, double tolerance) {
    SunPosition sun = moment.sun();
    return List.of(
        Outcome.number(
            "air mass", row.number("airmass_rel"), PerezSky.airMass(sun.altitudeDeg()), 0.001),
        Outcome.number(
            "incidence, deg",
            row.number("expect_aoi_deg"),
            Math.toDegrees(Math.acos(plane.cosIncidence(sun))),
            0.001),
        Outcome.number(
            "beam, W/m2",
            row.number("expect_beam_Wm2"),
            TiltedLight.beamWm2(moment, plane),
            tolerance),
        Outcome.number(
            "even sky, W/m2",
            row.number("expect_sky_isotropic_Wm2"),
            TiltedLight.evenSkyWm2(moment, plane),
            tolerance),
        Outcome.number(
            "Hay-Davies sky, W/m2",
            row.number("expect_sky_haydavies_Wm2"),
            TiltedLight.hayDaviesWm2(moment, plane),
            tolerance),
        Outcome.number(
            "Perez sky, W/m2",
            row.number("expect_sky_perez1990_Wm2"),
            PerezSky.of(moment).onWm2(plane, sun),
            tolerance),
        Outcome.number(
            "ground, W/m2",
            row.number("expect_ground_Wm2"),
            TiltedLight.groundWm2(moment, plane, 0.2),
            tolerance));
  }

  /** The file prints hundredths of MJ. */
  private static List<Outcome> sunshine(CaseRow row, CaseFolder folder) {
    List<Outcome> outcomes = new ArrayList<>();
    for (int m = 0; m < 12; m++) {
      outcomes.add(
          Outcome.number(
              row.text("city") + " " + MONTHS.get(m) + ", MJ/m2",
              row.number("angstrom_Rs_MJ_d_" + MONTHS.get(m)),
              DailyRadiation.fromSunshineMegaJoules(
                  row.number("lat"),
                  MEAN_DAY[m],
                  row.number("sun_h_" + MONTHS.get(m)) / MONTH_DAYS[m]),
              0.01));
    }
    return outcomes;
  }
}
