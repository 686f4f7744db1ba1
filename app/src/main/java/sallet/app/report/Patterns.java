package sallet.app.report;

/** The fills of the page's drawings: a ground and a pattern for each crop. */
final class Patterns {
  /** Strokes and dots on an 8 by 8 px tile; plain first. */
  private static final String[] STROKES = {
    "",
    "M-2 2l4 -4M0 8l8 -8M6 10l4 -4",
    "M0 4h8",
    "M4 0v8",
    "M-2 6l4 4M0 0l8 8M6 -2l4 4",
    "M2 2h.01M6 6h.01",
    "M0 4h8M4 0v8",
    "M0 6l4 -4l4 4",
    "M4 4h.01"
  };

  private Patterns() {}

  /** One hidden drawing that holds the patterns for the whole page. */
  static Markup of(CropMarks marks) {
    Markup svg = new Markup();
    svg.open(
        "svg",
        "width",
        0,
        "height",
        0,
        "class",
        "patterns",
        "aria-hidden",
        "true",
        "focusable",
        "false");
    svg.open("defs");
    for (CropMarks.Mark mark : marks.all()) {
      pattern(
          svg,
          "crop" + mark.number(),
          "ground" + mark.number() % CropMarks.COLOURS,
          STROKES[mark.number() % STROKES.length]);
    }
    pattern(svg, "nursery-fill", "nursery-ground", STROKES[1]);
    pattern(svg, "early-fill", "early-ground", STROKES[4]);
    return svg.close().closeLine();
  }

  private static void pattern(Markup svg, String id, String ground, String strokes) {
    svg.open("pattern", "id", id, "width", 8, "height", 8, "patternUnits", "userSpaceOnUse");
    svg.empty("rect", "width", 8, "height", 8, "class", ground);
    svg.empty("path", "d", strokes, "class", "stroke");
    svg.closeLine();
  }
}
