package sallet.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import sallet.crop.HarvestRule;
import sallet.crop.PlantDay;
import sallet.crop.PlantModel;
import sallet.crop.PlantState;

/** Whatever is picked, the true plant stays within the bounds. */
class GrowthBoundsTest {
  private static final int CASES = 400;

  /** Plants picked in different ways that the same bounds must hold. */
  private static final int PLANTS = 5;

  @Test
  void everyPlantStaysWithinBoundsJoinedFromAllOfThem() {
    SplittableRandom random = new SplittableRandom(17);
    int joined = 0;
    for (int i = 0; i < CASES; i++) {
      List<Course> courses = Courses.all(new TinyBench(i).instance());
      if (courses.isEmpty()) {
        continue;
      }
      Course course = courses.get(random.nextInt(courses.size()));
      PlantState start = course.atFirstBowl();
      List<PlantState> plants = new ArrayList<>(Collections.nCopies(PLANTS, start));
      GrowthBounds bounds = GrowthBounds.exactly(start);
      for (int t = 0; t + 1 < course.bowls.length; t++) {
        bounds = picked(plants, bounds, random);
        for (int d = course.bowlDay[t] + 1; d <= course.bowlDay[t + 1]; d++) {
          PlantDay day = course.days[d];
          plants.replaceAll(s -> PlantModel.step(s, course.parameters, day));
          bounds.step(course.parameters, day);
          for (PlantState s : plants) {
            holds(bounds, s, day, "case " + i + ", day " + d);
          }
        }
        joined++;
      }
    }
    assertThat(joined).as("bowls with a pick").isGreaterThan(CASES / 2);
  }

  /** Picks each plant its own way and returns bounds for all of them. */
  private static GrowthBounds picked(
      List<PlantState> plants, GrowthBounds before, SplittableRandom random) {
    List<GrowthBounds> parts = new ArrayList<>();
    for (int k = 0; k < plants.size(); k++) {
      double wanted = LifeGraph.SHARES[random.nextInt(LifeGraph.SHARES.length)];
      double share = Math.min(wanted, HarvestRule.largestPick(plants.get(k).leaves()));
      plants.set(k, plants.get(k).pickedLeaves(share));
      GrowthBounds part = new GrowthBounds();
      part.setPicked(
          before,
          Math.min(wanted, HarvestRule.largestPick(before.leavesLo)),
          Math.min(wanted, HarvestRule.largestPick(before.leavesHi)));
      parts.add(part);
    }
    GrowthBounds all = parts.get(0);
    parts.forEach(all::join);
    return all;
  }

  private static void holds(GrowthBounds b, PlantState s, PlantDay day, String where) {
    within(where + ", shoot", b.shootLo, s.shootG(), b.shootHi);
    within(where + ", root", b.rootLo, s.rootG(), b.rootHi);
    within(where + ", reserve", b.reserveLo, s.reserveG(), b.reserveHi);
    within(where + ", leaf", b.leafLo, s.leafCm2(), b.leafHi);
    within(where + ", leaves", b.leavesLo, s.leaves(), b.leavesHi);
    within(where + ", fresh", b.freshLo(day), s.freshG(day.dryMatterShare()), b.freshHi(day));
  }

  private static void within(String what, double low, double value, double high) {
    double give = 1e-9 * (1 + Math.abs(value));
    assertThat(value).as(what).isBetween(low - give, high + give);
  }
}
