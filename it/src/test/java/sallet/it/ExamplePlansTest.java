package sallet.it;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sallet.app.file.HouseholdFile;
import sallet.app.file.HouseholdReader;
import sallet.app.use.MakePlan;
import sallet.crop.Catalogue;
import sallet.household.Household;
import sallet.plan.BowlWeek;
import sallet.plan.SowingPlan;
import sallet.plan.check.PlanChecker;
import sallet.plan.linear.LinearSolver;

/** The example households get full bowls, by plans that a second opinion finds valid. */
class ExamplePlansTest {
  @ParameterizedTest
  @ValueSource(strings = {"porch", "cellar", "minimal"})
  void fillsTheBowls(String example) {
    Catalogue catalogue = Catalogue.builtIn();
    Path file = Project.folder().resolve("examples").resolve(example + ".yaml");
    HouseholdFile read = new HouseholdReader(catalogue).read(file);
    assertThat(read).isInstanceOf(HouseholdFile.Good.class);
    Household household = ((HouseholdFile.Good) read).household();
    SowingPlan plan =
        MakePlan.of(
                household,
                catalogue,
                new MakePlan.Wish(
                    LocalDate.of(2026, 11, 25),
                    26,
                    Optional.empty(),
                    8,
                    0,
                    LinearSolver.NATIVE,
                    false),
                Optional.empty(),
                Optional.empty(),
                step -> {},
                () -> false)
            .plan();
    assertThat(PlanChecker.check(plan, household, catalogue)).isEmpty();
    double demand =
        plan.weeks().stream().filter(BowlWeek::reachable).mapToDouble(BowlWeek::demandGrams).sum();
    double missing =
        plan.weeks().stream()
            .filter(BowlWeek::reachable)
            .mapToDouble(BowlWeek::shortfallGrams)
            .sum();
    assertThat(missing / demand).as("share of the demanded grams missing").isLessThan(0.05);
    assertThat(plan.weeks().stream().filter(BowlWeek::reachable).count())
        .as("bowls a sowing can reach")
        .isGreaterThan(18);
  }
}
