package sallet.crop;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URISyntaxException;
import java.util.List;
import org.junit.jupiter.api.Test;
import sallet.cases.CheckFilesTest;

/** Measured yields beside ours: not row by row, which the literature does not bear, but in all. */
class PublishedYieldsTest {
  private final List<PublishedYields.Grown> rows;

  PublishedYieldsTest() throws URISyntaxException {
    rows = PublishedYields.of(CheckFilesTest.shipped());
  }

  @Test
  void growsEveryRowThatPrintsEnough() {
    assertThat(rows).hasSizeGreaterThanOrEqualTo(25);
    assertThat(rows).extracting(PublishedYields.Grown::paper).contains("Carotti2021", "CornellCEA");
  }

  /** Published mass differs by a factor of two to three for like light. */
  @Test
  void noPlantIsOutByMoreThanAFactorOfThree() {
    assertThat(rows).allSatisfy(row -> assertThat(row.ratio()).isBetween(1 / 3.0, 3.0));
  }

  /** Half of all rows lie within a quarter of the measured value. */
  @Test
  void theMedianRatioIsNearOne() {
    double[] ratios = rows.stream().mapToDouble(PublishedYields.Grown::ratio).sorted().toArray();
    assertThat(ratios[ratios.length / 2]).isBetween(0.8, 1.25);
  }

  /** Directions hold even where sizes do not: more light and longer days give more. */
  @Test
  void directionsAreThoseMeasured() {
    assertThat(rows)
        .filteredOn(row -> row.what().contains("against"))
        .isNotEmpty()
        .allSatisfy(row -> assertThat(row.ours().median()).isGreaterThan(1));
  }
}
