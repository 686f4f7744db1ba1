package sallet.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import sallet.crop.Catalogue;
import sallet.household.Household;

/** The graph of a life against every single way to live it. */
class LifeGraphTest {
  private static final int LONGEST_LIFE_BOWLS = 7;
  private static final List<Course> COURSES = new ArrayList<>();
  private static final List<Course> STANDING = new ArrayList<>();

  @BeforeAll
  static void courses() {
    Household household = Households.bench(240, List.of(), List.of());
    Planner.Request request =
        new Planner.Request(household, Catalogue.builtIn(), Households.START, 14, 1, Effort.USUAL);
    Instance instance = Question.of(request, Question.surroundings(request));
    COURSES.addAll(
        Courses.all(instance).stream()
            .filter(c -> c.bowls.length >= 2 && c.bowls.length <= LONGEST_LIFE_BOWLS)
            .toList());
    for (long seed = 0; STANDING.size() < 40; seed++) {
      Instance tiny = new TinyBench(seed).standing(2).instance();
      Courses.all(tiny).stream()
          .filter(c -> c.standing >= 0 && c.bowls.length >= 2)
          .filter(c -> c.bowls.length <= LONGEST_LIFE_BOWLS)
          .forEach(STANDING::add);
    }
  }

  /** A new sowing or, every other time, a plant that stands already. */
  private static Course course(SplittableRandom random) {
    List<Course> from = random.nextBoolean() ? COURSES : STANDING;
    return from.get(random.nextInt(from.size()));
  }

  @Test
  void noSequenceOfPicksBeatsTheGraph() {
    SplittableRandom random = new SplittableRandom(7);
    int cases = 500;
    double closest = Double.POSITIVE_INFINITY;
    for (int i = 0; i < cases; i++) {
      Course course = course(random);
      Offer offer = randomOffer(course, random);
      LifeGraph graph = new LifeGraph(course);
      double bound = graph.bestValue(offer);
      double best = bestOfAll(course, offer, new byte[course.bowls.length], 0);
      assertThat(bound)
          .as("case %d: %s from slot %d", i, course.crop.name(), course.sowSlot)
          .isGreaterThanOrEqualTo(best - 1e-6 * Math.abs(best));
      closest = Math.min(closest, Math.abs(bound - best) / Math.max(1, Math.abs(best)));
    }
    assertThat(closest).as("the bound is tight somewhere").isLessThan(1e-6);
  }

  @Test
  void theBestPathIsWorthWhatTheGraphSays() {
    SplittableRandom random = new SplittableRandom(11);
    for (int i = 0; i < 200; i++) {
      Course course = course(random);
      Offer offer = randomOffer(course, random);
      LifeGraph graph = new LifeGraph(course);
      double value = graph.bestValue(offer);
      Life credited = Life.credited(graph, graph.bestPath(offer), offer);
      assertThat(worth(credited, offer)).as("case %d", i).isCloseTo(value, within(1e-6));
    }
  }

  @Test
  void anEndThatIsForbiddenIsNotTaken() {
    SplittableRandom random = new SplittableRandom(13);
    for (int i = 0; i < 200; i++) {
      Course course = course(random);
      Offer offer = randomOffer(course, random);
      LifeGraph graph = new LifeGraph(course);
      Life.Skeleton wanted = new Life.Skeleton(course, random.nextInt(course.bowls.length), false);
      offer.only(wanted);
      graph.bestValue(offer);
      Picks path = graph.bestPath(offer);
      assertThat(path.length() - 1).isEqualTo(wanted.end());
      assertThat(path.lifted()).isFalse();
    }
  }

  private static Offer randomOffer(Course course, SplittableRandom random) {
    boolean glut = random.nextBoolean();
    double[] price = new double[14];
    for (int w = 0; w < price.length; w++) {
      price[w] =
          glut
              ? random.nextInt(3) == 0 ? random.nextDouble(0, 3) : random.nextDouble(-0.5, 0)
              : random.nextDouble(-2, 10);
    }
    double[] pots = new double[40];
    for (int s = 1; s < pots.length; s++) {
      pots[s] = pots[s - 1] + Math.max(0, random.nextDouble(-20, glut ? 2 : 40));
    }
    return new Offer(course, price, pots);
  }

  private static double bestOfAll(Course course, Offer offer, byte[] choices, int t) {
    double best = Double.NEGATIVE_INFINITY;
    for (byte end : new byte[] {Picks.LIFT, Picks.CLEAR}) {
      choices[t] = end;
      Life life = Life.lived(course, new Picks(java.util.Arrays.copyOf(choices, t + 1)));
      best = Math.max(best, worth(life, offer));
    }
    if (t + 1 < course.bowls.length) {
      for (byte a = 0; a < LifeGraph.SHARES.length; a++) {
        choices[t] = a;
        best = Math.max(best, bestOfAll(course, offer, choices, t + 1));
      }
    }
    return best;
  }

  private static double worth(Life life, Offer offer) {
    double perFresh = life.course().ediblePerFresh();
    double sum = -Weights.WASTE * life.clearedGrams();
    for (int t = 0; t <= life.end(); t++) {
      sum += offer.freshPrice[t] / perFresh * life.grams(t);
      sum -= t < life.end() ? offer.wait[t] : 0;
    }
    return sum;
  }
}
