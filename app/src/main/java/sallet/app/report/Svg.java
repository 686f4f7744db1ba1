package sallet.app.report;

/** Parts that all drawings share. */
public final class Svg {
  private Svg() {}

  /**
   * Opens a drawing that fills its box, but is never shrunk below nine tenths of its own scale nor
   * blown up beyond one and a half.
   *
   * @param width size at its own scale, px
   * @param height size at its own scale, px
   */
  public static void open(Markup svg, double width, double height) {
    open(svg, width, height, width * 0.9);
  }

  /** Opens a drawing that is never shrunk below a width of its own, px. */
  public static void open(Markup svg, double width, double height, double leastWidth) {
    svg.open(
        "svg",
        "xmlns",
        "http://www.w3.org/2000/svg",
        "role",
        "img",
        "viewBox",
        "0 0 %s %s".formatted(Markup.number(width), Markup.number(height)),
        "style",
        "min-width:%spx;max-width:%spx"
            .formatted(Markup.number(leastWidth), Markup.number(width * 1.5)));
  }

  /** The drawing's name and what it says in words. */
  public static void describe(Markup svg, String id, String title, String description) {
    svg.element("title", title, "id", id + "-title");
    svg.element("desc", description, "id", id + "-desc");
  }

  /** A text. */
  public static void text(Markup svg, double x, double y, String styleClass, String text) {
    svg.element("text", text, "x", x, "y", y, "class", styleClass);
  }

  /** A few letters on a slip of paper, so that they can be read on any pattern. */
  public static void chip(Markup svg, double x, double y, String letters) {
    double width = 4 + 7.5 * letters.length();
    svg.empty(
        "rect",
        "x",
        x - width / 2,
        "y",
        y - 7,
        "width",
        width,
        "height",
        14.0,
        "rx",
        3.0,
        "class",
        "chip");
    text(svg, x, y + 4, "middle letters", letters);
  }

  /** 1, 2 or 5 times a power of ten, four to nine lines up to the top. */
  public static double gridStep(double top) {
    double power = Math.pow(10, Math.floor(Math.log10(top / 4)));
    double lead = top / 4 / power;
    return power * (lead >= 5 ? 5 : lead >= 2 ? 2 : 1);
  }
}
