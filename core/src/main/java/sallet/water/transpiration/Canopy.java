package sallet.water.transpiration;

/**
 * Leaves over a square metre of ground, taken as one big leaf.
 *
 * @param absorbedWm2 short-wave radiation taken in, W/m²
 * @param stomataSM resistance of the leaf pores, s/m; 0 for open water
 * @param boundarySM resistance of the air at the leaves, s/m
 * @param leafAreaIndex leaf area over ground area, above 0
 * @param longwaveWm2K exchange of long-wave radiation with walls near air temperature, W/m²/K
 */
public record Canopy(
    double absorbedWm2,
    double stomataSM,
    double boundarySM,
    double leafAreaIndex,
    double longwaveWm2K) {

  /** Resistance of the air with a fan, s/m. Graamans et al. 2017, static value. */
  public static final double FAN_SM = 100;

  /** Resistance of the air without a fan, s/m. Graamans et al. 2017, static value. */
  public static final double STILL_SM = 200;

  /** Leaf layers that exchange water; a denser crown counts with so many. Graamans et al. 2017. */
  public static final double DENSEST = 3;

  /** Short-wave radiation that leaves throw back. Reproduces table 2 of Graamans et al. 2017. */
  public static final double REFLECTED = 0.05;

  /** Long-wave exchange 4 σ T³ at 20 °C, W/m²/K. */
  public static final double ROOM_LONGWAVE_WM2K = 5.7;

  /** Photons per joule of white lamp light, µmol/J. Graamans et al. 2017: 4.96 to 5.12. */
  private static final double LAMP_UMOL_PER_J = 4.9;

  /** Photons per joule of photosynthetic daylight, µmol/J. McCree 1972. */
  private static final double DAYLIGHT_UMOL_PER_J = 4.57;

  /** Near infrared that comes through glass and warms leaves, on the watts of PAR. Judgement. */
  private static final double DAYLIGHT_WITH_INFRARED = 1.3;

  public Canopy {
    if (!(leafAreaIndex > 0 && boundarySM > 0 && stomataSM >= 0)) {
      throw new IllegalArgumentException(
          "a canopy needs leaves and air: had leaf area index %s, boundary %s s/m, stomata %s s/m"
              .formatted(leafAreaIndex, boundarySM, stomataSM));
    }
  }

  /** Radiation that a crown takes in, W/m²; Graamans et al. 2017 equation 8, full cover. */
  public static double absorbedWm2(double lampUmol, double daylightUmol) {
    double watts =
        lampUmol / LAMP_UMOL_PER_J + DAYLIGHT_WITH_INFRARED * daylightUmol / DAYLIGHT_UMOL_PER_J;
    return (1 - REFLECTED) * watts;
  }

  /** A crown in a room, with that light at its pot. */
  public static Canopy inRoom(
      double lampUmol, double daylightUmol, double leafAreaIndex, double boundarySM) {
    return new Canopy(
        absorbedWm2(lampUmol, daylightUmol),
        Stomata.resistanceSM(lampUmol + daylightUmol),
        boundarySM,
        Math.min(DENSEST, leafAreaIndex),
        ROOM_LONGWAVE_WM2K);
  }
}
