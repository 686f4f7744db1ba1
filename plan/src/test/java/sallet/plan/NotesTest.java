package sallet.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import sallet.plan.linear.LinearSolver;

/** Sentences beside a plan. */
class NotesTest {
  private static List<String> notes(Instance instance) {
    return new Notes(instance, Courses.all(instance)).of(List.of(), List.of(), List.of());
  }

  @Test
  void theStartIsToldFirst() {
    assertThat(notes(new TinyBench(1).standing(0).instance()).get(0)).contains("empty bench");
    assertThat(notes(new TinyBench(1).standing(1).instance()).get(0)).contains("what stands");
  }

  @Test
  void aDimBenchIsCalledDim() {
    for (long seed = 0; seed < 40; seed++) {
      Instance instance = new TinyBench(seed).standing(0).instance();
      double best =
          instance.at().groups().stream()
              .mapToDouble(Surroundings.Group::meanDliMol)
              .max()
              .orElseThrow();
      assertThat(String.join(" ", notes(instance)).contains("The bench is dim"))
          .as("%.1f mol", best)
          .isEqualTo(best < 6);
    }
  }

  @Test
  void nothingIsSaidOfSolversWhereTheChosenOneWorks() {
    for (LinearSolver solver : LinearSolver.values()) {
      assertThat(solver.usable()).isEqualTo(solver);
    }
    assertThat(notes(new TinyBench(3).instance())).noneMatch(n -> n.contains("plain Java"));
  }
}
