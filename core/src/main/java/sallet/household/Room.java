package sallet.household;

import java.util.Collections;
import java.util.List;

/**
 * The room. Its origin is the inner south-west floor corner; x runs east along the width, y north
 * along the depth, z up.
 *
 * @param widthM inner size west to east, m
 * @param depthM inner size south to north, m
 * @param heightM inner height, m
 * @param turnDeg how far the whole room is turned clockwise from the compass, degrees: its "north"
 *     wall faces this azimuth
 * @param reflectance of the inner surfaces
 * @param outdoorAlbedo share of light the ground outside throws back, 0 to 1, January to December
 *     (snow throws back 0.6 to 0.8)
 * @param windows in the four walls
 * @param roofWindows in the roof or ceiling
 */
public record Room(
    double widthM,
    double depthM,
    double heightM,
    double turnDeg,
    Reflectance reflectance,
    List<Double> outdoorAlbedo,
    AirClimate air,
    List<Window> windows,
    List<RoofWindow> roofWindows) {
  public Room {
    outdoorAlbedo = List.copyOf(outdoorAlbedo);
    windows = List.copyOf(windows);
    roofWindows = List.copyOf(roofWindows);
    if (outdoorAlbedo.size() != 12) {
      throw new IllegalArgumentException("needs 12 albedos, has " + outdoorAlbedo.size());
    }
  }

  /** A room without roof windows over ground that is the same all year. */
  public Room(
      double widthM,
      double depthM,
      double heightM,
      double turnDeg,
      Reflectance reflectance,
      double outdoorAlbedo,
      AirClimate air,
      List<Window> windows) {
    this(
        widthM,
        depthM,
        heightM,
        turnDeg,
        reflectance,
        Collections.nCopies(12, outdoorAlbedo),
        air,
        windows,
        List.of());
  }

  /** The same room with other air. */
  public Room withAir(AirClimate other) {
    return new Room(
        widthM, depthM, heightM, turnDeg, reflectance, outdoorAlbedo, other, windows, roofWindows);
  }

  /** Whether any daylight comes in. */
  public boolean hasDaylight() {
    return !windows.isEmpty() || !roofWindows.isEmpty();
  }

  /**
   * Shares of light the inner surfaces throw back, 0 to 1.
   *
   * @param floor floor and what stands on it
   * @param walls walls without the windows
   * @param ceiling ceiling
   */
  public record Reflectance(double floor, double walls, double ceiling) {}
}
