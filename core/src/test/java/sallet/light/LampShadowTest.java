package sallet.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sallet.household.Household;
import sallet.household.Lamp;
import sallet.household.Place;
import sallet.household.Room;
import sallet.household.Wall;
import sallet.household.WeatherSource;
import sallet.household.Window;

/** What the bodies of lamps keep off. */
class LampShadowTest {
  private static final LocalDate YEAR = LocalDate.of(2027, 1, 1);
  private static final Place HOBART =
      Households.place(-42.88, 147.33, "Australia/Hobart", new WeatherSource.Nearest());

  /** The lamp of the example's porch, above the middle of its tray or so far to the south. */
  private static Lamp lamp(double southM, double heightM) {
    return new Lamp(1.5, 1.8 - southM, 0.9, 0.3, 120, 2.2, heightM, LocalTime.of(6, 0), 14, 1);
  }

  /** The example's porch with black walls, so that all light comes straight. */
  private static Household porch(Optional<Lamp> lamp) {
    Room room =
        new Room(
            3.0,
            2.2,
            2.4,
            0,
            new Room.Reflectance(0, 0, 0),
            0.2,
            Households.room(0, List.of()).air(),
            List.of(
                new Window(Wall.NORTH, 0.3, 2.4, 1.3, 0.8, 0, 2, Double.NaN, 0.8, 0.92, 1, 12),
                new Window(Wall.EAST, 0.9, 1.0, 1.2, 0.9, 0, 2, Double.NaN, 0.8, 0.92, 1, 20),
                new Window(Wall.WEST, 1.0, 0.8, 1.2, 0.9, 0, 2, Double.NaN, 0.8, 0.92, 0.6, 35)));
    return Households.household(HOBART, room, Households.bench(0.9, 1.5, 3, 6), lamp);
  }

  private static LampShadow shadow(Household household) {
    return LampShadow.of(household, YEAR).orElseThrow();
  }

  /**
   * Expected: an independent computation with NumPy. 300 x 300 rays through each window to an even
   * sky and the sun every 8 minutes of every mean day (Hobart's sunshine hours, FAO-56, Erbs and
   * others, Collares-Pereira and Rabl), each ray cut with the lamp's rectangle. Sallet's sky is
   * that of Perez, sunny for a part of the time: hence the tolerance of 3 parts in a hundred.
   */
  @Test
  void thePorchLosesWhatRaysTracedApartLose() {
    LampShadow shadow = shadow(porch(Optional.of(lamp(0, 0.5))));
    assertThat(shadow.share()).isEqualTo(0.141, within(0.03));
    double[] months = {
      0.228, 0.199, 0.199, 0.021, 0.021, 0.022, 0.020, 0.020, 0.139, 0.208, 0.213, 0.198
    };
    for (int m = 0; m < 12; m++) {
      assertThat(shadow.ofMonths().get(m)).as("month %d", m + 1).isEqualTo(months[m], within(0.05));
    }
    double back =
        shadow.ofPots().subList(0, 6).stream().mapToDouble(s -> s).average().orElseThrow();
    double front = shadow.ofPots().subList(12, 18).stream().mapToDouble(s -> s).max().orElseThrow();
    assertThat(back).as("pots behind the lamp").isGreaterThan(0.25);
    assertThat(front).as("pots before it").isLessThan(0.03);
  }

  /** At the height told the shadow is little, one step below it is not. */
  @Test
  void theHeightToldIsTheFirstThatClears() {
    double clear = shadow(porch(Optional.of(lamp(0, 0.5)))).clearAboveBenchM().orElseThrow();
    assertThat(clear).isBetween(0.5, 1.7);
    LampShadow there = shadow(porch(Optional.of(lamp(0, clear))));
    assertThat(there.share()).isLessThanOrEqualTo(LampShadow.LITTLE);
    assertThat(there.clearAboveBenchM()).as("nothing to be done").isEmpty();
    assertThat(shadow(porch(Optional.of(lamp(0, clear - 0.05)))).share())
        .isGreaterThan(LampShadow.LITTLE);
  }

  /** All windows but two small ones look north. */
  @Test
  void aLampMovedAwayFromTheWindowHardlyCounts() {
    assertThat(shadow(porch(Optional.of(lamp(0.6, 0.5)))).share()).isLessThan(0.02);
  }

  @Test
  void withoutLampOrWindowThereIsNone() {
    assertThat(LampShadow.of(porch(Optional.empty()), YEAR)).isEmpty();
    Household cellar =
        Households.household(
            HOBART,
            Households.room(0, List.of()),
            Households.bench(0.9, 1.5, 3, 6),
            Optional.of(lamp(0, 0.5)));
    assertThat(LampShadow.of(cellar, YEAR)).isEmpty();
  }
}
