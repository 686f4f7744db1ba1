package sallet.app.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BowlChartTest {
  private static final PlanReport REPORT =
      PlanReport.of(
          PlanAnswer.of(PorchPlan.plan()),
          PorchPlan.household(),
          PorchPlan.catalogue(),
          PorchPlan.light());
  private static final String SVG = BowlChart.of(REPORT, new CropMarks(REPORT.crops())).toString();

  @Test
  void barsStandAtTheirWeekAndAreAsHighAsTheirGrams() {
    // by hand: the fullest bowl has 276 g, the top is 1.05 times that, 289.8 g on 220 px;
    // week 4 holds 72 g, so 54.66 px above the ground at 26 + 220 px, at 44 + 4 * 34 + 5 px
    assertThat(SVG)
        .contains(
            "<rect x=\"185\" y=\"191.34\" width=\"24\" height=\"54.66\" fill=\"url(#crop0)\"");
  }

  @Test
  void whatIsMissingIsWrittenAboveTheBar() {
    assertThat(SVG).contains(">−168<", ">−84<");
  }

  @Test
  void weeksWithoutABowlSayWhy() {
    assertThat(SVG.split(">too early<", -1)).hasSize(5);
    assertThat(SVG.split(">away<", -1)).hasSize(2);
  }

  @ParameterizedTest
  @CsvSource({"10, 2", "39, 5", "240, 50", "289.8, 50", "900, 200", "15000, 2000"})
  void gramLinesAreRoundNumbers(double top, double step) {
    assertThat(Svg.gridStep(top)).isEqualTo(step);
  }
}
