package sallet.app.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sallet.crop.forecast.Band;
import sallet.plan.BowlWeek;

class PlanTextTest {
  private static final String TEXT =
      PlanText.of(PlanAnswer.of(PorchPlan.plan()), PorchPlan.household(), PorchPlan.catalogue());

  @Test
  void noLineIsWiderThanATerminal() {
    assertThat(TEXT.lines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(80));
  }

  @Test
  void theGrowersQuestionIsAnsweredFirst() {
    assertThat(TEXT)
        .containsSubsequence(
            "SOWING PLAN  Sat 28 Nov 2026 to Sat 10 Apr 2027\n",
            "NEXT TWO WEEKS\nSat 28 Nov, about 12 min\n",
            "  [ ] Sow 6 seeds of mizuna, one a cell, 6 cells (batch B01).\n",
            "THE BOWLS\n",
            "SHORT BOWLS AND WHY\n",
            "WHAT IS JUDGEMENT HERE\n",
            "CAUTION\n",
            "HOW THE PLAN WAS FOUND\n");
  }

  @Test
  void onlyTwoWeeksOfTasksAreTold() {
    String tasks = TEXT.substring(TEXT.indexOf("NEXT TWO WEEKS"), TEXT.indexOf("THE BOWLS"));

    assertThat(tasks).contains("Sat 5 Dec").doesNotContain("[ ] Sow 4 seeds of butterhead");
    assertThat(tasks).contains("the next on Sat 12 Dec.");
  }

  @Test
  void aShortBowlSaysHowMuchIsMissingAndWhatIsFull() {
    // 72 g of 240 g by hand: 4 mizuna plants of 18 g each
    assertThat(TEXT)
        .contains("Sat 26 Dec: 168 g short of 240 g; full then: nursery and window pots.");
  }

  @Test
  void bowlsNobodyEatsAndBowlsTooEarlyAreCalledSo() {
    assertThat(TEXT)
        .contains("Sat 28 Nov to Sat 19 Dec: 4 bowls too early for anything sown now\n")
        .containsPattern("Sat 3 Apr +away\n");
  }

  @Test
  void eachCautionStandsInThePlanAndDefersToOthers() {
    assertThat(TEXT.replaceAll("\\s+", " "))
        .contains("Wash hands and knife")
        .contains("residual-current protection of 30 mA or less")
        .contains("Local codes and a licensed electrician decide.")
        .contains("your food authority");
  }

  @Test
  void barsAreAsLongAsTheirGrams() {
    // 24 columns for 240 g: 10 g a column, an eighth is 1.25 g; the stroke stands at the demand
    assertThat(TextChart.bar(120, 240, 240)).isEqualTo("█".repeat(12) + " ".repeat(12) + "│");
    assertThat(TextChart.bar(5, 100, 240)).isEqualTo("▌" + " ".repeat(9) + "│" + " ".repeat(14));
    assertThat(TextChart.bar(240, 0, 240)).isEqualTo("█".repeat(24) + " ");
  }

  @Test
  void evenTheLargestHouseholdFitsTheWidth() {
    List<BowlWeek.Kind> kinds = List.of(new BowlWeek.Kind("mizuna", 9000));
    BowlWeek week =
        new BowlWeek(PorchPlan.FROM.plusDays(14), 15000, true, 9000, 9000, kinds, List.of());

    assertThat(TextChart.of(List.of(week)).strip().length()).isLessThanOrEqualTo(80);
  }

  @ParameterizedTest
  @CsvSource({"300.4, 320, (300-320)", "312, 312, ", "311.6, 312.4, ", "0, 0, ", "0, 12, (0-12)"})
  void theLuckOfABowlIsToldWhereItSaysSomething(double low, double high, @Nullable String told) {
    Band band = new Band(low, (low + high) / 2, high);
    BowlWeek week =
        new BowlWeek(PorchPlan.FROM, 312, true, 312, 312, List.of(), List.of())
            .withLuck(new BowlWeek.Luck(band, band));

    String line = TextChart.of(List.of(week)).strip();
    assertThat(line).contains("312 of 312 g");
    assertThat(line.replaceAll("[^(]*(\\(.*\\))?", "$1")).isEqualTo(told == null ? "" : told);
  }

  @Test
  void aNameCannotSteerTheTerminal() {
    String clearScreen = "\u001b[2J\u202e";

    String text =
        PlanText.of(
            PlanAnswer.of(PorchPlan.plan(clearScreen)),
            PorchPlan.household(clearScreen),
            PorchPlan.catalogue());

    assertThat(text).doesNotContain("\u001b", "\u202e");
  }
}
