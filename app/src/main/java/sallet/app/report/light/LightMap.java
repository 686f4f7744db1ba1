package sallet.app.report.light;

import java.util.List;
import sallet.app.report.MapScale;
import sallet.app.report.Markup;
import sallet.app.report.Svg;
import sallet.household.Bench;
import sallet.household.Lamp;
import sallet.household.Pot;
import sallet.household.Room;
import sallet.household.Window;
import sallet.light.LightYear;

/**
 * The bench and the room around it from above, north up: windows as bars in their walls, lamps as
 * dashed frames, and each pot with its light of a day as a number on a tint.
 */
final class LightMap {
  private static final double EDGE = 26;
  private static final double WIDTH = 420;

  /** Distance between neighbours that leaves room for a pot's light, px. */
  private static final double ROOM_FOR_A_POT = 28;

  /** How much of the room is shown around the tray, m. */
  private static final double AROUND_M = 0.35;

  /** Where one tint ends and the next begins, mol/m²/d. */
  private static final List<Double> STEPS_MOL = List.of(4.0, 8.0, 12.0, 16.0, 22.0);

  private final LightYear year;
  private final LightYear.Month month;
  private final Room room;
  private final Bench bench;
  private final double westM;
  private final double southM;
  private final double northM;
  private final MapScale scale;
  private final double pxPerM;
  private final Markup svg = new Markup();

  private LightMap(LightYear year, LightYear.Month month) {
    this.year = year;
    this.month = month;
    this.room = year.household().room();
    this.bench = year.household().bench();
    this.westM = westM(bench);
    this.southM = Math.max(0, bench.yM() - AROUND_M);
    this.northM = Math.min(room.depthM(), bench.yM() + bench.depthM() + AROUND_M);
    this.scale = scale(room, bench);
    this.pxPerM = scale.pxPerM();
  }

  static MapScale scale(Room room, Bench bench) {
    double eastM = Math.min(room.widthM(), bench.xM() + bench.widthM() + AROUND_M);
    return MapScale.of(bench, eastM - westM(bench), EDGE, WIDTH, ROOM_FOR_A_POT);
  }

  private static double westM(Bench bench) {
    return Math.max(0, bench.xM() - AROUND_M);
  }

  static Markup of(LightYear year, LightYear.Month month) {
    return new LightMap(year, month).draw();
  }

  private Markup draw() {
    double height = 2 * EDGE + (northM - southM) * pxPerM;
    Svg.open(svg, scale.widthPx(), height, scale.leastWidthPx());
    Svg.describe(
        svg,
        "map-" + month.month(),
        "Bench in " + LightWords.month(month),
        "Light of a day at each pot, mol/m²; the table of pots has the same numbers.");
    rect(0, 0, room.widthM(), room.depthM(), "scale");
    room.windows().forEach(this::window);
    room.roofWindows()
        .forEach(
            w -> {
              double half = Math.cos(Math.toRadians(w.slopeDeg())) * w.lengthM() / 2;
              rect(
                  w.xM() - w.widthM() / 2,
                  w.yM() - half,
                  w.xM() + w.widthM() / 2,
                  w.yM() + half,
                  "roof-pane");
            });
    Svg.text(svg, scale.widthPx() / 2, 12, "middle tiny", wallName());
    rect(bench.xM(), bench.yM(), bench.xM() + bench.widthM(), bench.yM() + bench.depthM(), "tray");
    for (int i = 0; i < bench.pots().size(); i++) {
      pot(bench.pots().get(i), month.dliMol(i));
    }
    for (Lamp lamp : year.household().lamps()) {
      lamp(lamp);
    }
    return svg.closeLine();
  }

  private void lamp(Lamp lamp) {
    svg.open(
        "g",
        "transform",
        "rotate(%s %s %s)"
            .formatted(
                Markup.number(lamp.turnDeg()),
                Markup.number(px(lamp.xM())),
                Markup.number(py(lamp.yM()))));
    rect(
        lamp.xM() - lamp.lengthM() / 2,
        lamp.yM() - lamp.widthM() / 2,
        lamp.xM() + lamp.lengthM() / 2,
        lamp.yM() + lamp.widthM() / 2,
        "lamp");
    svg.close();
  }

  private String wallName() {
    return room.turnDeg() == 0
        ? "north"
        : "north wall (faces %.0f°)".formatted((room.turnDeg() + 360) % 360);
  }

  private void window(Window w) {
    double near = w.fromM();
    double far = near + w.widthM();
    double thick = 5 / pxPerM;
    switch (w.wall()) {
      case NORTH -> rect(near, room.depthM(), far, room.depthM() + thick, "pane");
      case SOUTH -> rect(near, -thick, far, 0, "pane");
      case EAST -> rect(room.widthM(), near, room.widthM() + thick, far, "pane");
      case WEST -> rect(-thick, near, 0, far, "pane");
    }
  }

  private void pot(Pot pot, double dliMol) {
    double side = Math.min(0.95 * bench.potsApartM(), 0.2);
    double x = bench.xM() + pot.xM();
    double y = bench.yM() + pot.yM();
    rect(x - side / 2, y - side / 2, x + side / 2, y + side / 2, "leaf light" + step(dliMol));
    if (side * pxPerM >= 16) {
      String text = dliMol < 9.95 && side * pxPerM >= 20 ? LightWords.mol(dliMol) : whole(dliMol);
      Svg.text(svg, px(x), py(y) + 4, "middle tiny strong", text);
    }
  }

  private static String whole(double mol) {
    return Long.toString(Math.round(mol));
  }

  static int step(double dliMol) {
    return (int) STEPS_MOL.stream().filter(end -> dliMol >= end).count();
  }

  private void rect(double west, double south, double east, double north, String style) {
    svg.empty(
        "rect",
        "x",
        px(west),
        "y",
        py(north),
        "width",
        (east - west) * pxPerM,
        "height",
        (north - south) * pxPerM,
        "class",
        style);
  }

  private double px(double xM) {
    return EDGE + (xM - westM) * pxPerM;
  }

  private double py(double yM) {
    return EDGE + (northM - yM) * pxPerM;
  }
}
