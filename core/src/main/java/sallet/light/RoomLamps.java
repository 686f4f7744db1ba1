package sallet.light;

import java.util.ArrayList;
import java.util.List;
import sallet.household.Bench;
import sallet.household.Lamp;
import sallet.household.Room;

/**
 * The lamps above a bench with what the room's walls throw back. Photons that miss the tray are
 * spread evenly over the room, as daylight is by {@link InnerReflection}: missed × ρ / (A (1 - R))
 * with ρ of the floor and the walls below the lamp.
 */
final class RoomLamps {
  private static final int COLUMNS = 16;
  private static final int ROWS = 8;

  private final List<Lamp> lamps;
  private final List<LampLight> lights = new ArrayList<>();
  private final List<Double> spreadUmol = new ArrayList<>();

  RoomLamps(Room room, Bench bench, List<Lamp> lamps) {
    this.lamps = List.copyOf(lamps);
    for (Lamp lamp : lamps) {
      LampLight light = new LampLight(lamp, bench);
      lights.add(light);
      spreadUmol.add(spread(room, bench, lamp, light));
    }
  }

  /** PPFD of one lamp while it is on, µmol/m²/s. */
  double ppfdUmol(int lamp, Spot spot) {
    return straightUmol(lamp, spot) + spreadUmol.get(lamp);
  }

  /** The part that comes straight from the lamp and by way of sheets around the tray. */
  double straightUmol(int lamp, Spot spot) {
    return lights.get(lamp).ppfdUmol(spot.xM(), spot.yM(), spot.zM());
  }

  /** PPFD of all lamps together, each on, µmol/m²/s. */
  double ppfdUmol(Spot spot) {
    double sum = 0;
    for (int i = 0; i < lamps.size(); i++) {
      sum += ppfdUmol(i, spot);
    }
    return sum;
  }

  private static double spread(Room room, Bench bench, Lamp lamp, LampLight light) {
    if (lamp.ppfUmolPerS() == 0) {
      return 0;
    }
    double caught = 0;
    for (int i = 0; i < COLUMNS * ROWS; i++) {
      Spot spot = Spot.ofGrid(bench, COLUMNS, ROWS, i, bench.canopyHeightM());
      caught += light.ppfdUmol(spot.xM(), spot.yM(), spot.zM());
    }
    caught *= bench.widthM() * bench.depthM() / (COLUMNS * ROWS);
    double missed = Math.max(0, lamp.ppfUmolPerS() - caught);
    return missed * InnerReflection.below(room, bench.heightM() + lamp.heightAboveBenchM());
  }
}
