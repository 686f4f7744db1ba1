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
   * The same room's air when less or more of it is changed and other water is given off: what comes
   * in with outdoor air is taken from how the room is now.
   *
   * @param now the room's air now
   * @param nowGPerHour water given off now
   * @param changes air changes then, 1/h
   * @param gPerHour water given off then
   */
  public MoistAir after(MoistAir now, double nowGPerHour, double changes, double gPerHour) {
    double comesIn = Math.max(0, now.waterGM3() - raisedGM3(nowGPerHour));
    double raised = new RoomVapour(volumeM3, changes).raisedGM3(gPerHour);
    return MoistAir.holding(now.temperatureC(), comesIn + raised);
  }
}
