package sallet.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import sallet.household.Room;
import sallet.household.Wall;
import sallet.household.Window;
import sallet.weather.PerezSky;
import sallet.weather.SkyMoment;
import sallet.weather.SunPosition;

/** Laws that hold in every room, tried on seeded random ones. */
class RoomDaylightTest {
  private static final int TRIES = 200;

  static List<Long> seeds() {
    return List.of(1L, 2L, 3L, 4L, 5L);
  }

  private static List<Window> windows(Random random, int count) {
    List<Window> windows = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      Wall wall = List.of(Wall.values()).get(random.nextInt(4));
      double width = 0.4 + random.nextDouble();
      double from = random.nextDouble() * (2.4 - width);
      windows.add(
          new Window(
              wall,
              from,
              width,
              0.4 + random.nextDouble(),
              random.nextDouble(),
              random.nextDouble() * 0.3,
              1 + random.nextInt(3),
              random.nextBoolean() ? Double.NaN : 0.3 + 0.5 * random.nextDouble(),
              0.5 + 0.5 * random.nextDouble(),
              0.8 + 0.2 * random.nextDouble(),
              0.5 + 0.5 * random.nextDouble(),
              random.nextBoolean() ? 0 : 40 * random.nextDouble()));
    }
    return windows;
  }

  private static SkyMoment moment(Random random) {
    double altitude = 2 + 80 * random.nextDouble();
    return moment(new SunPosition(altitude, 360 * random.nextDouble()), random.nextDouble());
  }

  private static SkyMoment moment(SunPosition sun, double beamShare) {
    double outside = 1367;
    double beam = 0.7 * outside * beamShare;
    double diffuse = (0.05 + 0.2 * (1 - beamShare)) * outside * sun.sinAltitude();
    return new SkyMoment(12, 1, sun, diffuse + beam * sun.sinAltitude(), diffuse, beam, outside);
  }

  private static List<Spot> points(Random random) {
    List<Spot> points = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      points.add(new Spot(0.1 + 2.8 * random.nextDouble(), 0.1 + 2.2 * random.nextDouble(), 0.87));
    }
    return points;
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void aMirroredRoomMirrorsTheMap(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < TRIES; i++) {
      Room room = Households.room(0, windows(random, 3));
      Room mirrored =
          Households.room(0, room.windows().stream().map(w -> mirror(room, w)).toList());
      List<Spot> points = points(random);
      List<Spot> across =
          points.stream().map(p -> new Spot(room.widthM() - p.xM(), p.yM(), p.zM())).toList();
      SkyMoment sky = moment(random);
      SkyMoment skyAcross =
          new SkyMoment(
              12,
              1,
              new SunPosition(sky.sun().altitudeDeg(), 360 - sky.sun().azimuthDeg()),
              sky.globalWm2(),
              sky.diffuseWm2(),
              sky.beamWm2(),
              sky.outsideWm2());
      assertThat(new RoomDaylight(mirrored, across).atWm2(Households.DAY, skyAcross))
          .as("seed %d, try %d", seed, i)
          .containsExactly(new RoomDaylight(room, points).atWm2(Households.DAY, sky), within(1e-9));
    }
  }

  /** East and west change places; north and south walls are measured from the other end. */
  private static Window mirror(Room room, Window w) {
    Wall wall =
        switch (w.wall()) {
          case EAST -> Wall.WEST;
          case WEST -> Wall.EAST;
          case NORTH, SOUTH -> w.wall();
        };
    double from = wall == w.wall() ? room.widthM() - w.fromM() - w.widthM() : w.fromM();
    return new Window(
        wall,
        from,
        w.widthM(),
        w.heightM(),
        w.sillM(),
        w.revealM(),
        w.panes(),
        w.visibleTransmittance(),
        w.glassShare(),
        w.cleanliness(),
        w.curtain(),
        w.skylineDeg());
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void turningRoomAndSunTogetherChangesNothing(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < TRIES; i++) {
      List<Window> windows = windows(random, 2);
      List<Spot> points = points(random);
      SkyMoment sky = moment(random);
      double turn = 360 * random.nextDouble();
      SkyMoment turned =
          new SkyMoment(
              12,
              1,
              new SunPosition(sky.sun().altitudeDeg(), (sky.sun().azimuthDeg() + turn) % 360),
              sky.globalWm2(),
              sky.diffuseWm2(),
              sky.beamWm2(),
              sky.outsideWm2());
      assertThat(
              new RoomDaylight(Households.room(turn, windows), points)
                  .atWm2(Households.DAY, turned))
          .as("seed %d, try %d", seed, i)
          .containsExactly(
              new RoomDaylight(Households.room(0, windows), points).atWm2(Households.DAY, sky),
              within(1e-9));
    }
  }

  /** With walls that throw back as much as glass does, a window does not change the room. */
  @ParameterizedTest
  @MethodSource("seeds")
  void windowsAddUp(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < TRIES; i++) {
      List<Window> windows = windows(random, 3);
      List<Spot> points = points(random);
      SkyMoment sky = moment(random);
      double[] sum = new double[points.size()];
      for (Window window : windows) {
        double[] one = new RoomDaylight(glassy(List.of(window)), points).atWm2(Households.DAY, sky);
        for (int p = 0; p < sum.length; p++) {
          sum[p] += one[p];
        }
      }
      assertThat(new RoomDaylight(glassy(windows), points).atWm2(Households.DAY, sky))
          .as("seed %d, try %d", seed, i)
          .containsExactly(sum, within(1e-9));
    }
  }

  private static Room glassy(List<Window> windows) {
    Room room = Households.room(0, windows);
    return new Room(
        room.widthM(),
        room.depthM(),
        room.heightM(),
        0,
        new Room.Reflectance(0.3, 0.12, 0.8),
        0.2,
        room.air(),
        windows);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void lightIsNeverNegativeNorAboveOutdoors(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < TRIES; i++) {
      Room room = Households.room(0, windows(random, 1));
      SkyMoment sky = moment(random);
      for (double wm2 : new RoomDaylight(room, points(random)).atWm2(Households.DAY, sky)) {
        assertThat(wm2).as("seed %d, try %d", seed, i).isBetween(0.0, sky.globalWm2());
      }
    }
  }

  @Test
  void aSkylineTakesLightAway() {
    Window open = Households.window(Wall.SOUTH, 0.5, 1.2, 1.2, 0.9);
    List<Spot> points = List.of(new Spot(1.1, 0.5, 0.87), new Spot(2.0, 1.5, 0.87));
    SkyMoment sky = moment(new SunPosition(35, 180), 0.5);
    double[] before =
        new RoomDaylight(Households.room(0, List.of(open)), points).atWm2(Households.DAY, sky);
    for (double skyline = 5; skyline <= 60; skyline += 5) {
      Window hidden = Households.withSkyline(open, skyline);
      double[] after =
          new RoomDaylight(Households.room(0, List.of(hidden)), points).atWm2(Households.DAY, sky);
      for (int p = 0; p < after.length; p++) {
        assertThat(after[p]).isLessThanOrEqualTo(before[p]);
      }
      before = after;
    }
  }

  /** A wall of nothing but opening, before a point at its foot, shows half the sky. */
  @Test
  void anOpeningAsLargeAsTheWallShowsHalfTheSky() {
    Opening wall = new Opening(new Rectangle(-500, 500, 0, 500), 0.5, 0);
    SkyCoefficients half = SkyCoefficients.of(wall, Glazing.none(), 0);
    assertThat(half.even()).isEqualTo(0.5, within(0.001));
    assertThat(half.overcast()).isEqualTo(0.5, within(0.001));
    assertThat(SkyFactor.even(wall.hole(), 0.5)).isEqualTo(0.5, within(0.001));
    assertThat(SkyFactor.overcast(wall.hole(), 0.5)).isEqualTo(0.5, within(0.001));
  }

  /**
   * Room 3.0 m by 2.4 m, point at (1.0, 0.6, 0.9), window 0.5 to 1.7 m along its wall, sill 1.0 m,
   * head 2.2 m; right is east looking north, south looking east, west looking south, north looking
   * west.
   */
  @ParameterizedTest
  @EnumSource(Wall.class)
  void aPointSeesTheWindowOfEachWall(Wall wall) {
    Opening seen =
        Opening.of(
            Households.room(0, List.of()),
            Households.window(wall, 0.5, 1.2, 1.2, 1.0),
            1.0,
            0.6,
            0.9);
    double[] expected =
        switch (wall) {
          case NORTH -> new double[] {-0.5, 0.7, 1.8};
          case EAST -> new double[] {-1.1, 0.1, 2.0};
          case SOUTH -> new double[] {-0.7, 0.5, 0.6};
          case WEST -> new double[] {-0.1, 1.1, 1.0};
        };
    assertThat(seen.hole().x1M()).isEqualTo(expected[0], within(1e-12));
    assertThat(seen.hole().x2M()).isEqualTo(expected[1], within(1e-12));
    assertThat(seen.distanceM()).isEqualTo(expected[2], within(1e-12));
    assertThat(seen.hole().z1M()).isEqualTo(0.1, within(1e-12));
    assertThat(seen.hole().z2M()).isEqualTo(1.3, within(1e-12));
  }

  /**
   * Split flux by hand: room 3.0 x 2.4 x 2.4 m, floor 0.3, walls 0.6, ceiling 0.8, one window 1.2 x
   * 1.2 m in the south wall, sill 0.9 m. Surfaces 14.4 + 25.92 = 40.32 m²; mean reflectance (7.2 x
   * 1.1 + 24.48 x 0.6 + 1.44 x 0.12) / 40.32 = 0.565; walls below 1.5 m without the south one 7.8 x
   * 1.5 = 11.7 m², above 7.02 m².
   */
  @Test
  void splitFluxByHand() {
    Window window = Households.window(Wall.SOUTH, 0.9, 1.2, 1.2, 0.9);
    Room room = Households.room(0, List.of(window));
    assertThat(InnerReflection.surfaceM2(room)).isEqualTo(40.32, within(1e-9));
    assertThat(InnerReflection.meanReflectance(room)).isEqualTo(0.5650, within(5e-5));
    InnerReflection reflection = InnerReflection.of(room, window);
    double absorbed = 40.32 * (1 - 0.565);
    double below = (7.2 * 0.3 + 11.7 * 0.6) / 18.9;
    double above = (7.2 * 0.8 + 7.02 * 0.6) / 14.22;
    assertThat(reflection.ofFalling()).isEqualTo(below / absorbed, within(1e-6));
    assertThat(reflection.ofRising()).isEqualTo(above / absorbed, within(1e-6));
  }

  /**
   * The same room under a sun 30° high straight before the window, 500 W/m² of beam and a black
   * sky, by hand with the glass of the check file: 0.81563 through two panes at 30°, 0.73431 for
   * diffuse light. Ground light 250 x 0.2 / 2; through the glass 500 cos 30° x 0.81563 from the
   * sun. Frame and dirt pass 0.8 x 0.92. One point lies in the patch, one in the shade of the wall.
   */
  @Test
  void oneClearMomentByHand() {
    Window window = Households.window(Wall.SOUTH, 0.9, 1.2, 1.2, 0.9);
    Room room = Households.room(0, List.of(window));
    SkyMoment clear = new SkyMoment(12, 1, new SunPosition(30, 180), 250, 0, 500, 1400);
    double absorbed = 40.32 * (1 - 0.56500);
    double falling = 500 * 0.866025 * 0.81563 * (7.2 * 0.3 + 11.7 * 0.6) / 18.9;
    double rising = 250 * 0.2 / 2 * 0.73431 * (7.2 * 0.8 + 7.02 * 0.6) / 14.22;
    double shade = 0.8 * 0.92 * 1.44 * (falling + rising) / absorbed;
    double sun = 0.8 * 0.92 * 500 * 0.5 * 0.81563;
    double[] light =
        new RoomDaylight(room, List.of(new Spot(1.5, 1.0, 0.87), new Spot(0.3, 1.0, 0.87)))
            .atWm2(Households.DAY, clear);
    assertThat(light[0]).isEqualTo(shade + sun, within(0.02));
    assertThat(light[1]).isEqualTo(shade, within(0.02));
  }

  /**
   * Facing away from the sun, a point gets its share of the sky's even part by the check file of
   * windows (line 4: 1.2 m window, sill 0.1 m above, 1.0 m away: 0.08253 through two panes), here
   * without the room's reflections.
   */
  @Test
  void oneEvenSkyByHand() {
    Window window = new Window(Wall.SOUTH, 0.9, 1.2, 1.2, 0.97, 0, 2, Double.NaN, 0.8, 0.92, 1, 0);
    Room plain = Households.room(0, List.of(window));
    Room black =
        new Room(
            plain.widthM(),
            plain.depthM(),
            plain.heightM(),
            0,
            new Room.Reflectance(0, 0, 0),
            0,
            plain.air(),
            plain.windows());
    SkyMoment sky = new SkyMoment(12, 1, new SunPosition(40, 0), 180, 100, 124.5, 1400);
    double even = PerezSky.of(sky).evenWm2();
    double[] light =
        new RoomDaylight(black, List.of(new Spot(1.5, 1.0, 0.87))).atWm2(Households.DAY, sky);
    assertThat(light[0]).isEqualTo(even * 0.08253 * 0.8 * 0.92, within(0.03));
  }
}
