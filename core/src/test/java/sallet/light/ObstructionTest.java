package sallet.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static sallet.light.Households.before;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import sallet.household.Outlook;
import sallet.household.RoofWindow;
import sallet.household.Room;
import sallet.household.Wall;
import sallet.household.Window;
import sallet.weather.PerezSky;
import sallet.weather.SkyMoment;
import sallet.weather.SunPosition;

/** Skylines, houses, trees, overhangs, snow and roof windows against closed forms and laws. */
class ObstructionTest {
  private static final LocalDate SUMMER = LocalDate.of(2027, 7, 1);
  private static final LocalDate WINTER = LocalDate.of(2027, 1, 1);

  private static final Outlook.Tree BEECH =
      tree(90, 270, 0, 60, 0.19, 0.47, MonthDay.of(4, 20), MonthDay.of(10, 15));

  private static Outlook.Tree tree(
      double from,
      double to,
      double low,
      double high,
      double summer,
      double winter,
      MonthDay out,
      MonthDay fall) {
    return new Outlook.Tree(from, to, low, high, summer, winter, out, fall);
  }

  private static Outlook trees(Outlook.Tree... trees) {
    return new Outlook(List.of(), List.of(), List.of(trees), Optional.empty());
  }

  private static Outlook overhang(double above, double depth, double beside) {
    return new Outlook(
        List.of(), List.of(), List.of(), Optional.of(new Outlook.Overhang(above, depth, beside)));
  }

  private static Window plain() {
    return Households.window(Wall.SOUTH, 0.9, 1.2, 1.2, 0.9);
  }

  private static double[] light(Window window, LocalDate day, SkyMoment sky) {
    return new RoomDaylight(
            Households.room(0, List.of(window)),
            List.of(new Spot(1.5, 0.5, 0.87), new Spot(0.8, 1.2, 0.87)))
        .atWm2(day, sky);
  }

  private static SkyMoment sun(double altitude, double azimuth) {
    SunPosition sun = new SunPosition(altitude, azimuth);
    return new SkyMoment(12, 1, sun, 100 + 600 * sun.sinAltitude(), 100, 600, 1367);
  }

  /** A level horizon of points or a house all round is the same as a skyline. */
  @Test
  void aLevelHorizonIsASkyline() {
    Outlook horizon =
        new Outlook(
            List.of(new Outlook.Point(0, 20), new Outlook.Point(200, 20)),
            List.of(),
            List.of(),
            Optional.empty());
    Outlook house =
        new Outlook(
            List.of(), List.of(new Outlook.House(80, 280, 20)), List.of(), Optional.empty());
    for (SkyMoment sky : List.of(sun(15, 180), sun(30, 180), sun(50, 150))) {
      SkyRays seen =
          new SkyRays(
              new Opening(new Rectangle(-0.6, 0.6, 0.1, 1.3), 0.5, 0.1),
              Glazing.clear(2),
              180,
              new SkyScreen(0, horizon));
      SkyCoefficients skyline =
          SkyCoefficients.of(
              new Opening(new Rectangle(-0.6, 0.6, 0.1, 1.3), 0.5, 0.1), Glazing.clear(2), 20);
      assertThat(seen.bySetOfTrees().get(0).even()).isEqualTo(skyline.even(), within(1e-12));
      // The patch is the same; the light by way of the walls is not: a skyline is a long row there.
      double a = light(before(plain(), 0, horizon), SUMMER, sky)[0];
      double b = light(before(plain(), 0, house), SUMMER, sky)[0];
      assertThat(a).isEqualTo(b, within(1e-9));
    }
  }

  @Test
  void aHorizonRunsStraightBetweenItsPoints() {
    SkyScreen screen =
        new SkyScreen(
            0,
            new Outlook(
                List.of(
                    new Outlook.Point(350, 10),
                    new Outlook.Point(30, 30),
                    new Outlook.Point(180, 0)),
                List.of(),
                List.of(),
                Optional.empty()));
    assertThat(screen.lowestDeg(10)).isEqualTo(20, within(1e-9));
    assertThat(screen.lowestDeg(105)).isEqualTo(15, within(1e-9));
    assertThat(screen.lowestDeg(265)).isEqualTo(5, within(1e-9));
  }

  /** Shares of sky through a beech, Wilkinson 1992: 0.19 in leaf, 0.47 bare, between by ramps. */
  @ParameterizedTest
  @CsvSource({
    "2027-07-01, 0.19",
    "2027-01-01, 0.47",
    "2027-04-20, 0.47",
    "2027-05-05, 0.33",
    "2027-10-30, 0.33",
    "2027-12-01, 0.47"
  })
  void leavesComeAndGo(LocalDate day, double sky) {
    assertThat(SkyScreen.visible(BEECH, day)).isEqualTo(sky, within(1e-9));
  }

  @Test
  void leavesRunOverTheTurnOfTheYearInTheSouth() {
    Outlook.Tree tree = tree(0, 90, 0, 60, 0.2, 0.5, MonthDay.of(9, 20), MonthDay.of(4, 15));
    assertThat(SkyScreen.visible(tree, WINTER)).isEqualTo(0.2, within(1e-9));
    assertThat(SkyScreen.visible(tree, SUMMER)).isEqualTo(0.5, within(1e-9));
  }

  /**
   * Sky behind a crown that fills the view is the crown's share of the open view, glass and all.
   */
  @Test
  void aCrownAcrossTheViewLetsItsShareThrough() {
    Opening opening = new Opening(new Rectangle(-0.6, 0.6, 0.1, 1.3), 0.5, 0.1);
    Outlook.Tree whole = tree(0, 359, 0, 90, 0.19, 0.47, MonthDay.of(4, 20), MonthDay.of(10, 15));
    List<SkyCoefficients> sets =
        new SkyRays(opening, Glazing.clear(2), 180, new SkyScreen(0, trees(whole))).bySetOfTrees();
    SkyCoefficients open = SkyCoefficients.of(opening, Glazing.clear(2), 0);
    assertThat(sets.get(0).even()).isZero();
    assertThat(sets.get(1).even()).isEqualTo(open.even(), within(2e-4));
  }

  @Test
  void aTreeDimsTheSunAndMoreSoInSummer() {
    SkyMoment sky = sun(40, 180);
    double open = light(plain(), SUMMER, sky)[0];
    double summer = light(before(plain(), 0, trees(BEECH)), SUMMER, sky)[0];
    double winter = light(before(plain(), 0, trees(BEECH)), WINTER, sky)[0];
    assertThat(summer).isLessThan(winter);
    assertThat(winter).isLessThan(open);
    assertThat(light(before(plain(), 0, trees(BEECH, BEECH)), SUMMER, sky)[0]).isLessThan(summer);
  }

  /**
   * An endless eave at the window's head hides all above the line to its outer edge: without glass
   * the rest is an opening lowered to z d / (d + depth), by the closed form of the rectangle.
   */
  @ParameterizedTest
  @ValueSource(doubles = {0.2, 0.6, 1.5})
  void anEndlessEaveLowersTheWindow(double depth) {
    Rectangle hole = new Rectangle(-0.5, 0.7, 0.1, 1.3);
    double d = 0.6;
    SkyCoefficients seen =
        new SkyRays(
                new Opening(hole, d, 0),
                Glazing.none(),
                180,
                SkyScreen.none(),
                List.of(Block.of(new Opening(hole, d, 0), new Outlook.Overhang(0, depth, 1000))))
            .bySetOfTrees()
            .get(0);
    Rectangle below = new Rectangle(-0.5, 0.7, 0.1, 1.3 * d / (d + depth));
    assertThat(seen.even()).isEqualTo(SkyFactor.even(below, d), within(2e-5));
    assertThat(seen.overcast()).isEqualTo(SkyFactor.overcast(below, d), within(2e-4));
  }

  /**
   * By hand: 0.5 m behind the glass, head 1.3 m above; the eave's edge stands at 1.3 / 1.1 = 50°.
   */
  @Test
  void anEaveKeepsTheHighSunOut() {
    Window window = before(plain(), 0, overhang(0, 0.5, 1));
    double high = light(window, SUMMER, sun(55, 180))[0];
    double low = light(window, SUMMER, sun(45, 180))[0];
    assertThat(high).isLessThan(light(plain(), SUMMER, sun(55, 180))[0] / 3);
    assertThat(low).isGreaterThan(high);
    assertThat(low).isEqualTo(light(plain(), SUMMER, sun(45, 180))[0], within(25.0));
  }

  @Test
  void snowOutdoorsBrightensTheRoom() {
    Room grass = Households.room(0, List.of(plain()));
    Room snow =
        new Room(
            grass.widthM(),
            grass.depthM(),
            grass.heightM(),
            0,
            grass.reflectance(),
            List.of(0.7, 0.7, 0.2, 0.2, 0.2, 0.2, 0.2, 0.2, 0.2, 0.2, 0.2, 0.7),
            grass.air(),
            grass.windows(),
            List.of());
    List<Spot> spot = List.of(new Spot(1.5, 1.5, 0.87));
    SkyMoment sky = sun(20, 180);
    assertThat(new RoomDaylight(snow, spot).atWm2(WINTER, sky)[0])
        .isGreaterThan(new RoomDaylight(grass, spot).atWm2(WINTER, sky)[0]);
    assertThat(new RoomDaylight(snow, spot).atWm2(SUMMER, sky)[0])
        .isEqualTo(new RoomDaylight(grass, spot).atWm2(SUMMER, sky)[0]);
  }

  private static RoofWindow roof(double slope, double shaft, int panes) {
    return new RoofWindow(
        1.5,
        1.2,
        2.4,
        1.0,
        0.8,
        slope,
        Wall.SOUTH,
        shaft,
        new RoofWindow.Glass(panes, Double.NaN, 1, 1, 1));
  }

  private static Room under(RoofWindow window) {
    Room room = Households.black(Households.room(0, List.of()));
    return new Room(
        room.widthM(),
        room.depthM(),
        room.heightM(),
        0,
        room.reflectance(),
        room.outdoorAlbedo(),
        room.air(),
        List.of(),
        List.of(window));
  }

  /**
   * A flat opening overhead: the configuration factor of a parallel rectangle (Howell, C-11). Under
   * overcast, narrow and straight overhead, 9/7 of it.
   */
  @Test
  void aFlatRoofWindowHasTheClosedForm() {
    SkyMoment grey = new SkyMoment(12, 1, new SunPosition(30, 0), 100, 100, 0, 1367);
    for (double x : new double[] {0.5, 1.5, 2.2}) {
      double factor = Panel.rectangle(1.0, 0.8, x - 1.5, 0.3, 1.53);
      double[] light =
          new RoomDaylight(under(roof(0, 0, 0)), List.of(new Spot(x, 1.5, 0.87)))
              .atWm2(SUMMER, sun(0.01, 0));
      double even = PerezSky.of(sun(0.01, 0)).evenWm2() * factor;
      assertThat(light[0]).isEqualTo(even, within(0.005 * even));
    }
    double overhead = Panel.rectangle(1.0, 0.8, 0, 0, 1.53);
    double under =
        new RoomDaylight(under(roof(0, 0, 0)), List.of(new Spot(1.5, 1.2, 0.87)))
            .atWm2(SUMMER, grey)[0];
    double most = PerezSky.of(grey).evenWm2() * overhead * 9 / 7;
    assertThat(under).isLessThan(most).isGreaterThan(0.9 * most);
  }

  /** A roof window that stands upright is a window of the wall. */
  @Test
  void anUprightRoofWindowIsAWindow() {
    RoofWindow upright =
        new RoofWindow(
            1.5,
            0,
            1.5,
            1.2,
            1.2,
            90,
            Wall.SOUTH,
            0.1,
            new RoofWindow.Glass(2, Double.NaN, 0.8, 0.92, 1));
    Room wall = Households.black(Households.room(0, List.of(plain())));
    List<Spot> spots = List.of(new Spot(1.5, 0.5, 0.87), new Spot(0.8, 1.2, 0.87));
    for (SkyMoment sky : List.of(sun(20, 180), sun(35, 150), sun(50, 200), sun(30, 20))) {
      double[] a = new RoomDaylight(under(upright), spots).atWm2(SUMMER, sky);
      double[] b = new RoomDaylight(wall, spots).atWm2(SUMMER, sky);
      for (int i = 0; i < 2; i++) {
        assertThat(a[i] / b[i]).as("%s, spot %d", sky.sun(), i).isEqualTo(1, within(0.01));
      }
    }
  }

  /** Room, sun and all that stands outside turned together: nothing changes. */
  @Test
  void turningEverythingChangesNothing() {
    double turn = 37;
    Outlook outlook =
        new Outlook(
            List.of(new Outlook.Point(100, 4), new Outlook.Point(190, 12)),
            List.of(new Outlook.House(150, 170, 25)),
            List.of(BEECH),
            Optional.of(new Outlook.Overhang(0.1, 0.4, 0.2)));
    Outlook turned =
        new Outlook(
            List.of(new Outlook.Point(100 + turn, 4), new Outlook.Point(190 + turn, 12)),
            List.of(new Outlook.House(150 + turn, 170 + turn, 25)),
            List.of(
                tree(90 + turn, 270 + turn, 0, 60, 0.19, 0.47, BEECH.leafOut(), BEECH.leafFall())),
            outlook.overhang());
    List<Spot> spots = List.of(new Spot(1.5, 0.5, 0.87), new Spot(0.8, 1.2, 0.87));
    for (SkyMoment sky : List.of(sun(15, 160), sun(35, 185), sun(55, 220), sun(30, 350))) {
      SkyMoment turnedSky = sun(sky.sun().altitudeDeg(), (sky.sun().azimuthDeg() + turn) % 360);
      double[] before =
          new RoomDaylight(withRoof(0, before(plain(), 2, outlook)), spots).atWm2(SUMMER, sky);
      double[] after =
          new RoomDaylight(withRoof(turn, before(plain(), 2, turned)), spots)
              .atWm2(SUMMER, turnedSky);
      assertThat(after).containsExactly(before, within(1e-9));
    }
  }

  private static Room withRoof(double turnDeg, Window window) {
    Room room = Households.room(turnDeg, List.of(window));
    return new Room(
        room.widthM(),
        room.depthM(),
        room.heightM(),
        turnDeg,
        room.reflectance(),
        room.outdoorAlbedo(),
        room.air(),
        room.windows(),
        List.of(roof(40, 0.2, 2)));
  }

  @Test
  void lightStaysBelowOutdoorsUnderRandomRoofs() {
    Random random = new Random(11);
    for (int i = 0; i < 100; i++) {
      RoofWindow window = roof(60 * random.nextDouble(), 0.3 * random.nextDouble(), 2);
      SkyMoment sky = sun(3 + 70 * random.nextDouble(), 360 * random.nextDouble());
      for (double wm2 :
          new RoomDaylight(under(window), List.of(new Spot(1.5, 1.0, 0.87), new Spot(0.4, 2, 0.9)))
              .atWm2(SUMMER, sky)) {
        assertThat(wm2).as("try %d", i).isBetween(0.0, sky.globalWm2());
      }
    }
  }
}
