package sallet.water.home;

import java.util.Optional;
import java.util.stream.IntStream;
import sallet.air.ColdSurface;
import sallet.air.HourlyAir;
import sallet.air.MoistAir;
import sallet.air.RoomHeat;
import sallet.air.RoomVapour;
import sallet.household.Household;
import sallet.household.RoofWindow;
import sallet.household.Room;
import sallet.household.Window;
import sallet.water.learn.UseFactor;
import sallet.water.transpiration.HourlyUse;

/** What the bench's vapour does to the room. */
final class RoomWarnings {
  /** Heat through walls, floor and ceiling, from little to much, W/m²/K. Judgement. */
  static final double TIGHT_WALL_WM2K = 0.3;

  static final double LEAKY_WALL_WM2K = 1.0;

  private RoomWarnings() {}

  static WaterSheet.RoomMoisture of(
      Household household, HourlyAir air, HourlyUse use, UseFactor factor) {
    Room room = household.room();
    double volume = room.widthM() * room.depthM() * room.heightM();
    double peak = factor.median() * use.peakGPerHour(0);
    double mean = factor.median() * 1000 * use.dayL(0) / 24;
    MoistAir noon = air.at(0, 12);
    double raised =
        new RoomVapour(volume, household.watering().airing().changesPerHour()).raisedGM3(mean);
    double points = 100 * raised / MoistAir.of(noon.temperatureC(), 100).waterGM3();
    Optional<ColdSurface> pane = coldestPane(room);
    return new WaterSheet.RoomMoisture(
        peak,
        points,
        pane.map(p -> p.outdoorBelowC(noon, ColdSurface.MOULD_PERCENT)),
        pane.map(p -> p.outdoorBelowC(noon, 100)),
        use.coolestLeafK(0),
        lampHeat(household, noon, mean));
  }

  /**
   * Heat of the lamps as a mean of the day, and what it does to a room that nothing else warms.
   *
   * @param gPerHour water the bench gives off, mean, g/h
   */
  static Optional<WaterSheet.LampHeat> lampHeat(
      Household household, MoistAir noon, double gPerHour) {
    double watts =
        household.lamps().stream()
            .mapToDouble(l -> l.powerW() * l.dimming() * l.hours() / 24)
            .sum();
    if (watts <= 0) {
      return Optional.empty();
    }
    double latent = Math.min(watts, RoomHeat.latentW(gPerHour, noon.temperatureC()));
    return Optional.of(
        new WaterSheet.LampHeat(
            watts,
            latent,
            (watts - latent) / room(household, LEAKY_WALL_WM2K).conductanceWK(),
            (watts - latent) / room(household, TIGHT_WALL_WM2K).conductanceWK()));
  }

  /** The room with panes of their own U and all other surfaces of one. */
  static RoomHeat room(Household household, double wallWm2K) {
    Room room = household.room();
    double panesM2 = 0;
    double panesWK = 0;
    for (Window w : room.windows()) {
      double m2 = w.widthM() * w.heightM();
      panesM2 += m2;
      panesWK += m2 * ColdSurface.window(w.panes()).transmittanceWm2K();
    }
    for (RoofWindow w : room.roofWindows()) {
      double m2 = w.widthM() * w.lengthM();
      panesM2 += m2;
      panesWK += m2 * ColdSurface.window(w.glass().panes()).transmittanceWm2K();
    }
    double surfacesM2 =
        2
            * (room.widthM() * room.depthM()
                + room.widthM() * room.heightM()
                + room.depthM() * room.heightM());
    double wallsWK = wallWm2K * Math.max(0, surfacesM2 - panesM2);
    return new RoomHeat(
        panesWK + wallsWK,
        room.widthM() * room.depthM() * room.heightM(),
        household.watering().airing().changesPerHour());
  }

  static Optional<ColdSurface> coldestPane(Room room) {
    return IntStream.concat(
            room.windows().stream().mapToInt(Window::panes),
            room.roofWindows().stream().mapToInt(roof -> roof.glass().panes()))
        .boxed()
        .min(Integer::compare)
        .map(ColdSurface::window);
  }
}
