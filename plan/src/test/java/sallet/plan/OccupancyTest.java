package sallet.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Which places are called full before a short bowl. */
class OccupancyTest {
  private static final Instance INSTANCE = instance();

  /** One pot, two cells, one nursery place, eight bowls or more. */
  private static Instance instance() {
    for (long seed = 0; ; seed++) {
      TinyBench bench = new TinyBench(seed).standing(0);
      bench.pots = 1;
      bench.cells = 2;
      bench.places = 1;
      if (bench.instance().calendar().bowls() >= 8) {
        return bench.instance();
      }
    }
  }

  private static List<String> fullBeforeLast(Sowing... sowings) {
    return new Occupancy(INSTANCE, List.of(), List.of(sowings))
        .fullBefore(INSTANCE.calendar().bowls() - 1);
  }

  /** A plant that stands in the cells, the nursery and the pot for some days of the plan each. */
  private static Sowing sowing(int sown, int toNursery, int toBench, int end) {
    LocalDate from = INSTANCE.calendar().from();
    return new Sowing(
        "one",
        from.plusDays(sown),
        INSTANCE.crops().get(0).name(),
        2,
        2,
        from.plusDays(sown + 4),
        List.of(
            new Sowing.Course(
                1,
                from.plusDays(toNursery),
                from.plusDays(toBench),
                0,
                List.of("A1"),
                List.of(),
                from.plusDays(end),
                true,
                0)));
  }

  @Test
  void anEmptyBenchHasNoFullPlace() {
    assertThat(fullBeforeLast()).isEmpty();
  }

  @Test
  void aPotTakenAllTheTimeIsFull() {
    assertThat(fullBeforeLast(sowing(0, 0, 0, 60))).contains("all 1 pots");
  }

  @Test
  void aNurseryTakenAllTheTimeIsFull() {
    assertThat(fullBeforeLast(sowing(0, 0, 60, 60)))
        .contains("all 1 nursery places")
        .doesNotContain("all 1 pots");
  }

  @Test
  void cellsTakenAllTheTimeAreFull() {
    assertThat(fullBeforeLast(sowing(0, 60, 60, 60))).contains("all 2 cells");
  }

  @Test
  void aPotTakenForAWeekIsNot() {
    assertThat(fullBeforeLast(sowing(0, 0, 0, 7))).doesNotContain("all 1 pots");
  }
}
