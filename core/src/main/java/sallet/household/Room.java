package sallet.household;

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
 * @param outdoorAlbedo share of light the ground outside throws back, 0 to 1
 */
public record Room(
    double widthM,
    double depthM,
    double heightM,
    double turnDeg,
    Reflectance reflectance,
    double outdoorAlbedo,
    AirClimate air,
    List<Window> windows) {
  public Room {
    windows = List.copyOf(windows);
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
