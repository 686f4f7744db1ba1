package sallet.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sallet.crop.Catalogue;
import sallet.household.Household;
import sallet.household.Lamp;

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

  /** A day has 24 hours, so that is all a lamp can burn. */
  @ParameterizedTest
  @CsvSource({
    "16, lamps lit 2 h longer",
    "22, lamps lit 2 h longer",
    "22.5, lamps lit 1.5 h longer",
    "23.5, lamps lit 0.5 h longer",
    "24, "
  })
  void lampsAreAskedToBurnNoLongerThanADay(double hours, @Nullable String longer) {
    assertThat(askedLonger(hours)).isEqualTo(longer == null ? List.of() : List.of(longer));
  }

  @Test
  void aLampLitAllDayStaysAsItIsBesideOneThatGoesDark() {
    assertThat(askedLonger(24, 23)).containsExactly("lamps not lit all day lit 1 h longer");
  }

  private static List<String> askedLonger(double... hours) {
    Household household = Households.bench(240, CROPS, List.of());
    Lamp lamp = household.lamps().get(0);
    List<Lamp> lamps = Arrays.stream(hours).mapToObj(lamp::litFor).toList();
    return WhatIf.asked(request(household.withLamps(lamps)), CROPS).stream()
        .filter(change -> change.contains("longer"))
        .toList();
  }

  private static List<WhatIf.Bottleneck> ask(double bowlGrams, BooleanSupplier cancelled) {
    return WhatIf.of(
        request(Households.bench(bowlGrams, CROPS, List.of())),
        CROPS,
        Duration.ofMinutes(5),
        step -> {},
        cancelled);
  }

  private static Planner.Request request(Household household) {
    return new Planner.Request(
        household, Catalogue.builtIn(), Households.START, 12, 1, Effort.counted(1));
  }
}
