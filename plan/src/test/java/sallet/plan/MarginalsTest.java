package sallet.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;

/**
 * What one more place would bring, against the whole programme of tiny benches solved anew by a
 * library of its own (ojAlgo) with a hundredth of a place more and a hundredth less. Where the
 * minimum has a corner the two differ, and the marginal lies between them.
 */
class MarginalsTest {
  private static final int BENCHES = 30;

  /** Part of a place added and taken away. */
  private static final double SHIFT = 0.01;

  /** A gram short costs ten points; the weights are the plan's own declaration. */
  private static final double POINTS_OF_A_GRAM = 10;

  /** Grams a week: what the library's precision of the minimum leaves unsure. */
  private static final double NEAR_GRAMS = 0.01;

  @Test
  void oneMorePlaceBringsWhatTheProgrammeSolvedAnewSays() {
    int tried = 0;
    int sharp = 0;
    for (long seed = 0; tried < BENCHES; seed++) {
      Instance instance = new TinyBench(seed).instance();
      List<Course> courses = Courses.all(instance);
      if (courses.isEmpty() || instance.firstBowl() >= instance.calendar().bowls()) {
        continue;
      }
      List<Life> lives = GridBoundTest.lives(courses);
      if (lives.size() > GridBoundTest.MOST_LIVES) {
        continue;
      }
      tried++;
      WrittenProgramme here = written(instance, lives);
      double now = minimum(here, here, 0);
      for (SowingPlan.Marginal told : marginals(instance, lives)) {
        WrittenProgramme there = written(at(instance, oneMore(instance, told.place())), lives);
        double each = POINTS_OF_A_GRAM * instance.calendar().bowls() * SHIFT;
        double more = (now - minimum(here, there, SHIFT)) / each;
        double less = (minimum(here, there, -SHIFT) - now) / each;
        assertThat(told.gramsPerWeek())
            .as("seed %d, one more %s", seed, told.place())
            .isBetween(more - NEAR_GRAMS, less + NEAR_GRAMS);
        sharp += more > 0.1 && less - more < NEAR_GRAMS ? 1 : 0;
      }
    }
    assertThat(sharp).as("places that bring something, told without a span").isGreaterThan(4);
  }

  private static List<SowingPlan.Marginal> marginals(Instance instance, List<Life> lives) {
    try (Master master = new Master(instance, List.of(), false)) {
      lives.forEach(master::add);
      assertThat(master.solve()).isTrue();
      return master.prices().marginals(instance);
    }
  }

  private static Surroundings oneMore(Instance instance, String place) {
    Surroundings at = instance.at();
    return switch (place) {
      case "cell" -> at.holding(at.cells() + 1, at.places());
      case "nursery place" -> at.holding(at.cells(), at.places() + 1);
      case "pot", "pot like the better" -> at.withPot(0);
      case "pot like the weaker" -> at.withPot(1);
      default -> throw new IllegalArgumentException(place);
    };
  }

  private static Instance at(Instance i, Surroundings there) {
    return new Instance(
        i.household(),
        i.crops(),
        i.sowable(),
        i.calendar(),
        there,
        i.standing(),
        i.takenCells(),
        i.inHandGrams(),
        i.promises(),
        i.changePoints(),
        i.vigour(),
        i.margin(),
        i.firstBowl(),
        i.solver());
  }

  private static WrittenProgramme written(Instance instance, List<Life> lives) {
    WrittenProgramme programme = new WrittenProgramme();
    WholeProgramme.ofLives(instance, lives, programme);
    return programme;
  }

  /** The minimum with the rows' bounds moved part of the way from one programme to another. */
  private static double minimum(WrittenProgramme here, WrittenProgramme there, double share) {
    ExpressionsBasedModel model = new ExpressionsBasedModel();
    List<Variable> columns = new ArrayList<>();
    here.costs.forEach(cost -> columns.add(model.addVariable().lower(0).weight(cost)));
    List<Expression> rows = new ArrayList<>();
    for (int i = 0; i < here.rows(); i++) {
      Expression row = model.addExpression();
      double low = here.lowest.get(i);
      double high = here.highest.get(i);
      if (Double.isFinite(low)) {
        row.lower(low + share * (there.lowest.get(i) - low));
      }
      if (Double.isFinite(high)) {
        row.upper(high + share * (there.highest.get(i) - high));
      }
      rows.add(row);
    }
    for (int j = 0; j < here.columns(); j++) {
      Variable column = columns.get(j);
      here.coefficients.get(j).forEach((i, value) -> rows.get(i).set(column, value));
    }
    Optimisation.Result result = model.minimise();
    assertThat(result.getState().isOptimal()).isTrue();
    return result.getValue();
  }
}
