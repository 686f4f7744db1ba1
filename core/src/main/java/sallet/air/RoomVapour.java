package sallet.air;

/**
 * Water vapour of a room: what comes in with outdoor air, what plants and people give off, and what
 * leaves with the air that is changed. Good enough to warn, not to build by.
 *
 * @param volumeM3 air of the room, m³
 * @param changesPerHour how often an hour it is changed, 1/h; 0.2 to 1.0 is usual, 0.57 the median
 *     of living rooms (Du et al. 2012)
 */
public record RoomVapour(double volumeM3, double changesPerHour) {
  /** Air changes when nothing is known, 1/h. Judgement, near the median of Du et al. 2012. */
  public static final double USUAL_CHANGES_PER_HOUR = 0.5;

  /** Largest share of a room's vapour that is put down to one source. Judgement. */
  public static final double LARGEST_SHARE = 0.5;

  private static final double KELVIN = 273.15;

  public RoomVapour {
    if (!(volumeM3 > 0) || !(changesPerHour > 0)) {
      throw new IllegalArgumentException(
          "a room needs air and a change of it, had %s m³ and %s 1/h"
              .formatted(volumeM3, changesPerHour));
    }
  }

  /**
   * The room's air once it has settled: χ_in = χ_out (T_out / T_in) + G / (n V), never more than
   * saturated.
   *
   * @param gPerHour water given off, g/h
   */
  public MoistAir settled(MoistAir outdoors, double indoorC, double gPerHour) {
    return MoistAir.holding(indoorC, unboundedGM3(outdoors, indoorC, gPerHour));
  }

  private double unboundedGM3(MoistAir outdoors, double indoorC, double gPerHour) {
    double thinned = (outdoors.temperatureC() + KELVIN) / (indoorC + KELVIN);
    return outdoors.waterGM3() * thinned + raisedGM3(gPerHour);
  }

  /** By how much a source of water raises what the room's air holds, g/m³. */
  public double raisedGM3(double gPerHour) {
    return gPerHour / (changesPerHour * volumeM3);
  }

  /**
   * The same room's air when less or more of it is changed and other water is given off. What the
   * source adds now is taken off and put on again in proportion to its water and against the air
   * changes; it is never taken to be more than half of what the air holds now, for a room that is
   * that dry must be aired more than told.
   *
   * @param now the room's air now
   * @param nowGPerHour water given off now, above 0
   * @param changes air changes then, 1/h
   * @param gPerHour water given off then
   */
  public MoistAir after(MoistAir now, double nowGPerHour, double changes, double gPerHour) {
    double raised = Math.min(raisedGM3(nowGPerHour), LARGEST_SHARE * now.waterGM3());
    double then = raised * gPerHour / nowGPerHour * changesPerHour / changes;
    return MoistAir.holding(now.temperatureC(), now.waterGM3() - raised + then);
  }
}
