package sallet.app.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PlanFilesTest {
  @Test
  void fourFilesAreWrittenIntoAFolderThatNeedNotExist(@TempDir Path temp) throws IOException {
    Path dir = temp.resolve("out/plan");

    PlanFiles.write(
        dir, PorchPlan.plan(), PorchPlan.household(), PorchPlan.catalogue(), PorchPlan.light());

    try (Stream<Path> files = Files.list(dir)) {
      assertThat(files.map(f -> f.getFileName().toString()))
          .containsExactlyInAnyOrder("plan.html", "plan.ics", "plan.json", "tasks.csv");
    }
    assertThat(dir.resolve("plan.html")).content().startsWith("<!DOCTYPE html>");
    assertThat(dir.resolve("plan.ics")).content().startsWith("BEGIN:VCALENDAR\r\n");
  }

  @Test
  void withoutLightOfEachPotTheGroupsMeansAreDrawn(@TempDir Path dir) throws IOException {
    PlanFiles.write(dir, PorchPlan.plan(), PorchPlan.household(), PorchPlan.catalogue());

    assertThat(dir.resolve("plan.html")).content().contains(">13.2<", ">10.6<", ">7.9<");
  }
}
