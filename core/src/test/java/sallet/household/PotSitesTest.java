package sallet.household;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The area of each pot, against areas known by geometry and against counting raster points. */
class PotSitesTest {

  /** In an even grid the sites are equal rectangles: the tray divided by the number of pots. */
  @ParameterizedTest
  @CsvSource({"1.2, 0.6, 3, 6, 400", "1.2, 0.6, 1, 1, 7200", "0.9, 0.9, 6, 6, 225"})
  void aGridDividesTheTrayEvenly(
      double width, double depth, int rows, int columns, double siteCm2) {
    List<Pot> pots = new ArrayList<>();
    for (int i = 0; i < rows * columns; i++) {
      int row = i / columns;
      double x = (i % columns + 0.5) * width / columns;
      double y = (row + 0.5) * depth / rows;
      pots.add(new Pot("P" + i, x, y));
    }
    assertThat(PotSites.siteCm2(bench(width, depth, pots)))
        .hasSize(rows * columns)
        .allSatisfy(site -> assertThat(site).isEqualTo(siteCm2, offset(1e-6)));
  }

  /**
   * Pots at (0.2, 0.2) and (0.6, 0.4) on a tray of 1 m x 0.5 m. The line midway is 2x + y = 1.1: it
   * meets the south edge at x = 0.55 and the north edge at x = 0.30, so the western site is a
   * trapezium of (0.55 + 0.30)/2 x 0.5 m² = 2125 cm².
   */
  @Test
  void twoPotsShareTheTrayAlongTheLineMidway() {
    List<Pot> pots = List.of(new Pot("west", 0.2, 0.2), new Pot("east", 0.6, 0.4));

    List<Double> sites = PotSites.siteCm2(bench(1.0, 0.5, pots));

    assertThat(sites.get(0)).isEqualTo(2125, offset(1e-6));
    assertThat(sites.get(1)).isEqualTo(2875, offset(1e-6));
  }

  /** A pot in the middle of four has a square between the lines midway. */
  @Test
  void aPotAmongFourHasASquare() {
    List<Pot> pots =
        List.of(
            new Pot("middle", 0.5, 0.5),
            new Pot("south", 0.5, 0.1),
            new Pot("north", 0.5, 0.9),
            new Pot("west", 0.1, 0.5),
            new Pot("east", 0.9, 0.5));

    List<Double> sites = PotSites.siteCm2(bench(1, 1, pots));

    // The lines midway lie 0.2 m from the middle on each side: a square of 0.4 m.
    assertThat(sites.get(0)).isEqualTo(1600, offset(1e-6));
    assertThat(sites.subList(1, 5))
        .allSatisfy(site -> assertThat(site).isEqualTo((10_000 - 1600) / 4.0, offset(1e-6)));
  }

  @Test
  void scatteredPotsAgreeWithCountingAndFillTheTray() {
    for (long seed = 1; seed <= 20; seed++) {
      Random random = new Random(seed);
      double width = random.nextDouble(0.4, 2);
      double depth = random.nextDouble(0.3, 1);
      List<Pot> pots = new ArrayList<>();
      int count = 1 + random.nextInt(30);
      for (int i = 0; i < count; i++) {
        pots.add(new Pot("P" + i, random.nextDouble(width), random.nextDouble(depth)));
      }
      Bench bench = bench(width, depth, pots);

      List<Double> sites = PotSites.siteCm2(bench);

      double trayCm2 = width * depth * 10_000;
      assertThat(sites.stream().mapToDouble(site -> site).sum())
          .as("seed %d", seed)
          .isEqualTo(trayCm2, offset(1e-6));
      double[] counted = counted(bench, 300);
      for (int i = 0; i < counted.length; i++) {
        assertThat(sites.get(i))
            .as("seed %d, pot %d", seed, i)
            .isEqualTo(counted[i], offset(0.005 * trayCm2));
      }
    }
  }

  /** Area of each pot by counting to which pot the points of a fine raster are nearest, cm². */
  private static double[] counted(Bench bench, int points) {
    double[] area = new double[bench.pots().size()];
    for (int i = 0; i < points * points; i++) {
      int row = i / points;
      double x = (i % points + 0.5) * bench.widthM() / points;
      double y = (row + 0.5) * bench.depthM() / points;
      int nearest = 0;
      for (int p = 1; p < area.length; p++) {
        if (distance(bench.pots().get(p), x, y) < distance(bench.pots().get(nearest), x, y)) {
          nearest = p;
        }
      }
      area[nearest] += bench.widthM() * bench.depthM() * 10_000 / (points * points);
    }
    return area;
  }

  private static double distance(Pot pot, double x, double y) {
    return Math.hypot(pot.xM() - x, pot.yM() - y);
  }

  private static Bench bench(double width, double depth, List<Pot> pots) {
    return new Bench(0, 0, width, depth, 0.7, pots, 0.12, 1.2, "coir");
  }
}
