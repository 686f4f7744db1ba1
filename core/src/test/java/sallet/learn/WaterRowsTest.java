package sallet.learn;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import sallet.household.Household;
import sallet.household.Watering;
import sallet.household.Watering.AirReading;
import sallet.household.Watering.Level;
import sallet.journal.Entry;
import sallet.journal.Event;
import sallet.journal.Journal;
import sallet.journal.Where;
import sallet.water.home.Households;

/** What rows tell of reservoir, pots on the scales and air. */
class WaterRowsTest {
  private static final Household HOME = Households.of(60, 50);
  private static final LocalDate DAY = LocalDate.of(2027, 1, 10);
  private static final OptionalDouble NONE = OptionalDouble.empty();

  private final List<Entry> rows = new ArrayList<>();

  private WaterRowsTest row(int day, String time, Event event, String place, double value) {
    Where where =
        place.matches("P\\d+")
            ? new Where.Pots(List.of(place))
            : place.isEmpty() ? new Where.Anywhere() : new Where.Elsewhere(place);
    rows.add(
        new Entry(
            rows.size() + 2,
            DAY.plusDays(day),
            event,
            "",
            "",
            OptionalInt.empty(),
            where,
            NONE,
            OptionalDouble.of(value),
            "",
            time.isEmpty() ? Optional.empty() : Optional.of(LocalTime.parse(time))));
    return this;
  }

  private WaterRows read() {
    return WaterRows.of(HOME, new Journal(rows), DAY.plusDays(30));
  }

  private static Level level(int day, double litres, double msCm, double added, double addedMsCm) {
    return new Level(DAY.plusDays(day), litres, OptionalDouble.of(msCm), added, addedMsCm);
  }

  @Test
  void levelConductivityAndTopUpOfADayAreOneReading() {
    row(0, "", Event.LEVEL, "reservoir", 50);
    row(0, "", Event.EC, "", 1.5);
    row(0, "", Event.TOP_UP, "", 6);
    row(0, "", Event.TOP_UP, "reservoir", 2);
    row(0, "", Event.EC, "top-up", 0.8);
    row(5, "", Event.EC, "tap", 0.4);
    assertThat(read().watering().readings().levels()).containsExactly(level(0, 50, 1.5, 8, 0.8));
    assertThat(read().remarks()).isEmpty();
  }

  /** 58 L after 8 L were poured in: there were 50 L before. */
  @Test
  void aLevelReadAfterATopUpTellsWhatThereWasBefore() {
    row(0, "", Event.TOP_UP, "", 8);
    row(0, "", Event.LEVEL, "", 58);
    row(0, "", Event.EC, "", 1.2);
    assertThat(read().watering().readings().levels())
        .containsExactly(new Level(DAY, OptionalDouble.of(50), NONE, 8, 0, false));
    assertThat(read().remarks()).singleElement().matches(r -> r.line() == 4 && !r.contradiction());
  }

  @Test
  void freshSolutionBeginsAnew() {
    row(0, "", Event.LEVEL, "", 30);
    row(0, "", Event.EC, "", 2.1);
    row(0, "", Event.RENEW, "", 55);
    row(0, "", Event.EC, "", 1.4);
    assertThat(read().watering().readings().levels())
        .containsExactly(
            new Level(DAY, OptionalDouble.of(30), OptionalDouble.of(2.1), 55, 1.4, true));
  }

  /** 190 g dry, 1030 g wet, 970 g seven and a half hours later. */
  @Test
  void potsOnTheScalesTellWhatTheyHoldAndUse() {
    row(0, "", Event.POT_DRY, "P1", 190);
    row(1, "", Event.POT_WET, "P1", 1030);
    row(4, "07:00", Event.POT_WET, "P1", 1040);
    row(4, "14:30", Event.POT_MASS, "P1", 970);
    assertThat(read().watering().readings().weighings())
        .containsExactly(
            new Watering.Weighing("P1", OptionalDouble.of(190), 1030, NONE, 1, Optional.empty()),
            new Watering.Weighing(
                "P1",
                NONE,
                1040,
                OptionalDouble.of(970),
                7.5,
                Optional.of(DAY.plusDays(4)),
                Optional.of(LocalTime.of(14, 30))));
  }

  @Test
  void whatTeachesNothingIsTold() {
    row(0, "", Event.POT_MASS, "P1", 900);
    row(1, "", Event.POT_WET, "P1", 1000);
    row(1, "15:00", Event.POT_MASS, "P1", 900);
    row(2, "08:00", Event.POT_WET, "P1", 1000);
    row(9, "08:00", Event.POT_MASS, "P1", 700);
    assertThat(read().watering().readings().weighings()).isEmpty();
    assertThat(read().remarks()).extracting(Remark::line).containsExactly(2, 4, 6);
    assertThat(read().remarks()).noneMatch(Remark::contradiction);
  }

  @Test
  void whatCannotBeIsAContradiction() {
    row(0, "", Event.LEVEL, "", 75);
    row(1, "", Event.POT_DRY, "P1", 1200);
    row(1, "", Event.POT_WET, "P1", 1000);
    row(2, "08:00", Event.POT_WET, "P2", 1000);
    row(2, "12:00", Event.POT_MASS, "P2", 1100);
    assertThat(read().remarks())
        .filteredOn(Remark::contradiction)
        .extracting(Remark::sentence)
        .containsExactlyInAnyOrder(
            "75 L in the reservoir on 2027-01-10 is more than it holds",
            "pot P1 weighs no more wet (1000 g) than dry (1200 g)",
            "pot P2 weighs more (1100 g) than after the flood (1000 g)");
  }

  @Test
  void airOfOneMomentIsOneReadingAndOutdoorsIsNone() {
    row(0, "07:30", Event.AIR_TEMPERATURE, "room", 18);
    row(0, "07:30", Event.HUMIDITY, "bench", 61);
    row(0, "", Event.HUMIDITY, "", 55);
    row(0, "", Event.AIR_TEMPERATURE, "outside", -3);
    assertThat(read().watering().readings().air())
        .containsExactly(
            new AirReading(DAY, LocalTime.of(7, 30), OptionalDouble.of(18), OptionalDouble.of(61)),
            new AirReading(DAY, LocalTime.NOON, NONE, OptionalDouble.of(55)));
  }

  @Test
  void theLastWarmthOfTheSolutionCountsForAFortnight() {
    row(2, "", Event.SOLUTION_TEMPERATURE, "", 25);
    assertThat(read().watering().tank().temperatureC()).isEmpty();
    row(20, "", Event.SOLUTION_TEMPERATURE, "", 21);
    assertThat(read().watering().tank().temperatureC()).hasValue(21);
  }
}
