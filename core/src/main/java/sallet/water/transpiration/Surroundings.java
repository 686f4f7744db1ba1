package sallet.water.transpiration;

/**
 * What else gives water to the air, and how the air moves.
 *
 * @param boundarySM resistance of the air at leaves, s/m: {@link Canopy#STILL_SM} or {@link
 *     Canopy#FAN_SM}
 * @param potTopCm2 open top of one pot, cm²
 * @param openM2 open water all day, m²; a tray wet for half a day counts with half its area
 */
public record Surroundings(double boundarySM, double potTopCm2, double openM2) {
  /** Resistance of medium that is wetted from below, s/m. Judgement: its surface dries. */
  static final double MEDIUM_SM = 300;

  /** The same with other open water. */
  public Surroundings withOpenM2(double m2) {
    return new Surroundings(boundarySM, potTopCm2, m2);
  }

  /** The same in other air movement. */
  public Surroundings withBoundarySM(double resistance) {
    return new Surroundings(resistance, potTopCm2, openM2);
  }
}
