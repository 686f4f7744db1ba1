package sallet.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import sallet.crop.Catalogue;

/** The second stage: fewer sowing days and picks for a small loss. */
class TidyingTest {
  private static final List<String> CROPS =
      List.of("loose-leaf lettuce, green", "mizuna", "Swiss chard");

  @Test
  void itNeverSowsOrPicksMoreOftenAndLosesLittle() {
    Planner.Request request =
        new Planner.Request(
            Households.bench(240, CROPS, List.of()),
            Catalogue.builtIn(),
            Households.START,
            16,
            1,
            Effort.counted(3));
    Instance asked = Question.of(request, Question.surroundings(request));
    Instance instance = asked.reaching(Courses.all(asked));
    List<LifeGraph> graphs = Courses.all(instance).stream().map(LifeGraph::new).toList();
    Deadline never = new Deadline(Effort.counted(1).linear(), () -> false);
    WholePlan.Judge judge = new WholePlan.Judge(instance, graphs);
    try (Master exact = new Master(instance, graphs, false)) {
      new LinearPlan(instance, graphs, step -> {}).solve(exact, never, true);
      WholePlan first =
          new WholePlants(
                  instance,
                  judge,
                  graphs.stream().map(g -> g.course).toList(),
                  exact,
                  new SplittableRandom(1),
                  step -> {})
              .solve(judge.promises().kept(), 0, 1, never, 3)
              .plan();
      WholePlan tidy = new Tidying(instance, judge, graphs, step -> {}).of(first, never);

      assertThat(tidy.sowingDays()).isLessThan(first.sowingDays());
      assertThat(tidy.batches()).isLessThanOrEqualTo(first.batches());
      double allowed = Math.max(0.01 * first.value(), 0.001 * 10 * instance.demandGrams());
      assertThat(tidy.value()).isLessThanOrEqualTo(first.value() + allowed + 1e-6);
      FreePlaces free = new FreePlaces(instance);
      tidy.counts()
          .forEach(
              (s, n) -> {
                for (int i = 0; i < n; i++) {
                  assertThat(free.fits(s)).as("%s", s).isTrue();
                  free.take(s, 1);
                }
              });
    }
  }
}
