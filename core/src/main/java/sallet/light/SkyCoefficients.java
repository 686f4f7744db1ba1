package sallet.light;

import sallet.household.Outlook;

/**
 * Share of the sky's light on the flat outdoors that reaches a point through a glazed opening.
 *
 * @param even under an even sky
 * @param overcast under an overcast sky, three times as bright overhead as at the horizon (Moon and
 *     Spencer 1942)
 */
record SkyCoefficients(double even, double overcast) {
  static final SkyCoefficients NONE = new SkyCoefficients(0, 0);

  /**
   * How bright houses look against the sky they hide. Source: Building Research Establishment
   * Digest 309, as tabulated by Tregenza and Sharples.
   */
  private static final double HOUSES_IN_EVEN_SKY = 0.1;

  private static final double HOUSES_IN_OVERCAST_SKY = 0.2;

  SkyCoefficients times(double factor) {
    return new SkyCoefficients(even * factor, overcast * factor);
  }

  SkyCoefficients plus(SkyCoefficients other) {
    return new SkyCoefficients(even + other.even, overcast + other.overcast);
  }

  /** The light of houses that stand before the part of the sky that is hidden here. */
  SkyCoefficients ofHouses() {
    return new SkyCoefficients(even * HOUSES_IN_EVEN_SKY, overcast * HOUSES_IN_OVERCAST_SKY);
  }

  SkyCoefficients less(SkyCoefficients other) {
    return new SkyCoefficients(even - other.even, overcast - other.overcast);
  }

  /** With houses or hills up to an altitude, which are not quite black. */
  static SkyCoefficients of(Opening opening, Glazing glazing, double skylineDeg) {
    SkyScreen screen = new SkyScreen(skylineDeg, Outlook.OPEN);
    return new SkyRays(opening, glazing, 0, screen).bySetOfTrees().get(0);
  }

  /** With a black skyline. */
  static SkyCoefficients aboveSkyline(Opening opening, Glazing glazing, double skylineDeg) {
    SkyScreen screen = new SkyScreen(skylineDeg, Outlook.OPEN);
    return new SkyRays(opening, glazing, 0, screen).aboveSkyline().get(0);
  }
}
