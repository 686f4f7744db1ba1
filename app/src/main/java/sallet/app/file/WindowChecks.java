package sallet.app.file;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import sallet.household.RoofWindow;
import sallet.household.Room;
import sallet.household.Wall;
import sallet.household.Window;
import sallet.units.Quantity;
import sallet.units.Unit;

/** Windows lie inside their wall and do not overlap. */
final class WindowChecks {
  private static final double SLACK_M = 1e-6;

  private final Values values;
  private final Faults faults;
  private final Room room;

  WindowChecks(Values values, Faults faults, Room room) {
    this.values = values;
    this.faults = faults;
    this.room = room;
  }

  /** The wall a window is said to sit in. */
  static Optional<Wall> wall(Values values, String at) {
    return values
        .get(at + "wall", String.class)
        .map(word -> Wall.valueOf(word.toUpperCase(Locale.ROOT)));
  }

  /** Length of a wall, m. */
  static double length(Wall wall, double roomWidth, double roomDepth) {
    return wall == Wall.NORTH || wall == Wall.SOUTH ? roomWidth : roomDepth;
  }

  void check() {
    for (int i = 0; i < room.roofWindows().size(); i++) {
      RoofWindow roof = room.roofWindows().get(i);
      String at = "room.roofWindows[" + i + "]";
      inRoom(at + ".x", roof.xM(), room.widthM());
      inRoom(at + ".y", roof.yM(), room.depthM());
      inRoom(at + ".height", roof.heightM(), room.heightM());
    }
    List<Window> windows = room.windows();
    for (int i = 0; i < windows.size(); i++) {
      if (wall(values, at(i) + ".").isPresent()) {
        across(i, windows.get(i));
        up(i, windows.get(i));
        for (int j = 0; j < i; j++) {
          overlap(i, windows.get(i), j, windows.get(j));
        }
      }
    }
  }

  private void inRoom(String path, double position, double size) {
    if (position > size + SLACK_M) {
      Unit unit = values.unit(path);
      faults.add(
          path,
          values.line(path),
          Quantity.write(position, unit)
              + " puts the window's middle outside the room (0 to "
              + Quantity.write(size, unit)
              + ")");
    }
  }

  private static String at(int i) {
    return "room.windows[" + i + "]";
  }

  private void across(int i, Window window) {
    double length = length(window.wall(), room.widthM(), room.depthM());
    double end = window.fromM() + window.widthM();
    if (end > length + SLACK_M) {
      String path = at(i) + (values.written(at(i) + ".from") ? ".from" : ".width");
      Unit unit = values.unit(at(i) + ".width");
      faults.add(
          path,
          values.line(path),
          "the window reaches from "
              + Quantity.write(window.fromM(), end, unit)
              + ", beyond its wall (0 to "
              + Quantity.write(length, unit)
              + "); move it or make it narrower");
    }
  }

  private void up(int i, Window window) {
    double top = window.sillM() + window.heightM();
    if (top > room.heightM() + SLACK_M) {
      String path = at(i) + (values.written(at(i) + ".height") ? ".height" : ".sill");
      Unit unit = values.unit(path);
      faults.add(
          path,
          values.line(path),
          "the window reaches up to "
              + Quantity.write(top, unit)
              + ", above the ceiling ("
              + Quantity.write(room.heightM(), unit)
              + "); lower its sill or its height");
    }
  }

  private void overlap(int i, Window window, int j, Window other) {
    boolean across =
        window.fromM() + SLACK_M < other.fromM() + other.widthM()
            && other.fromM() + SLACK_M < window.fromM() + window.widthM();
    boolean up =
        window.sillM() + SLACK_M < other.sillM() + other.heightM()
            && other.sillM() + SLACK_M < window.sillM() + window.heightM();
    if (across && up && wall(values, at(j) + ".").equals(Optional.of(window.wall()))) {
      Unit unit = values.unit(at(i) + ".width");
      faults.add(
          at(i),
          values.line(at(i)),
          "overlaps "
              + at(j)
              + " in the "
              + window.wall().name().toLowerCase(Locale.ROOT)
              + " wall ("
              + Quantity.write(window.fromM(), window.fromM() + window.widthM(), unit)
              + " and "
              + Quantity.write(other.fromM(), other.fromM() + other.widthM(), unit)
              + "); set \"from\" of each so that they stand apart");
    }
  }
}
