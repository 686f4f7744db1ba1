package sallet.household;

import java.time.LocalTime;
import java.util.Optional;

/**
 * A flat lamp above the bench, shining down.
 *
 * @param xM middle of the lamp in the room, west to east, m
 * @param yM middle of the lamp in the room, south to north, m
 * @param lengthM size of the shining face along x before it is turned, m
 * @param widthM size of the shining face along y before it is turned, m
 * @param powerW input power, W
 * @param efficacyUmolPerJ photons per joule of input, µmol/J
 * @param heightAboveBenchM shining face above the tray surface, m
 * @param on time of day it switches on
 * @param hours hours it stays on each day, 0 to 24
 * @param dimming share of full output, 0 to 1
 * @param tiltDeg how far it leans about its length, so that it shines towards the north when above
 *     0, -80 to 80
 * @param turnDeg how far it is turned clockwise as seen from above, with its lean and the spread of
 *     its light, -180 to 180
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
    double turnDeg,
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
        0,
        LampColour.WHITE,
        Optional.empty());
  }

  /** Photons it sends out, µmol/s. */
  public double ppfUmolPerS() {
    return powerW * efficacyUmolPerJ * dimming;
  }

  /** How far its face reaches from west to east as it is turned, m. */
  public double eastwardM() {
    return extentM(lengthM, widthM);
  }

  /** How far its face reaches from south to north as it is turned, m. */
  public double northwardM() {
    return extentM(widthM, lengthM);
  }

  private double extentM(double alongM, double acrossM) {
    double turn = Math.toRadians(turnDeg);
    return alongM * Math.abs(Math.cos(turn)) + acrossM * Math.abs(Math.sin(turn));
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
        turnDeg,
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
        turnDeg,
        colour,
        photometry);
  }

  /** The same lamp lit for other hours each day. */
  public Lamp litFor(double otherHours) {
    return new Lamp(
        xM,
        yM,
        lengthM,
        widthM,
        powerW,
        efficacyUmolPerJ,
        heightAboveBenchM,
        on,
        otherHours,
        dimming,
        tiltDeg,
        turnDeg,
        colour,
        photometry);
  }

  /** The same lamp with another input power. */
  public Lamp ofPower(double watts) {
    return new Lamp(
        xM,
        yM,
        lengthM,
        widthM,
        watts,
        efficacyUmolPerJ,
        heightAboveBenchM,
        on,
        hours,
        dimming,
        tiltDeg,
        turnDeg,
        colour,
        photometry);
  }
}
