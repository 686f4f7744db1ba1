package sallet.light;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import sallet.cases.CaseFolder;
import sallet.cases.CaseRow;
import sallet.cases.Checks;
import sallet.cases.Outcome;
import sallet.cases.RowCheck;
import sallet.household.Bench;
import sallet.household.Household;
import sallet.household.Lamp;
import sallet.household.LampColour;
import sallet.household.Photometry;
import sallet.household.Pot;
import sallet.household.Room;
import sallet.household.Sides;
import sallet.household.WeatherYear;

/** Lamps, photometry and weather files against independently computed values. */
public final class LampChecks implements Checks {
  private static final double[] DAYS = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};

  @Override
  public Map<String, RowCheck> byFile() {
    return Map.of(
        "light/lamp_height_solve.csv", LampChecks::height,
        "light/lamp_mirror_walls.csv", LampChecks::mirrors,
        "light/photometry_files.csv", LampChecks::photometry,
        "light/par_conversion.csv", LampChecks::conversion,
        "light/weather_file_monthly.csv", LampChecks::weatherMonth);
  }

  private static Lamp lamp(CaseRow row, Bench bench, double height) {
    return new Lamp(
        bench.xM() + bench.widthM() / 2,
        bench.yM() + bench.depthM() / 2,
        row.number("panel_x_m"),
        row.number("panel_y_m"),
        row.number("ppf_umol_s"),
        1,
        height,
        LocalTime.NOON,
        12,
        1);
  }

  /** The whole way: a household with black walls whose pots stand in the cells of the grid. */
  private static List<Outcome> height(CaseRow row, CaseFolder folder) {
    int nx = (int) row.number("nx");
    int ny = (int) row.number("ny");
    double width = row.number("bench_x_m");
    double depth = row.number("bench_y_m");
    List<Pot> pots =
        IntStream.range(0, nx * ny)
            .mapToObj(
                i ->
                    new Pot(
                        "P" + i,
                        width * (i % nx + 0.5) / nx,
                        depth * (Math.floorDiv(i, nx) + 0.5) / ny))
            .toList();
    Bench bench = new Bench(1, 1, width, depth, 0.5, pots, 0.1, 1, "coir");
    Room room = Households.black(Households.room(0, List.of()));
    Household household =
        Households.household(
            Households.CHRISTCHURCH, room, bench, Optional.of(lamp(row, bench, 0.5)));
    LampHeight solved = LampHeight.forMean(household, row.number("target_mean_ppfd")).orElseThrow();
    double tolerance = row.number("tolerance");
    double centre = row.number("expect_ppfd_under_centre");
    return List.of(
        Outcome.number(
            "expect_height_m", row.number("expect_height_m"), solved.clearanceM(), tolerance),
        // A millimetre of height is up to 2/h of the light below the middle.
        Outcome.relative(
            "expect_ppfd_under_centre",
            centre,
            solved.brightestUmol(),
            2 * tolerance / row.number("expect_height_m")));
  }

  /** "0.2 percent". */
  private static List<Outcome> mirrors(CaseRow row, CaseFolder folder) {
    double share = Double.parseDouble(row.text("tolerance").split(" ")[0]) / 100;
    double reflectance = row.number("wall_reflectance");
    double width = row.number("box_x_m");
    double depth = row.number("box_y_m");
    Bench bench =
        new Bench(
            0.5,
            0.5,
            width,
            depth,
            0.7,
            List.of(),
            0.1,
            1,
            "coir",
            new Sides(reflectance, reflectance, reflectance, reflectance));
    LampLight light = new LampLight(lamp(row, bench, row.number("height_m")), bench);
    double ours =
        light.ppfdUmol(
            0.5 + width / 2 + row.number("x_m"), 0.5 + depth / 2 + row.number("y_m"), 0.7);
    return List.of(Outcome.relative("expect_ppfd", row.number("expect_ppfd"), ours, share));
  }

  /** "0.2 percent". */
  private static List<Outcome> photometry(CaseRow row, CaseFolder folder) {
    String name = row.text("file_in_photometry_folder");
    String file = "light/photometry/" + name;
    if (!folder.has(file)) {
      throw new RowCheck.Skipped("needs " + file);
    }
    Photometry lamp = read(folder, file);
    double share = Double.parseDouble(row.text("tolerance").split(" ")[0]) / 100;
    double nadir = lamp.candela(0, 0);
    List<Outcome> outcomes = new ArrayList<>();
    relative(outcomes, row, "expect_flux_lm_zonal", lamp.lumens(), share);
    relative(outcomes, row, "expect_I_nadir_cd", nadir, share);
    relative(outcomes, row, "expect_lux_at_0.5m_nadir", nadir / (0.5 * 0.5), share);
    return outcomes;
  }

  static Photometry read(CaseFolder folder, String file) {
    try {
      List<String> lines = Files.readAllLines(folder.path(file));
      return file.endsWith(".ldt") ? LdtFile.read(lines) : IesFile.read(lines);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void relative(
      List<Outcome> outcomes, CaseRow row, String column, double ours, double share) {
    outcomes.add(Outcome.relative(column, row.number(column), ours, share));
  }

  /** Rows Sallet uses or can work out; the rest is data. */
  private static List<Outcome> conversion(CaseRow row, CaseFolder folder) {
    String name = row.text("case");
    double value = row.number("value");
    double half = Math.pow(10, -decimals(row.text("value"))) / 2 * 1.0001;
    if (row.text("kind").equals("photon energy")) {
      double nm = name.startsWith("equal-energy") ? 550 : Double.parseDouble(name.split(" ")[0]);
      return List.of(Outcome.number(name, value, Photons.umolPerJ(nm), half));
    }
    if (name.startsWith("PPFD 200 for 16 h")) {
      return List.of(Outcome.number(name, value, Photons.mol(200, 16), half));
    }
    if (name.startsWith("1 MJ")) {
      return List.of(
          Outcome.number(name, value, Photons.molOfMegaJoules(1, RoomLight.UMOL_PER_J), half));
    }
    if (name.startsWith("global horizontal")) {
      return List.of(Outcome.relative(name, value, RoomLight.UMOL_PER_J, 0.05));
    }
    if (!row.text("kind").equals("PPFD -> lux")) {
      return List.of();
    }
    return colour(name)
        .map(
            colour ->
                List.of(
                    Outcome.relative(
                        name,
                        value,
                        colour.luxPerUmol(),
                        name.contains("LED") ? colour.spread() + 0.003 : 1e-9)))
        .orElse(List.of());
  }

  private static int decimals(String number) {
    int point = number.indexOf('.');
    return point < 0 ? 0 : number.length() - point - 1;
  }

  private static Optional<LampColour> colour(String name) {
    if (name.startsWith("white LED +")) {
      return Optional.of(LampColour.WHITE_AND_RED);
    }
    if (name.startsWith("white LED")) {
      return Optional.of(LampColour.WHITE);
    }
    return switch (name) {
      case "high pressure sodium (mogul)" -> Optional.of(LampColour.SODIUM);
      case "cool white fluorescent" -> Optional.of(LampColour.FLUORESCENT);
      case "metal halide" -> Optional.of(LampColour.METAL_HALIDE);
      default -> Optional.empty();
    };
  }

  private static List<Outcome> weatherMonth(CaseRow row, CaseFolder folder) {
    String file = "light/weather/" + row.text("weather_file");
    if (!folder.has(file)) {
      throw new RowCheck.Skipped("needs " + file);
    }
    WeatherYear year = EndToEndCheck.read(folder.path(file));
    int month = (int) row.number("month");
    double global = 0;
    double diffuse = 0;
    double beam = 0;
    for (WeatherYear.Hour hour : year.hours()) {
      if (hour.month() == month) {
        global += hour.globalWm2() / DAYS[month - 1];
        diffuse += hour.diffuseWm2() / DAYS[month - 1];
        beam += hour.beamWm2() / DAYS[month - 1];
      }
    }
    double tolerance = row.number("tolerance");
    List<Outcome> outcomes = new ArrayList<>();
    outcomes.add(Outcome.number("lat", row.number("lat"), year.latitudeDeg(), 0.006));
    outcomes.add(Outcome.number("lon", row.number("lon"), year.longitudeDeg(), 0.006));
    outcomes.add(Outcome.number("elev_m", row.number("elev_m"), year.elevationM(), 0.5));
    outcomes.add(
        Outcome.number("expect_GHI_Wh_m2_d", row.number("expect_GHI_Wh_m2_d"), global, tolerance));
    outcomes.add(
        Outcome.number("expect_DHI_Wh_m2_d", row.number("expect_DHI_Wh_m2_d"), diffuse, tolerance));
    outcomes.add(
        Outcome.number("expect_DNI_Wh_m2_d", row.number("expect_DNI_Wh_m2_d"), beam, tolerance));
    outcomes.add(
        Outcome.number(
            "expect_DLI_at_2.04",
            row.number("expect_DLI_at_2.04"),
            Photons.molOfMegaJoules(global * 3600e-6, RoomLight.UMOL_PER_J),
            tolerance * 3600e-6 * RoomLight.UMOL_PER_J + 0.005));
    return outcomes;
  }
}
