package sallet.plan;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import sallet.crop.PlantState;

/**
 * Lives whose picks are fixed beforehand, as plans of kitchen gardens commonly have them: a head is
 * lifted when it is large enough or a week later; a plant that is picked loses as much as it may at
 * every bowl and is lifted after one, three, five or eight of them. One day of moving on for each
 * sowing.
 */
final class FixedYields {
  private static final byte MOST = (byte) (LifeGraph.SHARES.length - 1);
  private static final int[] PICKED = {0, 1, 3, 5, 8};
  private static final int LIFTINGS = 2;

  private FixedYields() {}

  static List<Life> of(List<Course> courses) {
    Set<List<Integer>> seen = new HashSet<>();
    return courses.stream()
        .filter(c -> seen.add(List.of(c.cropIndex, c.sowSlot, c.group)))
        .flatMap(c -> Stream.concat(heads(c).stream(), picked(c).stream()))
        .toList();
  }

  private static List<Life> heads(Course course) {
    double[] fresh = unpicked(course);
    return IntStream.range(0, fresh.length)
        .filter(t -> fresh[t] >= course.rule.liftFromG())
        .limit(LIFTINGS)
        .mapToObj(t -> Life.lived(course, picks(0, 0, t)))
        .toList();
  }

  private static List<Life> picked(Course course) {
    double[] fresh = unpicked(course);
    return IntStream.range(0, fresh.length)
        .filter(t -> course.mayPick(t, fresh[t]))
        .limit(1)
        .boxed()
        .flatMap(
            first ->
                Arrays.stream(PICKED)
                    .filter(n -> first + n < fresh.length)
                    .mapToObj(n -> Life.lived(course, picks(first, n, first + n))))
        .toList();
  }

  /** Fresh grams at the bowls of the course when nobody picks. */
  private static double[] unpicked(Course course) {
    double[] fresh = new double[course.bowls.length];
    PlantState state = course.atFirstBowl();
    for (int t = 0; t < fresh.length; t++) {
      fresh[t] = course.freshG(state, t);
      if (t + 1 < fresh.length) {
        state = course.grow(state, course.bowlDay[t] + 1, course.bowlDay[t + 1] + 1);
      }
    }
    return fresh;
  }

  /** So many largest picks from a bowl on, then lifting. */
  private static Picks picks(int first, int number, int end) {
    byte[] choices = new byte[end + 1];
    Arrays.fill(choices, first, first + number, MOST);
    choices[end] = Picks.LIFT;
    return new Picks(choices);
  }
}
