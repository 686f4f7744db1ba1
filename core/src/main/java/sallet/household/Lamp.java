package sallet.household;

import java.time.LocalTime;

/**
 * A flat lamp above the bench, shining down.
 *
 * @param xM middle of the lamp in the room, west to east, m
 * @param yM middle of the lamp in the room, south to north, m
 * @param lengthM size of the shining face along x, m
 * @param widthM size of the shining face along y, m
 * @param powerW input power, W
 * @param efficacyUmolPerJ photons per joule of input, µmol/J
 * @param heightAboveBenchM shining face above the tray surface, m
 * @param on time of day it switches on
 * @param hours hours it stays on each day, 0 to 24
 * @param dimming share of full output, 0 to 1
 */
public record Lamp(
    double xM,
    double yM,
    double lengthM,
    double widthM,
    double powerW,
    double efficacyUmolPerJ,
    double heightAboveBenchM,
    LocalTime on,
    double hours,
    double dimming) {

  /** Photons it sends out, µmol/s. */
  public double ppfUmolPerS() {
    return powerW * efficacyUmolPerJ * dimming;
  }
}
