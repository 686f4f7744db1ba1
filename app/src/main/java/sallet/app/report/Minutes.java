package sallet.app.report;

/**
 * Time hand work takes at a kitchen bench, whole minutes rounded up. All values are judgement: no
 * published time study of household benches is known to Sallet.
 */
final class Minutes {
  private Minutes() {}

  /** Filling cells, sowing and labelling: 2 minutes and a third of a minute a cell. */
  static int sowing(int cells) {
    return 2 + up(cells / 3.0);
  }

  /** Moving seedlings on: 1 minute and half a minute a plant. */
  static int moving(int plants) {
    return 1 + up(plants / 2.0);
  }

  /** Picking outer leaves: 1 minute a plant. */
  static int picking(int plants) {
    return plants;
  }

  /** Lifting or clearing, with the roots taken out of the pot: 2 minutes a plant. */
  static int lifting(int plants) {
    return 2 * plants;
  }

  private static int up(double minutes) {
    return (int) Math.ceil(minutes);
  }
}
