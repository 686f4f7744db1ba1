package sallet.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Every plant gets a pot of its own for all its time, as long as the group is never over full. */
class PotAssignmentTest {
  private static final int BENCHES = 150;

  @Test
  void noTwoPlantsShareAPotAndNoneMoves() {
    int assigned = 0;
    for (long seed = 0; seed < BENCHES; seed++) {
      Instance instance = new TinyBench(seed).instance();
      List<BlendedLife> lives = lives(instance, new Random(seed));
      List<List<String>> pots = PotAssignment.of(lives, instance);
      Map<String, List<int[]>> stays = new HashMap<>();
      for (int i = 0; i < lives.size(); i++) {
        Course c = lives.get(i).skeleton().course();
        List<String> group = instance.at().groups().get(c.group).pots();
        assertThat(pots.get(i)).hasSize(lives.get(i).count()).isSubsetOf(group);
        for (String pot : pots.get(i)) {
          stays
              .computeIfAbsent(pot, p -> new ArrayList<>())
              .add(new int[] {c.benchSlot, lives.get(i).skeleton().endSlot()});
          assigned++;
        }
        if (c.standing >= 0 && !instance.standing().get(c.standing).pots().isEmpty()) {
          assertThat(instance.standing().get(c.standing).pots()).containsAll(pots.get(i));
        }
      }
      for (List<int[]> inPot : stays.values()) {
        inPot.sort(Comparator.comparingInt((int[] s) -> s[0]).thenComparingInt(s -> s[1]));
        for (int i = 1; i < inPot.size(); i++) {
          assertThat(inPot.get(i)[0])
              .as("seed %d", seed)
              .isGreaterThanOrEqualTo(inPot.get(i - 1)[1]);
        }
      }
    }
    assertThat(assigned).isGreaterThan(BENCHES);
  }

  /** Random plants until no more fit. */
  private static List<BlendedLife> lives(Instance instance, Random random) {
    List<Course> courses = new ArrayList<>(Courses.all(instance));
    Collections.shuffle(courses, random);
    FreePlaces free = new FreePlaces(instance);
    List<BlendedLife> lives = new ArrayList<>();
    for (Course c : courses) {
      Life.Skeleton s = new Life.Skeleton(c, random.nextInt(c.bowls.length), false);
      if (free.fits(s)) {
        free.take(s, 1);
        lives.add(
            BlendedLife.of(
                new Plants(s, 1, Collections.nCopies(s.end() + 1, 0.0)), OptionalDouble.empty()));
      }
    }
    return lives;
  }
}
