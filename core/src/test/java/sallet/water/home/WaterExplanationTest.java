package sallet.water.home;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import sallet.household.Household;
import sallet.units.Step;
import sallet.water.WaterFault;

/** How numbers of the sheet come about. */
class WaterExplanationTest {
  private static final Household HOME = Households.of(60, 50);
  private static final HomeWater WATER =
      HomeWater.of(HOME, Households.DAY, Households.lettuce(HOME, 8));
  private static final WaterSheet SHEET = WATER.sheet();

  private static double value(List<Step> steps, String name) {
    return steps.stream().filter(s -> s.name().equals(name)).findFirst().orElseThrow().value();
  }

  /** The last step is the number itself, and each step says how or whence. */
  @Test
  void theLastStepIsTheNumberOnTheSheet() {
    Map<String, ToDoubleFunction<WaterSheet>> numbers = new LinkedHashMap<>();
    numbers.put("timer.onMinutes", s -> s.floods().schedule().onMinutes());
    numbers.put("timer.floodsPerDay", s -> s.floods().schedule().floodsPerDay());
    numbers.put("flood.volumeL", s -> s.floods().volumeL());
    numbers.put("flood.fillMinutes", s -> s.floods().fillMinutes());
    numbers.put("flood.drainMinutes", s -> s.floods().drainMinutes());
    numbers.put("flood.pumpKwhPerDay", s -> s.floods().pumpKwhPerDay());
    numbers.put("reservoir.usableL", s -> s.tank().tank().usableL(s.tank().startL()));
    numbers.put("reservoir.days[6].useL", s -> s.tank().days().get(6).useL());
    numbers.put("reservoir.days[6].levelL", s -> s.tank().days().get(6).levelL());
    numbers.put("reservoir.days[6].levelLowL", s -> s.tank().days().get(6).lowL());
    numbers.put("reservoir.days[6].ecMsCm", s -> s.tank().days().get(6).ecMsCm());
    numbers.put("reservoir.days[6].lastsProbability", s -> s.tank().days().get(6).lasts());
    numbers.put("refill.litres", s -> s.topUp().pour().litres());
    numbers.put("refill.ecMsCm", s -> s.topUp().pour().msCm());
    numbers.put("use.factor.median", s -> s.learned().factor().median());
    numbers.put("use.uptakeMsCm", s -> s.learned().uptake().msCm());
    numbers.put("pots[0].fullMl", s -> s.pots().get(0).fullMl());
    numbers.put("pots[0].allowedMl", s -> s.pots().get(0).allowedMl());
    numbers.put("pots[0].airShare", s -> s.pots().get(0).airShare());
    numbers.put("pots[0].useMlPerDay", s -> s.pots().get(0).useMlPerDay());
    numbers.put("pots[11].useMlPerDay", s -> s.pots().get(11).useMlPerDay());
    numbers.put("pots[0].floodsPerDay", s -> s.pots().get(0).floodsPerDay());
    numbers.put("pots[0].survivesHours", s -> s.pots().get(0).survivesHours());
    numbers.put("solution.temperatureC", s -> s.solution().temperatureC());
    numbers.put("solution.oxygenMgL", s -> s.solution().oxygenMgL());
    numbers.put("cleaning.bleachLeastMl", s -> s.cleaning().leastMl());
    numbers.put("cleaning.bleachMostMl", s -> s.cleaning().mostMl());
    numbers.put("room.lampWarmsLowK", s -> s.room().lampHeat().orElseThrow().warmsLowK());
    numbers.put("room.lampWarmsHighK", s -> s.room().lampHeat().orElseThrow().warmsHighK());
    numbers.put("room.humidityPoints", s -> s.room().humidityPoints());
    numbers.put("room.wetBelowOutdoorC", s -> s.room().wetBelowC().orElseThrow());
    numbers.put("room.mouldBelowOutdoorC", s -> s.room().mouldBelowC().orElseThrow());
    numbers.forEach(
        (path, number) -> {
          List<Step> steps = WATER.explain(path);
          assertThat(steps.get(steps.size() - 1).value())
              .as(path)
              .isCloseTo(number.applyAsDouble(SHEET), within(1e-9));
          assertThat(steps).allMatch(s -> !s.how().isBlank() || !s.source().isBlank());
        });
  }

  /** The steps lead to the number: worked again by hand from the values told. */
  @Test
  void theStepsAddUp() {
    List<Step> use = WATER.explain("reservoir.days[0].useL");
    assertThat(
            value(use, "factor")
                * (value(use, "leaves") + value(use, "wet medium") + value(use, "open water")))
        .isCloseTo(value(use, "use"), within(1e-9));
    List<Step> low = WATER.explain("reservoir.days[6].levelLowL");
    assertThat(
            value(low, "level now")
                - value(low, "used by that evening")
                    * Math.exp(1.2815515655 * value(low, "spread of the use")))
        .isCloseTo(value(low, "level that holds 9 times in 10"), within(1e-6));
    List<Step> full = WATER.explain("pots[0].fullMl");
    assertThat(
            value(full, "volume")
                * value(full, "water once drained")
                * value(full, "brought back from below"))
        .isCloseTo(value(full, "full"), within(1e-6));
    List<Step> points = WATER.explain("room.humidityPoints");
    assertThat(100 * value(points, "more water in the air") / value(points, "saturated air"))
        .isCloseTo(value(points, "points of humidity"), within(1e-6));
    List<Step> pane = WATER.explain("room.wetBelowOutdoorC");
    double indoors = value(pane, "air at noon");
    assertThat(
            indoors
                - (indoors - value(pane, "pane at that point"))
                    / (1 - value(pane, "pane's place between out and in")))
        .isCloseTo(value(pane, "outdoors"), within(1e-6));
    List<Step> flood = WATER.explain("flood.volumeL");
    assertThat(value(flood, "water between the pots") + value(flood, "water the pots take up"))
        .isCloseTo(value(flood, "flood"), within(1e-9));
    List<Step> leaf = WATER.explain("pots[0].useMlPerDay");
    double ppfd = value(leaf, "lamp light at noon") + value(leaf, "daylight at noon");
    assertThat(60 * (1500 + ppfd) / (200 + ppfd))
        .isCloseTo(value(leaf, "leaf pores"), within(1e-9));
  }

  @Test
  void aPathThatIsNotThereIsToldWithThoseThatAre() {
    WaterFault fault = catchThrowableOfType(WaterFault.class, () -> WATER.explain("pots[99].x"));
    assertThat(fault.lines().get(0).path()).isEqualTo("--explain");
    assertThat(fault.lines().get(0).sentence())
        .contains("\"pots[99].x\" is no number", "pots[0].useMlPerDay", "use.factor.median");
  }
}
