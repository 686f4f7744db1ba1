package sallet.app.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class CropMarksTest {
  @Test
  void lettersComeFromTheNamesAndAreUnique() {
    CropMarks marks =
        new CropMarks(
            List.of(
                "loose-leaf lettuce, red",
                "Swiss chard",
                "mizuna",
                "butterhead lettuce",
                "batavia lettuce",
                "spinach",
                "salad rocket",
                "kale (leaf)"));

    assertThat(marks.all().stream().map(CropMarks.Mark::letters))
        .containsExactly("LR", "SC", "Mi", "BL", "Ba", "Sp", "SR", "KL");
  }

  @Test
  void manyCropsOfOneNameStillDiffer() {
    CropMarks marks = new CropMarks(List.of("x", "x x", "x-x", "x, x"));

    assertThat(marks.all().stream().map(CropMarks.Mark::letters)).doesNotHaveDuplicates();
  }
}
