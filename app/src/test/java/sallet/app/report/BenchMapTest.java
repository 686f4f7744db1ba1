package sallet.app.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BenchMapTest {
  private static final PlanReport REPORT = PorchPlan.report();

  private static String map(LocalDate day) {
    return BenchMap.of(REPORT, new CropMarks(REPORT.crops()), day).toString();
  }

  @Test
  void potsAreDrawnToScale() {
    // by hand: 1.2 m are 376 px; a pot of 1.2 L, 12 cm high, has a radius of
    // sqrt(1.2e-3 / (pi * 0.12)) = 0.056419 m, so 17.68 px; C1 stands at x = 0.1 m,
    // 0.1 m from the north edge: 12 + 0.1 * 313.33 = 43.33 px from both edges
    assertThat(map(PorchPlan.FROM)).contains("<circle cx=\"43.33\" cy=\"43.33\" r=\"17.68\"");
  }

  @Test
  void aPotShowsWhatStandsInItAfterTheDaysWork() {
    // B06 (C1) is lifted in week 13 and B10 moves in on the same day
    assertThat(BenchMap.standing(REPORT, "C1", PorchPlan.bowl(12)).orElseThrow().batch())
        .isEqualTo("B06");
    assertThat(BenchMap.standing(REPORT, "C1", PorchPlan.bowl(13)).orElseThrow().batch())
        .isEqualTo("B10");
    assertThat(BenchMap.standing(REPORT, "C1", PorchPlan.FROM)).isEmpty();
  }

  @Test
  void theBenchIsShownOnTheFirstDayAndAtTheEndOfEachMonth() {
    assertThat(BenchMap.days(REPORT))
        .isEqualTo(
            List.of(
                LocalDate.of(2026, 11, 28),
                LocalDate.of(2026, 12, 26),
                LocalDate.of(2027, 1, 30),
                LocalDate.of(2027, 2, 27),
                LocalDate.of(2027, 3, 27),
                LocalDate.of(2027, 4, 10)));
  }

  @ParameterizedTest
  @CsvSource({"0, 0", "3.9, 0", "4, 1", "8.9, 2", "9, 3", "12, 4", "15.9, 4", "40, 5"})
  void lightFallsIntoSteps(double dliMol, int step) {
    assertThat(BenchMap.step(dliMol)).isEqualTo(step);
  }
}
