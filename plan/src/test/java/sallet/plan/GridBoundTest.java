package sallet.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import sallet.plan.linear.LinearProgramme;

/**
 * The grid bound against every plan of the grid: all whole plants, moves and pick sequences of tiny
 * households, from an empty bench and from standing plants.
 */
class GridBoundTest {
  /** Households for which everything is tried. */
  private static final int WHOLLY_TRIED = 200;

  static final int MOST_LIVES = 400;
  private static final int MOST_PLANS = 40_000;

  /** Points a reduced cost may lie below zero and count as none, for each plant. */
  private static final double PER_PLANT = 1e-3;

  /**
   * Some plants, each with its whole life.
   *
   * @param fixed points for seeds, grams cleared and plants discarded
   * @param least no way to eat the harvest costs less in all
   */
  private record Plan(List<Life> lives, double fixed, double least) {}

  @Test
  void noPlanOfTheGridCostsLessThanTheBound() {
    int wholly = 0;
    int withStanding = 0;
    double closest = Double.POSITIVE_INFINITY;
    for (long seed = 0; wholly < WHOLLY_TRIED; seed++) {
      Instance instance = new TinyBench(seed).instance();
      List<Course> courses = Courses.all(instance);
      if (courses.isEmpty() || instance.firstBowl() >= instance.calendar().bowls()) {
        continue;
      }
      List<Life> lives = lives(courses);
      boolean all = lives.size() <= MOST_LIVES;
      if (!all) {
        Collections.shuffle(lives, new Random(seed));
        lives = lives.subList(0, MOST_LIVES);
      }
      List<Plan> plans = new ArrayList<>();
      all &= addPlans(instance, lives, 0, List.of(), plans);
      double best = cheapest(instance, plans);
      double bound = bound(instance, courses);
      assertThat(bound)
          .as("seed %d, %d lives, %d plans", seed, lives.size(), plans.size())
          .isLessThanOrEqualTo(best + 1e-6 * best + PER_PLANT * (3 + instance.standing().size()));
      wholly += all ? 1 : 0;
      withStanding += all && !instance.standing().isEmpty() ? 1 : 0;
      closest = all ? Math.min(closest, (best - bound) / Math.max(1, best)) : closest;
    }
    assertThat(withStanding).as("with standing plants").isGreaterThan(WHOLLY_TRIED / 4);
    assertThat(closest).as("the bound is tight somewhere").isLessThan(1e-3);
  }

  static double bound(Instance instance, List<Course> courses) {
    List<LifeGraph> graphs = courses.stream().map(LifeGraph::new).toList();
    try (Master exact = new Master(instance, graphs, false)) {
      return new LinearPlan(instance, graphs, step -> {})
          .solve(exact, new Deadline(Duration.ofDays(1), () -> false), true)
          .bound();
    }
  }

  static List<Life> lives(List<Course> courses) {
    List<Life> lives = new ArrayList<>();
    for (Course course : courses) {
      addLives(course, new byte[course.bowls.length], 0, new HashSet<>(), lives);
    }
    return lives;
  }

  private static void addLives(
      Course course, byte[] choices, int t, Set<Picks> known, List<Life> lives) {
    for (byte end : new byte[] {Picks.LIFT, Picks.CLEAR}) {
      choices[t] = end;
      Life life = Life.lived(course, new Picks(Arrays.copyOf(choices, t + 1)));
      if (known.add(life.picks())) {
        lives.add(life);
      }
    }
    for (byte a = 0; a < LifeGraph.SHARES.length && t + 1 < course.bowls.length; a++) {
      choices[t] = a;
      if (lives.size() <= MOST_LIVES) {
        addLives(course, choices, t + 1, known, lives);
      }
    }
  }

  /** Adds every plan with these plants and more that come later in the list; whether all fit in. */
  private static boolean addPlans(
      Instance instance, List<Life> lives, int from, List<Life> chosen, List<Plan> plans) {
    if (plans.size() >= MOST_PLANS) {
      return false;
    }
    FreePlaces free = new FreePlaces(instance);
    chosen.forEach(l -> free.take(l.skeleton(), 1));
    plans.add(plan(instance, chosen, free));
    boolean all = true;
    for (int i = from; i < lives.size() && all; i++) {
      if (free.fits(lives.get(i).skeleton())) {
        List<Life> more = new ArrayList<>(chosen);
        more.add(lives.get(i));
        all = addPlans(instance, lives, i, more, plans);
      }
    }
    return all;
  }

  private static Plan plan(Instance instance, List<Life> lives, FreePlaces free) {
    double fixed = 0;
    double harvest = instance.inHandGrams().stream().mapToDouble(g -> g).sum();
    for (int s = 0; s < instance.standing().size(); s++) {
      fixed += free.standing(s) * instance.standing().get(s).discardPoints();
    }
    for (Life life : lives) {
      fixed += life.course().seedPoints() + Weights.WASTE * life.clearedGrams();
      for (int t = 0; t <= life.end(); t++) {
        harvest += life.grams(t);
      }
    }
    double aims = 0;
    for (int w = 0; w < instance.calendar().bowls(); w++) {
      aims += instance.aimGrams(w);
    }
    double least =
        Weights.SHORT * Math.max(0, aims - harvest) + Weights.WASTE * Math.max(0, harvest - aims);
    return new Plan(lives, fixed, fixed + least);
  }

  /** What the cheapest plan costs when its harvest is eaten in the best way. */
  private static double cheapest(Instance instance, List<Plan> plans) {
    plans.sort(Comparator.comparingDouble(Plan::least));
    double best = Double.POSITIVE_INFINITY;
    for (Plan plan : plans) {
      if (plan.least >= best) {
        return best;
      }
      best = Math.min(best, plan.fixed + eating(instance, plan.lives));
    }
    return best;
  }

  private static double eating(Instance instance, List<Life> lives) {
    double[][] harvest = Eating.inHand(instance);
    for (Life life : lives) {
      Course c = life.course();
      for (int t = 0; t <= life.end(); t++) {
        harvest[c.cropIndex][c.bowls[t]] += life.grams(t);
      }
    }
    try (LinearProgramme programme = instance.solver().programme()) {
      new Eating(instance, programme, harvest);
      return Optional.of(programme)
          .filter(p -> p.solve(LinearProgramme.Change.COLUMNS))
          .orElseThrow()
          .objective();
    }
  }
}
