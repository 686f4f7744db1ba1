package sallet.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.net.URISyntaxException;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sallet.cases.CheckFilesTest;
import sallet.household.Bench;
import sallet.household.Household;
import sallet.household.Lamp;
import sallet.household.LampColour;
import sallet.household.Nursery;
import sallet.household.Photometry;
import sallet.household.Sides;
import sallet.weather.UnreadableFile;

class LampLightTest {
  private static final Bench BENCH = Households.bench(0.4, 1.5, 3, 6);

  private static Lamp lamp(double tiltDeg, Optional<Photometry> photometry) {
    return new Lamp(
        1.0,
        1.8,
        0.6,
        0.3,
        125,
        2,
        0.5,
        LocalTime.of(6, 0),
        16,
        1,
        tiltDeg,
        0,
        LampColour.WHITE,
        photometry);
  }

  private static Photometry file(String name) throws URISyntaxException {
    return LampChecks.read(CheckFilesTest.shipped(), "light/photometry/" + name);
  }

  /** A file of Lambert's law in steps of five degrees gives the closed form of the panel. */
  @ParameterizedTest
  @ValueSource(strings = {"lambert_panel.ies", "lambert_panel.ldt"})
  void aFileOfLambertsLawIsThePanel(String name) throws URISyntaxException {
    LampLight even = new LampLight(lamp(0, Optional.empty()), BENCH);
    LampLight filed = new LampLight(lamp(0, Optional.of(file(name))), BENCH);
    for (double x : new double[] {0.5, 0.9, 1.0, 1.4}) {
      for (double y : new double[] {1.55, 1.8, 2.05}) {
        assertThat(filed.ppfdUmol(x, y, 0.87) / even.ppfdUmol(x, y, 0.87))
            .as("at %s, %s", x, y)
            .isEqualTo(1, within(0.01));
      }
    }
  }

  /** Elements and closed form meet as the tilt goes to nothing. */
  @Test
  void aHardlyTiltedPanelIsTheLevelOne() {
    LampLight level = new LampLight(lamp(0, Optional.empty()), BENCH);
    LampLight tilted = new LampLight(lamp(1e-6, Optional.empty()), BENCH);
    assertThat(tilted.ppfdUmol(0.6, 1.6, 0.87) / level.ppfdUmol(0.6, 1.6, 0.87))
        .isEqualTo(1, within(0.005));
  }

  @Test
  void aLampThatLeansNorthShinesNorthAndItsMirrorSouth() {
    LampLight north = new LampLight(lamp(25, Optional.empty()), BENCH);
    LampLight south = new LampLight(lamp(-25, Optional.empty()), BENCH);
    assertThat(north.ppfdUmol(1.0, 2.0, 0.87)).isGreaterThan(north.ppfdUmol(1.0, 1.6, 0.87));
    assertThat(north.ppfdUmol(0.7, 2.0, 0.87))
        .isEqualTo(south.ppfdUmol(0.7, 1.6, 0.87), within(1e-9));
  }

  private static Lamp turned(
      double x, double y, double tiltDeg, double turnDeg, Optional<Photometry> photometry) {
    return new Lamp(
        x,
        y,
        0.6,
        0.3,
        125,
        2,
        0.5,
        LocalTime.of(6, 0),
        16,
        1,
        tiltDeg,
        turnDeg,
        LampColour.WHITE,
        photometry);
  }

  /** Unlike in all directions: 8 cd along plane 0, 6 across, 4 along plane 180, fading upwards. */
  private static Photometry lopsided() {
    return IesFile.read(
        List.of(
            "TILT=NONE",
            "1 -1 1 3 5 1 2 0.3 0.6 0",
            "1 1 125",
            "0 45 90",
            "0 90 180 270 360",
            "8 7 0 8 5 0 8 2 0 8 4 0 8 7 0"));
  }

  /** Tray, sheets, lamp and point turned together by a quarter, clockwise from above. */
  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void roomAndLampTurnedTogetherChangeNothing(boolean filed) {
    Optional<Photometry> spread = filed ? Optional.of(lopsided()) : Optional.empty();
    Bench here = tray(1.2, 0.6, new Sides(0.8, 0.5, 0, 0.3));
    Bench there = tray(0.6, 1.2, new Sides(0.3, 0.8, 0.5, 0));
    for (double turn : new double[] {0, 25, -100}) {
      LampLight a = new LampLight(turned(0.1, 0.05, 15, turn, spread), here);
      LampLight b = new LampLight(turned(0.05, -0.1, 15, turn + 90, spread), there);
      for (double x : new double[] {-0.5, 0.2, 0.45}) {
        for (double y : new double[] {-0.2, 0.1}) {
          assertThat(b.ppfdUmol(y, -x, 0.87)).isEqualTo(a.ppfdUmol(x, y, 0.87), within(1e-9));
        }
      }
    }
  }

  /** A tray whose middle is the corner of the room. */
  private static Bench tray(double widthM, double depthM, Sides sides) {
    return new Bench(
        -widthM / 2, -depthM / 2, widthM, depthM, 0.7, BENCH.pots(), 0.12, 1.2, "coir", sides);
  }

  /** Half a turn carries the bright end to the other side; a quarter puts it at right angles. */
  @Test
  void aTurnedLampCarriesItsLightAlong() {
    Optional<Photometry> spread = Optional.of(lopsided());
    LampLight east = new LampLight(turned(1, 1.8, 0, 0, spread), BENCH);
    LampLight west = new LampLight(turned(1, 1.8, 0, 180, spread), BENCH);
    LampLight south = new LampLight(turned(1, 1.8, 0, 90, spread), BENCH);
    assertThat(east.ppfdUmol(1.4, 1.8, 0.87)).isGreaterThan(1.5 * east.ppfdUmol(0.6, 1.8, 0.87));
    assertThat(west.ppfdUmol(0.6, 1.8, 0.87))
        .isEqualTo(east.ppfdUmol(1.4, 1.8, 0.87), within(1e-9));
    assertThat(south.ppfdUmol(1.0, 1.4, 0.87))
        .isEqualTo(east.ppfdUmol(1.4, 1.8, 0.87), within(1e-9));
  }

  /**
   * All light of a lamp reaches an endless plane: the sum over a wide floor is its PPF, level,
   * tilted by a little or narrow. Outside check: conservation.
   */
  @Test
  void allPhotonsArrive() throws URISyntaxException {
    for (Lamp lamp :
        List.of(
            lamp(0, Optional.empty()),
            lamp(10, Optional.of(file("cos3_spot.ies"))),
            lamp(0, Optional.of(file("cos3_spot.ies"))))) {
      LampLight light = new LampLight(lamp, BENCH);
      double sum = 0;
      double step = 0.1;
      for (double x = -9.95; x < 12; x += step) {
        for (double y = -9.95; y < 12; y += step) {
          sum += light.ppfdUmol(x, y, 0.7) * step * step;
        }
      }
      assertThat(sum / lamp.ppfUmolPerS()).isEqualTo(1, within(0.01));
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"lambert_panel.ies", "cos3_spot.ies", "lambert_panel.ldt"})
  void bothFormsKeepTheLightWhenWrittenAndRead(String name) throws URISyntaxException {
    Photometry lamp = file(name);
    Photometry ies = IesFile.read(IesFile.write(lamp));
    Photometry ldt = LdtFile.read(LdtFile.write(lamp));
    for (Photometry again : List.of(ies, ldt)) {
      assertThat(again.lumens() / lamp.lumens()).isEqualTo(1, within(0.01));
      assertThat(again.candela(33, 20) / lamp.candela(33, 20)).isEqualTo(1, within(0.01));
      assertThat(again.lengthM()).isEqualTo(lamp.lengthM(), within(1e-3));
      assertThat(again.widthM()).isEqualTo(lamp.widthM(), within(1e-3));
      assertThat(again.watts()).isEqualTo(lamp.watts(), within(1e-3));
    }
  }

  /** A housing that lets out 82 %: its curve adds up to 820 lm for 1000 of its lamps, no less. */
  @Test
  void theOutputRatioIsInTheCurve() throws URISyntaxException {
    Photometry whole = file("lambert_panel.ldt");
    List<String> lines = new ArrayList<>(LdtFile.write(whole));
    int first = lines.size() - (whole.planesDeg().size() - 1) * whole.anglesDeg().size();
    for (int i = first; i < lines.size(); i++) {
      lines.set(i, Double.toString(0.82 * Double.parseDouble(lines.get(i))));
    }
    lines.set(22, "82");
    assertThat(LdtFile.read(lines).lumens() / whole.lumens()).isEqualTo(0.82, within(1e-3));
  }

  /** The tables of symmetries in LM-63 and EULUMDAT: each gives the same full circle. */
  @Test
  void symmetriesFillTheCircle() {
    List<String> half =
        List.of("TILT=NONE", "1 -1 1 2 3 1 2 0 0 0", "1 1 10", "0 90", "0 90 180", "8 0 6 0 4 0");
    Photometry lamp = IesFile.read(half);
    assertThat(lamp.candela(90, 0)).isEqualTo(6);
    assertThat(lamp.candela(270, 0)).isEqualTo(6);
    assertThat(lamp.candela(225, 0)).isEqualTo(5, within(1e-9));
    assertThat(lamp.candela(359.999, 0)).isEqualTo(8, within(1e-3));
    List<String> quarter =
        List.of("TILT=NONE", "1 -1 2 2 2 1 1 1 2 0", "0.5 1 10", "0 90", "0 90", "8 0 4 0");
    Photometry four = IesFile.read(quarter);
    assertThat(four.candela(180, 0)).isEqualTo(8, within(1e-9));
    assertThat(four.candela(315, 0)).isEqualTo(6, within(1e-9));
    assertThat(four.lengthM()).as("feet").isEqualTo(0.6096, within(1e-9));
  }

  @Test
  void foreignAndBrokenFilesAreRefusedWithTheirLine() {
    assertRefused(
        List.of("TILT=NONE", "1 -1 1 2 1 3 2 0 0 0", "1 1 10", "0 90", "0", "8 0"), 2, "type A");
    assertRefused(
        List.of("TILT=NONE", "1 -1 1 2 1 2 2 0 0 0", "1 1 10", "0 90", "0", "8 0"), 2, "type B");
    assertRefused(
        List.of("TILT=NONE", "1 -1 1 3 1 1 2 0 0 0", "1 1 10", "0 45 90", "0", "8 4"),
        6,
        "ends where a candela value");
    assertRefused(List.of("a weather file", "or so"), 1, "no line TILT=");
    assertRefused(
        List.of("TILT=NONE", "1 -1 1 2 1 1 2 0 0 0", "1 1 ten", "0 90", "0", "8 0"),
        3,
        "the watts cannot be \"ten\"");
    assertThatThrownBy(() -> LdtFile.read(List.of("x", "1")))
        .isInstanceOf(UnreadableFile.class)
        .hasMessageContaining("no EULUMDAT file");
  }

  private static void assertRefused(List<String> lines, int line, String part) {
    assertThatThrownBy(() -> IesFile.read(lines))
        .isInstanceOf(UnreadableFile.class)
        .hasMessageContaining(part)
        .extracting(e -> ((UnreadableFile) e).line())
        .isEqualTo(line);
  }

  @Test
  void twoLampsAddUp() {
    Lamp left = new Lamp(0.7, 1.8, 0.6, 0.3, 60, 2.2, 0.5, LocalTime.of(6, 0), 16, 1);
    Lamp right = new Lamp(1.3, 1.8, 0.6, 0.3, 90, 2.2, 0.4, LocalTime.of(8, 0), 10, 1);
    Household none =
        Households.household(
            Households.CHRISTCHURCH, Households.room(0, List.of()), BENCH, Optional.empty());
    HourlyLight both = RoomLight.atPots(none.withLamps(List.of(left, right)), Households.DAY, 1);
    HourlyLight one = RoomLight.atPots(none.withLamps(List.of(left)), Households.DAY, 1);
    HourlyLight other = RoomLight.atPots(none.withLamps(List.of(right)), Households.DAY, 1);
    for (int pot = 0; pot < both.places(); pot++) {
      assertThat(both.dliMol(pot, 0))
          .isEqualTo(one.dliMol(pot, 0) + other.dliMol(pot, 0), within(1e-9));
    }
    assertThat(both.photoperiodHours(0)).isEqualTo(16, within(1e-9));
  }

  /** In a white room walls give light back, never more than was missed. */
  @Test
  void wallsGiveBackALittleOfWhatMisses() {
    Random random = new Random(7);
    for (int i = 0; i < 50; i++) {
      Lamp lamp =
          new Lamp(1.0, 1.8, 0.9, 0.3, 120, 2.2, 0.3 + random.nextDouble(), LocalTime.NOON, 9, 1);
      RoomLamps lamps = new RoomLamps(Households.room(0, List.of()), BENCH, List.of(lamp));
      Spot spot = new Spot(0.5 + random.nextDouble(), 1.6 + 0.4 * random.nextDouble(), 0.87);
      double thrown = lamps.ppfdUmol(0, spot) - lamps.straightUmol(0, spot);
      assertThat(thrown).isPositive().isLessThan(lamp.ppfUmolPerS() / 7.2);
    }
  }

  /** Cells straight under the shelf's lamp: the check file's panel of 0.3 m, 0.3 m above. */
  @Test
  void theShelfHasAMapOfItsCells() {
    NurseryLight light = NurseryLight.of(new Nursery.ShelfLamp(0.3, 0.3, 0.3, 0.3, 100, 0.3), 1);
    assertThat(light.ppfdUmol().get(0)).isEqualTo(266.063, within(0.01));
    NurseryLight wide = NurseryLight.of(new Nursery.ShelfLamp(0.9, 0.3, 0.6, 0.2, 100, 0.3), 40);
    assertThat(wide.ppfdUmol()).hasSize(40);
    assertThat(wide.evenness().minOverMean()).isBetween(0.3, 1.0);
  }
}
