package sallet.app.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import sallet.light.HourlyLight;

class BenchLightTest {
  @Test
  void monthsAreMeansOfTheirDays() {
    // pot p gets p + 1 times 100 µmol/m²/s for 10 h on November days and twice that in December:
    // by hand 100 * 36000 s = 3.6 mol a day
    int pots = PorchPlan.household().bench().pots().size();
    int days = 5;
    double[][] daylight = new double[pots][days * 24];
    for (int p = 0; p < pots; p++) {
      for (int day = 0; day < days; day++) {
        Arrays.fill(daylight[p], day * 24 + 6, day * 24 + 16, (p + 1) * (day < 3 ? 100.0 : 200.0));
      }
    }
    HourlyLight light =
        new HourlyLight(
            PorchPlan.FROM,
            daylight,
            new double[pots][days * 24],
            new double[] {10, 10, 10, 10, 10});

    BenchLight bench = BenchLight.ofPots(PorchPlan.household(), light);

    assertThat(bench.periods()).hasSize(2);
    assertThat(bench.dliMol("A1", PorchPlan.FROM).orElseThrow()).isCloseTo(3.6, within(1e-9));
    assertThat(bench.dliMol("A2", PorchPlan.FROM).orElseThrow()).isCloseTo(7.2, within(1e-9));
    assertThat(bench.dliMol("A1", LocalDate.of(2026, 12, 2)).orElseThrow())
        .isCloseTo(7.2, within(1e-9));
  }

  @Test
  void groupsGiveEachPotTheirMean() {
    BenchLight bench = BenchLight.ofGroups(PorchPlan.plan());

    assertThat(bench.dliMol("C3", PorchPlan.FROM)).hasValue(13.2);
    assertThat(bench.dliMol("no such pot", PorchPlan.FROM)).isEmpty();
  }

  @Test
  void daysOutsideTakeTheNearestPeriod() {
    BenchLight light = PorchPlan.light();

    assertThat(light.dliMol("A1", PorchPlan.FROM.minusYears(1)))
        .isEqualTo(light.dliMol("A1", PorchPlan.FROM));
    assertThat(light.at(PorchPlan.FROM.plusYears(1)).from()).isEqualTo(LocalDate.of(2027, 4, 1));
  }
}
