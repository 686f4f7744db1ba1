package sallet.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sallet.household.Bench;
import sallet.household.Household;
import sallet.household.Lamp;
import sallet.household.LampColour;
import sallet.household.Sides;
import sallet.household.Wall;
import sallet.weather.SkyMoment;
import sallet.weather.SunPosition;

/**
 * Shadows of lamps and sheets. What a body hides of an even sky is its configuration factor, known
 * in closed form for level and upright rectangles (Howell, catalogue of configuration factors).
 */
class BlockTest {
  /** So near and so large an opening shows half the sky. */
  private static final Opening HALF_THE_SKY =
      new Opening(new Rectangle(-4000, 4000, -4000, 4000), 0, 0);

  private static double hidden(Opening opening, Block... bodies) {
    return share(opening) - share(opening, bodies);
  }

  private static double share(Opening opening, Block... bodies) {
    return new SkyRays(opening, Glazing.none(), 180, SkyScreen.none(), List.of(bodies))
        .bySetOfTrees()
        .get(0)
        .even();
  }

  /** A lamp of 0.9 by 0.3 m whose middle is out from the point and to its right. */
  @ParameterizedTest
  @ValueSource(doubles = {0.15, 0.3, 0.6})
  void aPlateHidesItsConfigurationFactor(double aboveM) {
    Block lamp = new Block(0.2, 0.25, 0.45, 0.15, 0, aboveM, aboveM);
    assertThat(hidden(HALF_THE_SKY, lamp))
        .isEqualTo(Panel.rectangle(0.9, 0.3, 0.2, 0.25, aboveM), within(0.002));
  }

  /** Straight overhead half of the plate lies behind the point, where the opening does not show. */
  @Test
  void aPlateOverheadHidesHalfOfItself() {
    Block lamp = new Block(0, 0, 0.45, 0.15, 0, 0.3, 0.3);
    assertThat(hidden(HALF_THE_SKY, lamp))
        .isEqualTo(Panel.rectangle(0.9, 0.3, 0, 0, 0.3) / 2, within(0.002));
  }

  /** A sheet before the window, another beside the point: both are upright rectangles. */
  @Test
  void anUprightSheetHidesItsConfigurationFactor() {
    Block before = new Block(0.1, 0.4, 0.6, 0, 0, -0.2, 0.3);
    assertThat(hidden(HALF_THE_SKY, before))
        .isEqualTo(SkyFactor.even(new Rectangle(-0.5, 0.7, 0, 0.3), 0.4), within(0.001));
    Block beside = new Block(0.4, 0.5, 0, 0.45, 0, 0, 0.3);
    assertThat(hidden(HALF_THE_SKY, beside))
        .isEqualTo(SkyFactor.even(new Rectangle(0.05, 0.95, 0, 0.3), 0.4), within(0.001));
  }

  /** Two bodies in one line hide no more than what both cover. */
  @Test
  void shadowsDoNotAddUpWhereTheyOverlap() {
    Block low = new Block(0, 0.5, 0.3, 0.2, 0, 0.4, 0.4);
    Block same = new Block(0, 1.0, 0.6, 0.4, 0, 0.8, 0.8);
    assertThat(hidden(HALF_THE_SKY, low, same)).isEqualTo(hidden(HALF_THE_SKY, low), within(1e-12));
  }

  /** By hand: 0.4 m up and 0.3 to 0.6 m out, a plate hides slopes from 0.4/0.6 to 0.4/0.3. */
  @Test
  void theSunIsHiddenBehindAPlate() {
    Block plate = new Block(0, 0.45, 0.2, 0.15, 0, 0.4, 0.4);
    assertThat(plate.hides(0, 1, 0.66)).isFalse();
    assertThat(plate.hides(0, 1, 0.68)).isTrue();
    assertThat(plate.hides(0, 1, 1.32)).isTrue();
    assertThat(plate.hides(0, 1, 1.34)).isFalse();
    assertThat(plate.hides(0.49, 1, 1)).as("0.4 m out it is 0.196 m to the right").isTrue();
    assertThat(plate.hides(0.51, 1, 1)).isFalse();
    assertThat(plate.hides(0, -1, 1)).as("behind the point").isFalse();
  }

  /** A body turned with the way one looks is the same body; a quarter turn swaps its sizes. */
  @Test
  void turningLooksTheSame() {
    Random random = new Random(11);
    for (int i = 0; i < 200; i++) {
      double turn = 2 * Math.PI * random.nextDouble();
      double x = random.nextDouble() - 0.5;
      double y = random.nextDouble() - 0.5;
      Block body = new Block(x, y, 0.4, 0.1, 0.3, 0.2, 0.25);
      Block turned =
          new Block(
              x * Math.cos(turn) + y * Math.sin(turn),
              y * Math.cos(turn) - x * Math.sin(turn),
              0.4,
              0.1,
              0.3 + turn,
              0.2,
              0.25);
      Block swapped = new Block(x, y, 0.1, 0.4, 0.3 + Math.PI / 2, 0.2, 0.25);
      double way = 2 * Math.PI * random.nextDouble();
      Block.Hidden seen = body.hidden(way);
      assertThat(turned.hidden(way + turn).lower()).isEqualTo(seen.lower(), within(1e-9));
      assertThat(swapped.hidden(way).lower()).isEqualTo(seen.lower(), within(1e-9));
      Block again = turned.seenFrom(new Spot(0, 0, 0), Math.toDegrees(turn));
      assertThat(again.rightM()).isEqualTo(x, within(1e-9));
      assertThat(again.outM()).isEqualTo(y, within(1e-9));
    }
  }

  private static Bench bench(Sides sides) {
    return Households.bench(0.9, 1.3, 3, 6).withSides(sides);
  }

  private static Household behind(Wall wall, Bench bench, Optional<Lamp> lamp) {
    return Households.household(
        Households.CHRISTCHURCH,
        Households.room(0, List.of(Households.window(wall, 0.3, 1.8, 1.2, 0.9))),
        bench,
        lamp);
  }

  private static double[] daylight(Household household, SkyMoment sky) {
    return new RoomDaylight(household, Spot.ofPots(household.bench())).atWm2(Households.DAY, sky);
  }

  /** A lamp hides the sun and part of the sky from the pots behind it, and gives none back. */
  @Test
  void theLampsBodyDarkensTheBench() {
    SkyMoment sky = sun(50, 0, 400);
    double[] bare = daylight(behind(Wall.NORTH, bench(Sides.NONE), Optional.empty()), sky);
    Household hung =
        behind(Wall.NORTH, bench(Sides.NONE), Optional.of(Households.LAMP.dimmedTo(0)));
    double[] under = daylight(hung, sky);
    for (int i = 0; i < bare.length; i++) {
      assertThat(under[i]).as("pot %d", i).isLessThanOrEqualTo(bare[i]);
    }
    assertThat(under[7]).as("in the lamp's shadow").isLessThan(bare[7] * 0.5);
  }

  /** Sheets stand as high as the lamp: before the window they darken, at the back they do not. */
  @Test
  void onlySheetsTowardsTheWindowDarken() {
    SkyMoment sky = sun(30, 0, 0);
    Optional<Lamp> lamp = Optional.of(Households.LAMP);
    double[] none = daylight(behind(Wall.NORTH, bench(Sides.NONE), lamp), sky);
    double[] back = daylight(behind(Wall.NORTH, bench(new Sides(0, 0, 0.8, 0)), lamp), sky);
    double[] front = daylight(behind(Wall.NORTH, bench(new Sides(0.8, 0, 0, 0)), lamp), sky);
    assertThat(back).containsExactly(none, within(1e-9));
    for (int i = 0; i < none.length; i++) {
      assertThat(front[i]).isLessThan(none[i]);
    }
  }

  /** The whole room with lamp and sheets turned under a sky turned with it. */
  @Test
  void roomAndSunTurnedTogetherChangeNothing() {
    Lamp leaning =
        new Lamp(
            1.4,
            1.9,
            0.7,
            0.2,
            90,
            2,
            0.5,
            LocalTime.of(6, 0),
            16,
            1,
            20,
            35,
            LampColour.WHITE,
            Optional.empty());
    Household here = behind(Wall.NORTH, bench(new Sides(0, 0.8, 0.8, 0)), Optional.of(leaning));
    for (double turn : new double[] {17, 90, 211}) {
      Household turned =
          Households.household(
              Households.CHRISTCHURCH,
              Households.room(turn, here.room().windows()),
              here.bench(),
              here.lamp());
      for (double azimuth : new double[] {-40, 0, 25}) {
        assertThat(daylight(turned, sun(42, azimuth + turn, 400)))
            .containsExactly(daylight(here, sun(42, azimuth, 400)), within(1e-9));
      }
    }
  }

  private static SkyMoment sun(double altitudeDeg, double azimuthDeg, double beamWm2) {
    SunPosition sun = new SunPosition(altitudeDeg, azimuthDeg);
    return new SkyMoment(12, 1, sun, 150 + beamWm2 * sun.sinAltitude(), 150, beamWm2, 1367);
  }
}
