package sallet.water.absence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Test;
import sallet.household.Household;
import sallet.units.Step;
import sallet.water.WaterFault;
import sallet.water.home.Households;

/** The numbers of an absence, told step by step; the steps are worked again by hand. */
class AwayExplanationTest {
  private static final Household HOME = Households.of(55, 45);
  private static final LocalDate FROM = Households.DAY.plusDays(8);
  private static final AwaySheet SHEET =
      Leaving.sheet(HOME, Households.lettuce(HOME, 8), Households.DAY, FROM, FROM.plusDays(9));

  private static List<Step> told(String path) {
    return AwayExplanation.of(HOME, SHEET, path);
  }

  private static double value(String path, String name) {
    return told(path).stream().filter(s -> s.name().equals(name)).findFirst().orElseThrow().value();
  }

  @Test
  void theLastStepIsTheNumberOnTheSheet() {
    Outlook now = SHEET.asItStands();
    Outlook then = SHEET.prepared();
    Map<String, Double> numbers = new LinkedHashMap<>();
    numbers.put("departure.levelL", SHEET.departure().levelL());
    numbers.put("departure.ecMsCm", SHEET.departure().msCm());
    numbers.put("asItStands.useL", now.demand().medianL());
    numbers.put("asItStands.useL95", now.demand().litresFor(0.95));
    numbers.put("asItStands.usableL", now.usableL());
    numbers.put("asItStands.lastsProbability", now.lasts());
    numbers.put("asItStands.returnMsCm", now.returnMsCm());
    numbers.put("prepared.useL", then.demand().medianL());
    numbers.put("prepared.usableL", then.usableL());
    numbers.put("prepared.lastsProbability", then.lasts());
    numbers.put("prepared.returnMsCm", then.returnMsCm());
    for (int i = 0; i < SHEET.steps().size(); i++) {
      if (SHEET.steps().get(i).useChange() != 0) {
        numbers.put("steps[" + i + "].gainL", SHEET.steps().get(i).gainL());
        numbers.put("steps[" + i + "].useChange", SHEET.steps().get(i).useChange());
        numbers.put("steps[" + i + "].lastsAlone", SHEET.steps().get(i).lastsAlone());
      }
    }
    assertThat(numbers).hasSizeGreaterThan(16);
    numbers.forEach(
        (path, number) -> {
          List<Step> steps = told(path);
          assertThat(steps.get(steps.size() - 1).value()).as(path).isEqualTo(number);
        });
  }

  @Test
  void theStepsAddUp() {
    NormalDistribution normal = new NormalDistribution();
    String path = "asItStands.lastsProbability";
    double used = value(path, "used before leaving") + value(path, "used while away");
    double z = Math.log(value(path, "may go") / used) / value(path, "spread of the use");
    assertThat(normal.cumulativeProbability(z)).isCloseTo(value(path, "probability"), within(1e-6));
    path = "asItStands.useL95";
    assertThat(value(path, "use") * Math.exp(1.6448536 * value(path, "spread of the use")))
        .isCloseTo(value(path, "enough 95 times in 100"), within(1e-5));
    path = "asItStands.usableL";
    assertThat(
            value(path, "level on leaving")
                - value(path, "one flood")
                - value(path, "below the pump and in the hose")
                + value(path, "brought or connected"))
        .isCloseTo(value(path, "may go"), within(1e-9));
    path = "asItStands.returnMsCm";
    double v0 = value(path, "level on leaving");
    double away = value(path, "used while away");
    assertThat(
            (v0 * value(path, "conductivity on leaving")
                    - value(path, "salt that goes with a litre") * away)
                / (v0 - away))
        .isCloseTo(value(path, "conductivity on return"), within(1e-9));
    path = "departure.levelL";
    assertThat(
            value(path, "level to begin with") - value(path, "used until the morning of leaving"))
        .isCloseTo(value(path, "level on leaving"), within(1e-9));
  }

  /** What a step alone brings is worked from a full reservoir. */
  @Test
  void aStepAloneAddsUp() {
    NormalDistribution normal = new NormalDistribution();
    int cool = 0;
    while (SHEET.steps().get(cool).kind() != sallet.water.absence.Step.Kind.COOL) {
      cool++;
    }
    String path = "steps[" + cool + "].lastsAlone";
    double z =
        Math.log(value(path, "may go") / value(path, "use with it"))
            / value(path, "spread of the use");
    assertThat(normal.cumulativeProbability(z)).isCloseTo(value(path, "probability"), within(1e-6));
  }

  @Test
  void aPathThatIsNotThereIsToldWithThoseThatAre() {
    WaterFault fault = catchThrowableOfType(WaterFault.class, () -> told("verdict"));
    assertThat(fault.lines().get(0).path()).isEqualTo("--explain");
    assertThat(fault.lines().get(0).sentence())
        .contains("\"verdict\" is no number", "asItStands.lastsProbability", "departure.levelL");
  }
}
