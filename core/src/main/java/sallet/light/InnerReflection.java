package sallet.light;

import java.util.List;
import sallet.household.Room;
import sallet.household.Wall;
import sallet.household.Window;

/**
 * Light that reaches the bench by way of the room's surfaces, even over the room. The light through
 * a window is split into what falls from sky and sun on the floor and the lower walls and what
 * rises from the ground to the ceiling and the upper walls; each is thrown back once by these and
 * then spread by all. Source: split flux, Hopkinson, Longmore and Petherbridge 1954, written for
 * fluxes.
 *
 * @param ofFalling light on the bench per watt through the glass from sky and sun, 1/m²
 * @param ofRising the same for light from the ground, 1/m²
 */
record InnerReflection(double ofFalling, double ofRising) {
  /** Reflectance of window glass from inside, 0.1 to 0.15 (common practice). */
  private static final double GLASS = 0.12;

  /** For a window of a room. */
  static InnerReflection of(Room room, Window window) {
    double absorbed = surfaceM2(room) * (1 - meanReflectance(room));
    return new InnerReflection(
        firstReflectance(room, window, true) / absorbed,
        firstReflectance(room, window, false) / absorbed);
  }

  /** For a window of the roof: all it lets in falls on the floor and the walls first. */
  static InnerReflection ofRoof(Room room) {
    double lower = below(room, room.heightM() / 2);
    return new InnerReflection(lower, lower);
  }

  /** Light on the bench per light that strikes the floor and the walls below a height, 1/m². */
  static double below(Room room, double heightM) {
    double floorM2 = room.widthM() * room.depthM();
    double wallM2 = perimeterM(room) * Math.min(heightM, room.heightM());
    double first =
        (floorM2 * room.reflectance().floor() + wallM2 * room.reflectance().walls())
            / (floorM2 + wallM2);
    return first / (surfaceM2(room) * (1 - meanReflectance(room)));
  }

  static double surfaceM2(Room room) {
    return 2 * room.widthM() * room.depthM() + wallsM2(room);
  }

  /** Mean over all inner surfaces by area. */
  static double meanReflectance(Room room) {
    double floorM2 = room.widthM() * room.depthM();
    double glassM2 = glassM2(room.windows());
    return (floorM2 * (room.reflectance().floor() + room.reflectance().ceiling())
            + (wallsM2(room) - glassM2) * room.reflectance().walls()
            + glassM2 * GLASS)
        / surfaceM2(room);
  }

  /**
   * Mean of the surfaces light strikes first: the floor and the walls below the window's middle, or
   * the ceiling and the walls above it, without the window's own wall.
   */
  private static double firstReflectance(Room room, Window window, boolean lower) {
    double middle = Math.min(room.heightM(), window.sillM() + window.heightM() / 2);
    double height = lower ? middle : room.heightM() - middle;
    double wallM2 = (perimeterM(room) - lengthM(room, window.wall())) * height;
    double flatM2 = room.widthM() * room.depthM();
    double flat = lower ? room.reflectance().floor() : room.reflectance().ceiling();
    return (flatM2 * flat + wallM2 * room.reflectance().walls()) / (flatM2 + wallM2);
  }

  private static double wallsM2(Room room) {
    return perimeterM(room) * room.heightM();
  }

  private static double perimeterM(Room room) {
    return 2 * (room.widthM() + room.depthM());
  }

  private static double lengthM(Room room, Wall wall) {
    return wall == Wall.NORTH || wall == Wall.SOUTH ? room.widthM() : room.depthM();
  }

  private static double glassM2(List<Window> windows) {
    return windows.stream().mapToDouble(w -> w.widthM() * w.heightM()).sum();
  }
}
