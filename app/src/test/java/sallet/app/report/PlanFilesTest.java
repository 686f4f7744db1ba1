package sallet.app.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;

class PlanFilesTest {
  @Test
  void aPlanHasFourFiles() {
    Map<String, String> files =
        PlanFiles.of(
            PlanAnswer.of(PorchPlan.plan()),
            PorchPlan.household(),
            PorchPlan.catalogue(),
            PorchPlan.light());

    assertThat(files).containsOnlyKeys("plan.html", "plan.ics", "plan.json", "tasks.csv");
    assertThat(files.get("plan.html")).startsWith("<!DOCTYPE html>");
    assertThat(files.get("plan.ics")).startsWith("BEGIN:VCALENDAR\r\n");
  }

  @Test
  void withoutLightOfEachPotTheGroupsMeansAreDrawn() {
    String page =
        PlanPage.of(
            PlanAnswer.of(PorchPlan.plan()),
            PorchPlan.household(),
            PorchPlan.catalogue(),
            BenchLight.ofGroups(PorchPlan.plan()));

    assertThat(page).contains(">13.2<", ">10.6<", ">7.9<");
  }
}
