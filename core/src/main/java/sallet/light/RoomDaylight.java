package sallet.light;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import sallet.household.Household;
import sallet.household.RoofWindow;
import sallet.household.Room;
import sallet.household.Window;
import sallet.weather.PerezSky;
import sallet.weather.SkyMoment;

/**
 * Daylight at fixed points of a room. What depends on the room alone (which share of the sky's
 * light each point gets) is reckoned once; each moment then needs only the sun's patches and a few
 * products.
 */
final class RoomDaylight {
  private final int points;
  private final List<Aperture> apertures = new ArrayList<>();

  /** With nothing in the room that casts a shadow. */
  RoomDaylight(Room room, List<Spot> spots) {
    this(room, List.of(), spots);
  }

  /** At points above a household's bench, with its lamps and sheets in the way. */
  RoomDaylight(Household household, List<Spot> spots) {
    this(household.room(), Block.around(household.bench(), household.lamps()), spots);
  }

  /**
   * @param bodies in the room that cast shadows, described from its south-west corner
   */
  RoomDaylight(Room room, List<Block> bodies, List<Spot> spots) {
    this.points = spots.size();
    for (Window window : room.windows()) {
      List<Opening> openings =
          spots.stream().map(p -> Opening.of(room, window, p.xM(), p.yM(), p.zM())).toList();
      apertures.add(
          new WindowLight(
              room,
              window,
              Glazing.of(window),
              InnerReflection.of(room, window),
              openings,
              seen(bodies, spots, window.wall().azimuthDeg())));
    }
    for (RoofWindow window : room.roofWindows()) {
      apertures.add(new RoofWindowLight(room, window, spots, seen(bodies, spots, 0)));
    }
  }

  private static List<List<Block>> seen(List<Block> bodies, List<Spot> spots, double outDeg) {
    return spots.stream()
        .map(spot -> bodies.stream().map(body -> body.seenFrom(spot, outDeg)).toList())
        .toList();
  }

  /**
   * Light on the level at each point, W/m².
   *
   * @param day for leaves and snow
   */
  double[] atWm2(LocalDate day, SkyMoment moment) {
    PerezSky parts = PerezSky.of(moment);
    double[] light = new double[points];
    double reflected = 0;
    for (Aperture aperture : apertures) {
      reflected += aperture.reflectedWm2(day, moment, parts);
      aperture.addSky(day, parts, light);
      aperture.addSun(day, moment, parts, light);
    }
    for (int i = 0; i < points; i++) {
      light[i] += reflected;
    }
    return light;
  }

  /** The windows of the walls, then those of the roof. */
  List<Aperture> apertures() {
    return List.copyOf(apertures);
  }
}
