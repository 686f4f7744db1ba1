package sallet.crop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The course of a tomato. */
class TomatoPlanTest {
  private static final LocalDate SOWN = SteadyPlace.FIRST;
  private static final SteadyPlace ROOM = SteadyPlace.ofDli(18, 16, 23, 18, 450);

  private static Crop crop(String name) {
    return Catalogue.builtIn().find(name).orElseThrow();
  }

  private static TomatoPlan plan(SteadyPlace place, int days) {
    return TomatoPlan.of(crop("dwarf tomato"), SOWN, 21, place.days(days), place.air());
  }

  private static LocalDate stage(TomatoPlan plan, String name) {
    return plan.stages().stream()
        .filter(stage -> stage.name().equals(name))
        .findFirst()
        .orElseThrow()
        .date();
  }

  /**
   * Common practice: first flower 45 to 55 days after sowing at 21 °C, ripe 45 to 60 days later.
   */
  @Test
  void stagesAreThoseOfHandbooks() {
    TomatoPlan plan = plan(ROOM, 200);
    LocalDate flower = stage(plan, "first truss in flower");
    assertThat(ChronoUnit.DAYS.between(SOWN, flower)).isBetween(45L, 55L);
    assertThat(ChronoUnit.DAYS.between(flower, stage(plan, "first fruit ripe, at the earliest")))
        .isBetween(40L, 48L);
    assertThat(ChronoUnit.DAYS.between(flower, stage(plan, "first truss fully ripe")))
        .isBetween(60L, 70L);
    assertThat(plan.stages()).extracting(TomatoPlan.Stage::date).isSorted();
    assertThat(plan.work())
        .extracting(TomatoPlan.Work::text)
        .anyMatch(t -> t.contains("Pollinate"));
  }

  /** de Koning (1994): 0.145 trusses a day at 20 °C, one every 7 days; fitted from 17 to 27 °C. */
  @ParameterizedTest
  @CsvSource({"20, 0.1456", "17, 0.1220", "10, 0.1220", "27, 0.1892", "35, 0.1892"})
  void trussesFollowTemperature(double meanC, double perDay) {
    assertThat(TomatoPlan.trussesPerDay(meanC)).isCloseTo(perDay, within(1e-4));
  }

  @Test
  void moreLightNeverGivesLessFruitOnPaper() {
    List<Double> grams =
        List.of(4.0, 8.0, 12.0, 18.0, 24.0).stream()
            .map(dli -> plan(SteadyPlace.ofDli(dli, 16, 23, 18, 450), 160).modelG())
            .toList();
    assertThat(grams).isSorted();
  }

  @Test
  void stagesBeyondTheDaysKnownAreMissing() {
    assertThat(plan(ROOM, 30).stages())
        .extracting(TomatoPlan.Stage::name)
        .doesNotContain("first truss in flower");
  }

  @Test
  void refusesLeafCrops() {
    assertThatThrownBy(() -> TomatoPlan.of(crop("mizuna"), SOWN, 21, ROOM.days(20), ROOM.air()))
        .hasMessage("mizuna is no fruiting crop");
  }
}
