package sallet.app.file;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import sallet.household.Bench;
import sallet.household.Lamp;
import sallet.household.Pot;
import sallet.household.Room;
import sallet.units.Quantity;
import sallet.units.Unit;

/** The bench stands in the room, its pots on the tray, the lamp between canopy and ceiling. */
final class BenchChecks {
  private static final double SLACK_M = 1e-6;

  /** Two pots nearer than this cannot both stand, m. Judgement: smaller than the smallest pot. */
  private static final double ONE_SPOT_M = 0.02;

  private static final List<String> OF_LISTED_POTS =
      List.of("bench.potVolume", "bench.potHeight", "bench.potMedium");

  private final Values values;
  private final Faults faults;
  private final Room room;
  private final Bench bench;

  BenchChecks(Values values, Faults faults, Room room, Bench bench) {
    this.values = values;
    this.faults = faults;
    this.room = room;
    this.bench = bench;
  }

  void check() {
    inside("bench.at.x", "bench.width", bench.xM(), bench.widthM(), room.widthM());
    inside("bench.at.y", "bench.depth", bench.yM(), bench.depthM(), room.depthM());
    canopy();
    if (values.isList("bench.pots")) {
      listedPots();
    } else {
      grid();
    }
  }

  /**
   * Checks a lamp.
   *
   * @param at where it is described, "lamp" or "lamps[0]"
   */
  void check(String at, Lamp lamp) {
    if (!values.written(at)) {
      assumedLamp(lamp);
      return;
    }
    double west = lamp.xM() - lamp.eastwardM() / 2;
    inside(at + ".at.x", at + ".size.length", west, lamp.eastwardM(), room.widthM());
    double south = lamp.yM() - lamp.northwardM() / 2;
    inside(at + ".at.y", at + ".size.width", south, lamp.northwardM(), room.depthM());
    double tilt = Math.toRadians(Math.abs(lamp.tiltDeg()));
    double lowest = bench.canopyHeightM() - bench.heightM() + lamp.widthM() / 2 * Math.sin(tilt);
    double highest = room.heightM() - bench.heightM();
    double height = lamp.heightAboveBenchM();
    if (height <= lowest + SLACK_M || height > highest + SLACK_M) {
      String path = at + ".heightAboveBench";
      Unit unit = values.unit(path);
      faults.add(
          path,
          values.line(path),
          Quantity.write(height, unit)
              + " puts the lamp "
              + (height <= lowest + SLACK_M ? "into the plants" : "above the ceiling")
              + " (above "
              + Quantity.write(lowest, unit)
              + " of pot and plant, and up to "
              + Quantity.write(highest, unit)
              + " under the ceiling)");
    }
  }

  private void assumedLamp(Lamp lamp) {
    boolean plantsFit = bench.canopyHeightM() <= room.heightM() + SLACK_M;
    if (plantsFit && bench.heightM() + lamp.heightAboveBenchM() > room.heightM() + SLACK_M) {
      faults.add(
          "lamp",
          0,
          "the lamp taken by default hangs above the ceiling; describe your lamp, or write none");
    }
  }

  private void inside(String atPath, String sizePath, double from, double size, double roomSize) {
    if (from < -SLACK_M || from + size > roomSize + SLACK_M) {
      String path = values.written(atPath) ? atPath : sizePath;
      Unit unit = values.unit(path);
      faults.add(
          path,
          values.line(path),
          "the "
              + (path.startsWith("lamp") ? "lamp" : "tray")
              + " reaches from "
              + Quantity.write(from, from + size, unit)
              + ", outside the room (0 to "
              + Quantity.write(roomSize, unit)
              + "); move it or make it smaller");
    }
  }

  private void canopy() {
    if (bench.canopyHeightM() > room.heightM() + SLACK_M) {
      Unit unit = values.unit("bench.height");
      faults.add(
          "bench.height",
          values.line("bench.height"),
          "the plants would stand "
              + Quantity.write(bench.canopyHeightM(), unit)
              + " high, above the ceiling ("
              + Quantity.write(room.heightM(), unit)
              + "); lower the bench or raise room.size.height");
    }
  }

  private void grid() {
    for (String path : OF_LISTED_POTS) {
      if (values.written(path)) {
        String key = path.substring("bench.pot".length()).toLowerCase(Locale.ROOT);
        faults.add(
            path,
            values.line(path),
            "is for pots written as a list; for a grid write \"" + key + "\" inside bench.pots");
      }
    }
    if (bench.pots().size() > 1) {
      Pot first = bench.pots().get(0);
      for (int i = 1; i < bench.pots().size(); i++) {
        Pot pot = bench.pots().get(i);
        double apart = Math.hypot(pot.xM() - first.xM(), pot.yM() - first.yM());
        if (apart < ONE_SPOT_M) {
          Unit unit = values.unit("bench.width");
          faults.add(
              "bench.pots",
              values.line("bench.pots"),
              "the grid puts pots "
                  + Quantity.write(apart, unit)
                  + " apart, nearer than "
                  + Quantity.write(ONE_SPOT_M, unit)
                  + "; write fewer rows or columns");
          return;
        }
      }
    }
  }

  private void listedPots() {
    Map<String, Integer> names = new HashMap<>();
    for (int i = 0; i < bench.pots().size(); i++) {
      Pot pot = bench.pots().get(i);
      onTray(i, ".x", pot.xM(), bench.widthM());
      onTray(i, ".y", pot.yM(), bench.depthM());
      Integer first = names.putIfAbsent(pot.name().toLowerCase(Locale.ROOT), i);
      if (first != null) {
        faults.add(
            at(i),
            values.line(at(i)),
            "is called " + pot.name() + " like " + at(first) + "; give each pot its own name");
      }
      for (int j = 0; j < i; j++) {
        Pot other = bench.pots().get(j);
        if (Math.hypot(pot.xM() - other.xM(), pot.yM() - other.yM()) < ONE_SPOT_M) {
          faults.add(
              at(i), values.line(at(i)), "stands on the spot of " + at(j) + "; move one of them");
        }
      }
    }
  }

  private void onTray(int i, String key, double position, double size) {
    if (position < -SLACK_M || position > size + SLACK_M) {
      String path = at(i) + key;
      Unit unit = values.unit(path);
      faults.add(
          path,
          values.line(path),
          Quantity.write(position, unit)
              + " lies outside the tray (0 to "
              + Quantity.write(size, unit)
              + ")");
    }
  }

  private static String at(int i) {
    return "bench.pots[" + i + "]";
  }
}
