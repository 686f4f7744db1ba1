package sallet.water.reservoir;

/**
 * A reservoir and what of it cannot be used.
 *
 * @param fullL all it holds, L
 * @param floodL what a flood borrows and must still be there at the last one, L
 * @param sumpL what stands below the pump's intake, L
 * @param hoseL what stays in hose and tray, L
 */
public record Tank(double fullL, double floodL, double sumpL, double hoseL) {
  public Tank {
    if (!(fullL > 0 && floodL >= 0 && sumpL >= 0 && hoseL >= 0)) {
      throw new IllegalArgumentException(
          "a tank's litres must be 0 or more, were %s, %s, %s, %s"
              .formatted(fullL, floodL, sumpL, hoseL));
    }
  }

  /** Level below which a flood is no longer whole, L. */
  public double leastL() {
    return floodL + sumpL + hoseL;
  }

  /** Water that may go from a level until floods fall short, L; not below 0. */
  public double usableL(double levelL) {
    return Math.max(0, Math.min(levelL, fullL) - leastL());
  }

  /** The same with a second container connected. */
  public Tank with(double moreL) {
    return new Tank(fullL + moreL, floodL, sumpL, hoseL);
  }
}
