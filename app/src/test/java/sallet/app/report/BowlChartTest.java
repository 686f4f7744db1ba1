package sallet.app.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sallet.crop.forecast.Band;
import sallet.plan.BowlWeek;
import sallet.plan.SowingPlan;

class BowlChartTest {
  private static final PlanReport REPORT = PorchPlan.report();
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

  @Test
  void onlyABowlThatVariesHasAStrokeBesideIt() {
    long eaten = PorchPlan.plan().weeks().stream().filter(week -> week.demandGrams() > 0).count();
    assertThat(strokes(new Band(212, 212, 212))).isZero();
    assertThat(strokes(new Band(190, 205, 220))).as("each with two feet").isEqualTo(3 * eaten);
  }

  private static int strokes(Band band) {
    BowlWeek.Luck luck = new BowlWeek.Luck(band, band);
    SowingPlan plan = PorchPlan.plan();
    PlanReport report =
        PorchPlan.report(plan.withLuck(Collections.nCopies(plan.weeks().size(), luck)));
    String svg = BowlChart.of(report, new CropMarks(report.crops())).toString();
    return svg.split("class=\"luck\"", -1).length - 1;
  }

  @ParameterizedTest
  @CsvSource({"10, 2", "39, 5", "240, 50", "289.8, 50", "900, 200", "15000, 2000"})
  void gramLinesAreRoundNumbers(double top, double step) {
    assertThat(Svg.gridStep(top)).isEqualTo(step);
  }
}
