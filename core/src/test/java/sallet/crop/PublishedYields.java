package sallet.crop;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;
import sallet.cases.CaseFolder;
import sallet.cases.CaseRow;
import sallet.cases.Outcome;
import sallet.crop.forecast.Band;

/**
 * Rows of published_yields.csv that print enough of their conditions to be grown here, beside what
 * Sallet makes of them. What a row leaves out is assumed and told. The trials were grown by
 * researchers, so the household factor is about 1 and not 0.85; it varies by 0.2, and plants by
 * 0.1.
 */
public final class PublishedYields {
  /** The file. */
  public static final String FILE = "crop/published_yields.csv";

  private static final LocalDate FIRST = SteadyPlace.FIRST;
  private static final int MEMBERS = 200;

  private PublishedYields() {}

  /**
   * One row grown.
   *
   * @param line line in the file
   * @param paper short name of the paper
   * @param what crop, light and quantity
   * @param unit unit of the quantity
   * @param published measured
   * @param ours what Sallet gives
   * @param fresh whether it is a mass of a plant, or a ratio or share
   * @param tolerance tolerance the file suggests, as a share of the value
   * @param assumed what the row does not print
   */
  public record Grown(
      int line,
      String paper,
      String what,
      String unit,
      double published,
      Band ours,
      boolean fresh,
      double tolerance,
      String assumed) {
    /** Ours by published. */
    public double ratio() {
      return ours.median() / published;
    }

    /** Whether the measured value lies in our 80 % band. */
    public boolean inBand() {
      return ours.holds(published);
    }

    /** Whether we lie within the suggested tolerance. */
    public boolean inTolerance() {
      return Math.abs(ratio() - 1) <= tolerance;
    }
  }

  /** All rows that can be grown. */
  public static List<Grown> of(CaseFolder folder) {
    return folder.rows(FILE).stream().flatMap(row -> grown(row).stream()).toList();
  }

  /** Data: the row has a value, and when it can be grown, something grows. */
  static List<Outcome> check(CaseRow row, CaseFolder folder) {
    boolean sound =
        row.number("value") > 0 && grown(row).map(g -> g.ours().median() > 0).orElse(true);
    return List.of(Outcome.same("a measured value", "true", Boolean.toString(sound)));
  }

  private static Optional<Grown> grown(CaseRow row) {
    return switch (row.text("paper")) {
      case "Carotti2021" -> carotti(row);
      case "TalbotMonfet2024" -> Optional.of(leaf(row));
      case "Palmer2020" -> Optional.of(dayLength(row));
      case "Leafy2019" ->
          row.text("metric").startsWith("dry weight ratio")
              ? Optional.of(lightRatio(row))
              : Optional.empty();
      case "CornellCEA" -> Optional.of(floatingHead(row));
      default -> Optional.empty();
    };
  }

  private static Grown grown(CaseRow row, String what, Band ours, boolean fresh, String assumed) {
    return new Grown(
        row.line(),
        row.text("paper"),
        what,
        row.text("unit"),
        row.number("value"),
        ours,
        fresh,
        tolerance(row),
        assumed);
  }

  /** "25%" is a share of the value, "0.05" an amount. */
  private static double tolerance(CaseRow row) {
    String text = row.text("suggested_tolerance");
    return text.endsWith("%")
        ? Double.parseDouble(text.replace("%", "")) / 100
        : Double.parseDouble(text) / row.number("value");
  }

  private static final String CAROTTI =
      "18 days in the nursery, 26 °C, 1200 ppm, 400 cm² throughout";

  /** Batavia for 29 days after transplanting at 25 plants by m². */
  private static Optional<Grown> carotti(CaseRow row) {
    double ppfd = row.number("ppfd");
    double mol = row.number("dli") * 29 * 0.04;
    String light = Math.round(ppfd) + " µmol/m²/s";
    PlantParameters p = set("batavia lettuce");
    return switch (row.text("metric")) {
      case "fresh shoot per plant" ->
          Optional.of(
              grown(
                  row,
                  "batavia, " + light + ", fresh",
                  band(m -> trial(p, ppfd, m).freshG()),
                  true,
                  CAROTTI));
      case "fresh shoot per incident photon" ->
          Optional.of(
              grown(
                  row,
                  "batavia, " + light + ", fresh by light",
                  band(m -> trial(p, ppfd, m).freshG() / mol),
                  true,
                  CAROTTI));
      case "dry shoot per incident photon" ->
          Optional.of(
              grown(
                  row,
                  "batavia, " + light + ", dry by light",
                  band(m -> trial(p, ppfd, m).dryG() / mol),
                  true,
                  CAROTTI));
      default -> Optional.empty();
    };
  }

  private static Shoot trial(PlantParameters p, double ppfdUmol, double vigour) {
    PlaceDays nursery = new SteadyPlace(200, 16, 24, 22, 420).days(60);
    PlaceDays chamber = new SteadyPlace(ppfdUmol, 16, 26, 26, 1200).days(60);
    return shoot(
        p, vigour, 47, new Stay(FIRST, nursery, 16), new Stay(FIRST.plusDays(18), chamber, 400));
  }

  /** Specific leaf area and dry share are given by light and temperature alone. */
  private static Grown leaf(CaseRow row) {
    boolean area = row.text("metric").startsWith("specific leaf area");
    double meanC = row.has("T_C") ? row.number("T_C") : 24;
    PlantDay day = LifeDays.day(set("batavia lettuce"), 1, 0, row.number("dli"), meanC, 400);
    double ours = area ? day.slaCm2PerG() : day.dryMatterShare();
    return grown(
        row,
        "batavia, %s mol, %s °C, %s"
            .formatted(row.text("dli"), Math.round(meanC), area ? "leaf area" : "dry share"),
        new Band(ours, ours, ours),
        false,
        row.has("T_C") ? "" : "24 °C");
  }

  /** 20 h against 10 h of light of equal daily sum. */
  private static Grown dayLength(CaseRow row) {
    PlantParameters p = set(row.text("crop").equals("mizuna") ? "mizuna" : "cos (romaine) lettuce");
    int days = (int) row.number("days");
    return grown(
        row,
        row.text("crop") + ", 20 h against 10 h, dry",
        ratio(m -> ofHours(p, 20, days, m) / ofHours(p, 10, days, m)),
        false,
        "11 days in the nursery before, 300 cm²");
  }

  private static double ofHours(PlantParameters p, int hours, int days, double vigour) {
    PlaceDays nursery = new SteadyPlace(200, 16, 20, 20, 819).days(60);
    PlaceDays chamber = SteadyPlace.ofDli(16, hours, 20, 20, 819).days(60);
    return shoot(
            p,
            vigour,
            11 + days,
            new Stay(FIRST, nursery, 16),
            new Stay(FIRST.plusDays(11), chamber, 300))
        .dryG();
  }

  /** 14 mol against 8 mol after 28 days. */
  private static Grown lightRatio(CaseRow row) {
    String crop =
        switch (row.text("crop")) {
          case "kale" -> "kale (leaf)";
          case "spinach" -> "spinach";
          default -> "loose-leaf lettuce, green";
        };
    PlantParameters p = set(crop);
    return grown(
        row,
        row.text("crop") + ", 14 mol against 8 mol, dry",
        ratio(m -> ofLight(p, 14, m) / ofLight(p, 8, m)),
        false,
        "20 °C, 16 h, 420 ppm, 225 cm², from emergence on");
  }

  private static double ofLight(PlantParameters p, double dliMol, double vigour) {
    return shoot(
            p,
            vigour,
            28,
            new Stay(FIRST, SteadyPlace.ofDli(dliMol, 16, 20, 20, 420).days(30), 225))
        .dryG();
  }

  /** Butterhead on a pond, 35 days from sowing, 97 and then 38 plants by m². */
  private static Grown floatingHead(CaseRow row) {
    PlantParameters p = set("butterhead lettuce");
    PlaceDays nursery = new SteadyPlace(250, 24, 25, 25, 420).days(40);
    PlaceDays pond = new SteadyPlace(row.number("ppfd"), 16, 24, 19, 420).days(40);
    return grown(
        row,
        "butterhead, 17 mol, 35 days, fresh",
        band(
            m ->
                shoot(
                        p,
                        m,
                        33,
                        new Stay(FIRST, nursery, 12),
                        new Stay(FIRST.plusDays(9), pond, 103),
                        new Stay(FIRST.plusDays(19), pond, 263))
                    .freshG()),
        true,
        "up after 2 days; the model was fitted to this programme");
  }

  private record Shoot(double freshG, double dryG) {}

  private static Shoot shoot(PlantParameters p, double vigour, int days, Stay... stays) {
    PlantDay[] life =
        LifeDays.of(
            p, PlantRuns.NO_AGEING, vigour, FIRST, Arrays.asList(stays), FIRST.plusDays(days));
    PlantState plant = PlantState.atEmergence(p);
    for (PlantDay day : life) {
      plant = PlantModel.step(plant, p, day);
    }
    double dry = plant.shootG() + plant.reserveG();
    return new Shoot(plant.freshG(life[days - 1].dryMatterShare()), dry);
  }

  private static PlantParameters set(String crop) {
    return Catalogue.builtIn().find(crop).orElseThrow().growth().orElseThrow();
  }

  private static Band band(ToDoubleFunction<Double> byVigour) {
    SplittableRandom dice = new SplittableRandom(1);
    double[] values = new double[MEMBERS];
    for (int i = 0; i < MEMBERS; i++) {
      double m = Math.exp(0.2 * dice.nextGaussian() + 0.1 * dice.nextGaussian());
      values[i] = byVigour.applyAsDouble(m);
    }
    return Band.of(values);
  }

  /** The answer to light is uncertain by 40 %, read as the ends of a band of 80 %. */
  private static Band ratio(ToDoubleFunction<Double> byVigour) {
    double ours = byVigour.applyAsDouble(1.0);
    double gain = ours - 1;
    return new Band(1 + 0.6 * gain, ours, 1 + 1.4 * gain);
  }
}
