package sallet.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import sallet.crop.Catalogue;

/** What limits the bowl: directions that must hold whatever the numbers. */
class WhatIfTest {
  private static final List<String> CROPS = List.of("loose-leaf lettuce, green", "mizuna");

  @Test
  void morePlacesNeverCostAndAMouthMoreNeverBrings() {
    List<WhatIf.Bottleneck> found = ask(900, () -> false);
    Map<String, Double> grams =
        found.stream()
            .collect(Collectors.toMap(WhatIf.Bottleneck::change, WhatIf.Bottleneck::gramsPerWeek));
    assertThat(grams.get("one more cell")).isGreaterThan(-0.05);
    assertThat(grams.get("one more nursery place")).isGreaterThan(-0.05);
    assertThat(
            grams.entrySet().stream()
                .filter(e -> e.getKey().startsWith("one more pot"))
                .mapToDouble(Map.Entry::getValue)
                .max()
                .orElseThrow())
        .as("a pot more on a crowded bench")
        .isGreaterThan(1);
    assertThat(grams.get("one person more")).isNegative();
    assertThat(grams.get("no mizuna")).isLessThan(0.05);
    assertThat(grams).containsKeys("lamps lit 2 h longer", "lamps half as strong again");
    assertThat(found)
        .isSortedAccordingTo((a, b) -> Double.compare(b.gramsPerWeek(), a.gramsPerWeek()));
  }

  @Test
  void cancelledItTellsNothingFalse() {
    assertThat(ask(240, () -> true)).isEmpty();
  }

  private static List<WhatIf.Bottleneck> ask(
      double bowlGrams, java.util.function.BooleanSupplier cancelled) {
    Planner.Request request =
        new Planner.Request(
            Households.bench(bowlGrams, CROPS, List.of()),
            Catalogue.builtIn(),
            Households.START,
            12,
            1,
            Effort.counted(1));
    return WhatIf.of(request, CROPS, Duration.ofMinutes(5), step -> {}, cancelled);
  }
}
