package sallet.app.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class TimelineTest {
  private static final PlanReport REPORT = PorchPlan.report();
  private static final String SVG = Timeline.of(REPORT, new CropMarks(REPORT.crops())).toString();

  @Test
  void aBatchRunsThroughCellsNurseryAndPots() {
    // by hand, 5 px a day from 10 px: B01 is sown in week 0, moves on in weeks 1 and 3, ends in 7
    assertThat(SVG)
        .contains(
            "<rect x=\"10\" y=\"46\" width=\"35\" height=\"14\" class=\"cells\"/>",
            "<rect x=\"45\" y=\"46\" width=\"70\" height=\"14\" class=\"nursery\"/>",
            "<rect x=\"115\" y=\"46\" width=\"140\" height=\"14\" fill=\"url(#crop0)\"");
  }

  @Test
  void everyPickAndEveryEndHasItsMark() {
    // by hand from the plan, B01 to B13 without B05 and B12, which are only lifted: the weeks of
    // grams, less the last one where it is the lift
    int picks = 3 + 5 + 8 + 3 + 5 + 3 + 3 + 3 + 3 + 2 + 1;
    assertThat(SVG.split("class=\"pick\"", -1)).hasSize(picks + 1);
    assertThat(SVG.split("class=\"lift\"", -1)).hasSize(13 + 1);
    assertThat(SVG.split("class=\"clear\"", -1)).hasSize(2 + 1);
  }
}
