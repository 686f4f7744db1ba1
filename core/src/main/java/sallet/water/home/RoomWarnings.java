package sallet.water.home;

import java.util.Optional;
import java.util.stream.IntStream;
import sallet.air.ColdSurface;
import sallet.air.HourlyAir;
import sallet.air.MoistAir;
import sallet.air.RoomVapour;
import sallet.household.Household;
import sallet.household.Room;
import sallet.household.Window;
import sallet.water.learn.UseFactor;
import sallet.water.transpiration.HourlyUse;

/** What the bench's vapour does to the room. */
final class RoomWarnings {
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
        use.coolestLeafK(0));
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
