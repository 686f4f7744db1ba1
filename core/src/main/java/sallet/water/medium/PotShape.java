package sallet.water.medium;

/**
 * A round pot, filled to its height, its drain holes at the bottom.
 *
 * @param heightCm height of the medium, cm
 * @param bottomRadiusCm radius at the bottom, cm
 * @param topRadiusCm radius at the top, cm
 */
public record PotShape(double heightCm, double bottomRadiusCm, double topRadiusCm) {
  private static final int SLICES = 400;

  public PotShape {
    if (!(heightCm > 0 && bottomRadiusCm > 0 && topRadiusCm > 0)) {
      throw new IllegalArgumentException(
          "a pot needs a height and radii above 0 cm, had %s, %s and %s"
              .formatted(heightCm, bottomRadiusCm, topRadiusCm));
    }
  }

  /** A straight pot of that volume and height. */
  public static PotShape straight(double volumeL, double heightCm) {
    double radiusCm = Math.sqrt(1000 * volumeL / (Math.PI * heightCm));
    return new PotShape(heightCm, radiusCm, radiusCm);
  }

  private double areaCm2(double z) {
    double radius = bottomRadiusCm + (topRadiusCm - bottomRadiusCm) * z / heightCm;
    return Math.PI * radius * radius;
  }

  /** Ground it covers, cm². */
  public double footprintCm2() {
    return areaCm2(0);
  }

  /** Open top, cm². */
  public double topCm2() {
    return areaCm2(heightCm);
  }

  /** Volume, mL. */
  public double volumeMl() {
    return heightCm / 6 * (areaCm2(0) + 4 * areaCm2(heightCm / 2) + areaCm2(heightCm));
  }

  /**
   * Mean water content once it has drained, m³/m³: at every height the medium holds what it holds
   * at that pull (container capacity; after Milks, Fonteno and Larson 1989). A low pot stays
   * wetter.
   */
  public double drainedContent(Retention medium) {
    double water = 0;
    double step = heightCm / SLICES;
    for (int i = 0; i < SLICES; i++) {
      double z = i * step;
      water +=
          step
              / 6
              * (medium.at(z) * areaCm2(z)
                  + 4 * medium.at(z + step / 2) * areaCm2(z + step / 2)
                  + medium.at(z + step) * areaCm2(z + step));
    }
    return water / volumeMl();
  }

  /** Share of air once it has drained. */
  public double airShare(Retention medium) {
    return medium.saturated() - drainedContent(medium);
  }
}
