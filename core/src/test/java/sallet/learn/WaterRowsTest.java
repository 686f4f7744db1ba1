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

  /** Rows of "day | time | event | place | value"; the first is line 2 of the journal. */
  private static WaterRows read(String... blocks) {
    List<Entry> rows = new ArrayList<>();
    for (String block : blocks) {
      block.lines().forEach(line -> rows.add(entry(rows.size() + 2, line.split("\\|", -1))));
    }
    return WaterRows.of(HOME, new Journal(rows), DAY.plusDays(30));
  }

  private static Entry entry(int line, String[] cells) {
    String time = cells[1].strip();
    String place = cells[3].strip();
    Where where =
        place.matches("P\\d+")
            ? new Where.Pots(List.of(place))
            : place.isEmpty() ? new Where.Anywhere() : new Where.Elsewhere(place);
    return new Entry(
        line,
        DAY.plusDays(Integer.parseInt(cells[0].strip())),
        Event.of(cells[2].strip()).orElseThrow(),
        "",
        "",
        OptionalInt.empty(),
        where,
        NONE,
        OptionalDouble.of(Double.parseDouble(cells[4].strip())),
        "",
        time.isEmpty() ? Optional.empty() : Optional.of(LocalTime.parse(time)));
  }

  private static Level level(int day, double litres, double msCm, double added, double addedMsCm) {
    return new Level(DAY.plusDays(day), litres, OptionalDouble.of(msCm), added, addedMsCm);
  }

  @Test
  void levelConductivityAndTopUpOfADayAreOneReading() {
    WaterRows read =
        read(
            """
            0 |       | level                | reservoir | 50
            0 |       | ec                   |           | 1.5
            0 |       | top-up               |           | 6
            0 |       | top-up               | reservoir | 2
            0 |       | ec                   | top-up    | 0.8
            5 |       | ec                   | tap       | 0.4
            """);
    assertThat(read.watering().readings().levels()).containsExactly(level(0, 50, 1.5, 8, 0.8));
    assertThat(read.remarks()).isEmpty();
  }

  /** 58 L after 8 L were poured in: there were 50 L before. */
  @Test
  void aLevelReadAfterATopUpTellsWhatThereWasBefore() {
    WaterRows read =
        read(
            """
            0 |       | top-up               |           | 8
            0 |       | level                |           | 58
            0 |       | ec                   |           | 1.2
            """);
    assertThat(read.watering().readings().levels())
        .containsExactly(new Level(DAY, OptionalDouble.of(50), NONE, 8, 0, false));
    assertThat(read.remarks()).singleElement().matches(r -> r.line() == 4 && !r.contradiction());
  }

  @Test
  void freshSolutionBeginsAnew() {
    WaterRows read =
        read(
            """
            0 |       | level                |           | 30
            0 |       | ec                   |           | 2.1
            0 |       | renew                |           | 55
            0 |       | ec                   |           | 1.4
            """);
    assertThat(read.watering().readings().levels())
        .containsExactly(
            new Level(DAY, OptionalDouble.of(30), OptionalDouble.of(2.1), 55, 1.4, true));
  }

  /** 190 g dry, 1030 g wet, 970 g seven and a half hours later. */
  @Test
  void potsOnTheScalesTellWhatTheyHoldAndUse() {
    WaterRows read =
        read(
            """
            0 |       | pot-dry              | P1        | 190
            1 |       | pot-wet              | P1        | 1030
            4 | 07:00 | pot-wet              | P1        | 1040
            4 | 14:30 | pot-mass             | P1        | 970
            """);
    assertThat(read.watering().readings().weighings())
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
    WaterRows read =
        read(
            """
            0 |       | pot-mass             | P1        | 900
            1 |       | pot-wet              | P1        | 1000
            1 | 15:00 | pot-mass             | P1        | 900
            2 | 08:00 | pot-wet              | P1        | 1000
            9 | 08:00 | pot-mass             | P1        | 700
            """);
    assertThat(read.watering().readings().weighings()).isEmpty();
    assertThat(read.remarks()).extracting(Remark::line).containsExactly(2, 4, 6);
    assertThat(read.remarks()).noneMatch(Remark::contradiction);
  }

  @Test
  void whatCannotBeIsAContradiction() {
    WaterRows read =
        read(
            """
            0 |       | level                |           | 75
            1 |       | pot-dry              | P1        | 1200
            1 |       | pot-wet              | P1        | 1000
            2 | 08:00 | pot-wet              | P2        | 1000
            2 | 12:00 | pot-mass             | P2        | 1100
            """);
    assertThat(read.remarks())
        .filteredOn(Remark::contradiction)
        .extracting(Remark::sentence)
        .containsExactlyInAnyOrder(
            "75 L in the reservoir on 2027-01-10 is more than it holds; mend the row or reservoir.volume",
            "pot P1 weighs no more wet (1000 g) than dry (1200 g)",
            "pot P2 weighs more (1100 g) than after the flood (1000 g)");
  }

  @Test
  void airOfOneMomentIsOneReadingAndOutdoorsIsNone() {
    WaterRows read =
        read(
            """
            0 | 07:30 | air-temperature      | room      | 18
            0 | 07:30 | humidity             | bench     | 61
            0 |       | humidity             |           | 55
            0 |       | air-temperature      | outside   | -3
            """);
    assertThat(read.watering().readings().air())
        .containsExactly(
            new AirReading(DAY, LocalTime.of(7, 30), OptionalDouble.of(18), OptionalDouble.of(61)),
            new AirReading(DAY, LocalTime.NOON, NONE, OptionalDouble.of(55)));
  }

  @Test
  void theLastWarmthOfTheSolutionCountsForAFortnight() {
    String warm = "2 | | solution-temperature | | 25\n";
    assertThat(read(warm).watering().tank().temperatureC()).isEmpty();
    String later = "20 | | solution-temperature | | 21\n";
    assertThat(read(warm, later).watering().tank().temperatureC()).hasValue(21);
  }
}
