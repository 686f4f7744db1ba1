package sallet.household;

import java.util.List;

/**
 * The flood-and-drain tray and its pots.
 *
 * @param xM west edge of the tray in the room, m
 * @param yM south edge of the tray in the room, m
 * @param widthM tray size west to east, m
 * @param depthM tray size south to north, m
 * @param heightM tray surface above the floor, m
 * @param pots pots on the tray, at least one
 * @param potHeightM height of a pot, m
 * @param potVolumeL volume of a pot, L
 * @param medium growing medium in the pots
 * @param sides reflecting sheets around it
 */
public record Bench(
    double xM,
    double yM,
    double widthM,
    double depthM,
    double heightM,
    List<Pot> pots,
    double potHeightM,
    double potVolumeL,
    String medium,
    Sides sides) {

  /** Height of a half-grown canopy above the rim of its pot, m. Judgement. */
  public static final double CANOPY_ABOVE_POT_M = 0.05;

  public Bench {
    pots = List.copyOf(pots);
  }

  /** A bench without reflecting sheets. */
  public Bench(
      double xM,
      double yM,
      double widthM,
      double depthM,
      double heightM,
      List<Pot> pots,
      double potHeightM,
      double potVolumeL,
      String medium) {
    this(xM, yM, widthM, depthM, heightM, pots, potHeightM, potVolumeL, medium, Sides.NONE);
  }

  /** Height above the floor of the plane on which light is reckoned, m. */
  public double canopyHeightM() {
    return heightM + potHeightM + CANOPY_ABOVE_POT_M;
  }

  /**
   * Least distance between the middles of two pots, m; with a single pot the tray's shorter side,
   * and never more than that.
   */
  public double potsApartM() {
    double least = Math.min(widthM, depthM);
    for (int i = 0; i < pots.size(); i++) {
      for (int j = 0; j < i; j++) {
        least = Math.min(least, pots.get(i).apartM(pots.get(j)));
      }
    }
    return least;
  }

  /** Diameter of a pot that is a plain cylinder of its volume and height, m. */
  public double potDiameterM() {
    return 2 * Math.sqrt(potVolumeL * 1e-3 / (Math.PI * potHeightM));
  }

  /** The same tray with other pots. */
  public Bench withPots(List<Pot> others) {
    return new Bench(
        xM, yM, widthM, depthM, heightM, others, potHeightM, potVolumeL, medium, sides);
  }

  /** The same bench with other reflecting sheets. */
  public Bench withSides(Sides others) {
    return new Bench(xM, yM, widthM, depthM, heightM, pots, potHeightM, potVolumeL, medium, others);
  }
}
