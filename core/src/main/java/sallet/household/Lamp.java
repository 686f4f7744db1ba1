package sallet.household;

import java.time.LocalTime;
import java.util.Optional;

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
 * @param tiltDeg how far it leans about its length, so that it shines towards the north when above
 *     0, -80 to 80
 * @param colour what its light is made of
 * @param photometry how its light is spread; evenly in all directions (Lambert) when empty
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
    double dimming,
    double tiltDeg,
    LampColour colour,
    Optional<Photometry> photometry) {

  /** A level white lamp that shines evenly in all directions. */
  public Lamp(
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
    this(
        xM,
        yM,
        lengthM,
        widthM,
        powerW,
        efficacyUmolPerJ,
        heightAboveBenchM,
        on,
        hours,
        dimming,
        0,
        LampColour.WHITE,
        Optional.empty());
  }

  /** Photons it sends out, µmol/s. */
  public double ppfUmolPerS() {
    return powerW * efficacyUmolPerJ * dimming;
  }

  /** The same lamp at another height above the tray. */
  public Lamp atHeight(double metres) {
    return new Lamp(
        xM,
        yM,
        lengthM,
        widthM,
        powerW,
        efficacyUmolPerJ,
        metres,
        on,
        hours,
        dimming,
        tiltDeg,
        colour,
        photometry);
  }

  /** The same lamp at another share of its full output. */
  public Lamp dimmedTo(double share) {
    return new Lamp(
        xM,
        yM,
        lengthM,
        widthM,
        powerW,
        efficacyUmolPerJ,
        heightAboveBenchM,
        on,
        hours,
        share,
        tiltDeg,
        colour,
        photometry);
  }

  /** The same lamp on for other hours a day. */
  public Lamp lasting(double hoursPerDay) {
    return new Lamp(
        xM,
        yM,
        lengthM,
        widthM,
        powerW,
        efficacyUmolPerJ,
        heightAboveBenchM,
        on,
        hoursPerDay,
        dimming,
        tiltDeg,
        colour,
        photometry);
  }
}
