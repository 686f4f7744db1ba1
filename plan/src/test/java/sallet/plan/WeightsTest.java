package sallet.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sallet.crop.Catalogue;
import sallet.crop.HarvestRule;

class WeightsTest {
  private static final HarvestRule LETTUCE = rule("loose-leaf lettuce, green");

  private static HarvestRule rule(String crop) {
    return Catalogue.builtIn().find(crop).orElseThrow().harvest().orElseThrow();
  }

  /** Cells for nine chances in ten at a usable share of 0.8: 2, 4 and 5, as lives.py prints. */
  @ParameterizedTest
  @CsvSource({"0, 40, 0", "1, 40, 2", "2, 40, 4", "3, 40, 5", "1, 1, 1", "2, 1, 4"})
  void aBatchTakesWholeCells(int plants, int cells, int taken) {
    assertThat(Weights.batchCells(plants, LETTUCE, cells)).isEqualTo(taken);
  }

  /** One of one cell; two for one or four for two; five for three from five cells on. */
  @ParameterizedTest
  @CsvSource({"1, 1", "2, 2", "4, 2", "5, 1.6666666666666667"})
  void fractionsTakeNoMoreThanTheBestWholeBatch(int cells, double each) {
    assertThat(Weights.cellsPerPlant(LETTUCE, cells)).isEqualTo(each);
  }

  @Test
  void noWholeBatchTakesFewerCellsThanItsFractions() {
    for (int cells = 1; cells <= 40; cells++) {
      double each = Weights.cellsPerPlant(LETTUCE, cells);
      for (int plants = 1; plants <= cells; plants++) {
        int taken = Weights.batchCells(plants, LETTUCE, cells);
        assertThat(taken <= cells && taken < plants * each - 1e-9)
            .as("%d plants in %d cells", plants, cells)
            .isFalse();
      }
    }
  }

  /** Three rocket plants share a pot and seven of ten seeds come to something: 30/7 seeds. */
  @Test
  void aSeedCostsOneAndAHalfGrams() {
    assertThat(Weights.seeds(rule("salad rocket"))).isCloseTo(15 * 30 / 7.0, within(1e-9));
  }
}
