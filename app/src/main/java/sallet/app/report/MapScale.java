package sallet.app.report;

import sallet.household.Bench;

/**
 * The scale of a bench drawn from above: as wide as a phone where that leaves each pot room for its
 * letters, else wider, so that all of it is drawn and nothing becomes too small to read.
 *
 * @param pxPerM px for a metre
 * @param widthPx width of the whole drawing
 * @param phonePx width that fits a phone
 */
public record MapScale(double pxPerM, double widthPx, double phonePx) {
  /**
   * Chooses a scale.
   *
   * @param bench its pots are drawn
   * @param shownM width of what is drawn, west to east
   * @param edgePx kept free on both sides
   * @param phonePx width that fits a phone
   * @param potPx room a pot needs between its neighbours
   */
  public static MapScale of(
      Bench bench, double shownM, double edgePx, double phonePx, double potPx) {
    double pxPerM = Math.max((phonePx - 2 * edgePx) / shownM, potPx / bench.potsApartM());
    return new MapScale(pxPerM, 2 * edgePx + shownM * pxPerM, phonePx);
  }

  /** Width below which the drawing is not shrunk but slides sideways, px; 0 if it may be. */
  public double leastWidthPx() {
    return widthPx > phonePx + 1 ? 0.9 * widthPx : 0;
  }

  /** The style of a row of such drawings: as many side by side as can be shown whole. */
  public String rowStyle() {
    return "--map:%spx".formatted(Markup.number(Math.max(320, leastWidthPx())));
  }

  /** What to do where the screen is narrower than the drawing; empty if that cannot be. */
  public String hint() {
    return leastWidthPx() > 0
        ? " On a narrow screen slide a drawing sideways to see all of it."
        : "";
  }
}
