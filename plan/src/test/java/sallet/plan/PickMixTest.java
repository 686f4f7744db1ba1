package sallet.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import sallet.plan.linear.LinearProgramme;

/** The best mix of picks of one plant against each of its pick sequences alone. */
class PickMixTest {
  private static final int LONGEST = 6;

  @Test
  void mixesAreBetterThanTheBestSequencesAlone() {
    int compared = 0;
    int better = 0;
    double sum = 0;
    for (long seed = 0; compared < 60; seed++) {
      Instance instance = new TinyBench(seed).instance();
      for (Course course : Courses.all(instance)) {
        if (course.bowls.length < 2 || course.bowls.length > LONGEST || compared > 60) {
          continue;
        }
        Life.Skeleton skeleton = new Life.Skeleton(course, course.bowls.length - 1, false);
        double best = best(instance, skeleton, new byte[course.bowls.length], 0);
        PickMix.Result mix =
            PickMix.of(
                    instance,
                    Map.of(course, new LifeGraph(course)),
                    Map.of(skeleton, 1),
                    List.of(),
                    0)
                .orElseThrow();
        // Its rounds end when the graph offers no new life: that may leave a third of a gram.
        assertThat(mix.value()).as("seed %d", seed).isLessThanOrEqualTo(best + 0.01 * best + 1);
        sum += mix.value() - best;
        better += mix.value() < best - 1 ? 1 : 0;
        compared++;
      }
    }
    assertThat(sum).as("points mixes cost more, in all").isLessThanOrEqualTo(0);
    assertThat(better).as("mixes better than any one sequence").isPositive();
  }

  private static double best(Instance instance, Life.Skeleton s, byte[] choices, int t) {
    if (t == s.end()) {
      choices[t] = Picks.CLEAR;
      return value(instance, Life.lived(s.course(), new Picks(choices.clone())));
    }
    double best = Double.POSITIVE_INFINITY;
    for (byte a = 0; a < LifeGraph.SHARES.length; a++) {
      choices[t] = a;
      best = Math.min(best, best(instance, s, choices, t + 1));
    }
    return best;
  }

  private static double value(Instance instance, Life life) {
    double[][] harvest = Eating.inHand(instance);
    Course c = life.course();
    for (int t = 0; t <= life.end(); t++) {
      harvest[c.cropIndex][c.bowls[t]] += life.grams(t);
    }
    assertThat(Arrays.stream(harvest).flatMapToDouble(Arrays::stream)).allMatch(g -> g >= 0);
    try (LinearProgramme programme = instance.solver().programme()) {
      new Eating(instance, programme, harvest);
      assertThat(programme.solve(LinearProgramme.Change.COLUMNS)).isTrue();
      return programme.objective() + c.seedPoints() + Weights.WASTE * life.clearedGrams();
    }
  }
}
