package sallet.plan.rehearse;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.LongStream;
import sallet.crop.Catalogue;
import sallet.crop.forecast.Band;
import sallet.household.Household;
import sallet.learn.Learned;
import sallet.plan.Present;
import sallet.plan.SowingPlan;
import sallet.plan.TaskCalendar;

/**
 * How wide the forecast of a plan is: the plan is followed through many seasons drawn from what is
 * believed, with its sowings as they are and none beside them. Each bowl is picked until it holds
 * what the plan meant, at most the largest pick from any plant.
 */
public final class Luck {
  /** Seasons a band is drawn from. */
  public static final int MEMBERS = 200;

  private static final long SEED = 1;

  private final Scene scene;
  private final Present present;

  private Luck(Scene scene, Present present) {
    this.scene = scene;
    this.present = present;
  }

  /**
   * The plan with the band of the harvest of each bowl: 10, 50 and 90 %.
   *
   * @param present what there was on its first day
   * @param learned what is believed of crops and seed
   */
  public static SowingPlan told(
      SowingPlan plan, Household household, Catalogue catalogue, Present present, Learned learned) {
    Luck luck =
        new Luck(
            scene(plan, household, catalogue, Hidden.USUAL, Prospect.of(learned, catalogue)),
            present);
    return plan.withLuck(luck.bands(plan, MEMBERS, SEED));
  }

  /** The scene of a plan, from its first day to its last bowl. */
  static Scene scene(
      SowingPlan plan,
      Household household,
      Catalogue catalogue,
      Hidden hidden,
      Map<String, Prospect> prospects) {
    TaskCalendar calendar =
        new TaskCalendar(
            household.eaters(), household.absences(), plan.from(), plan.weeks().size());
    return Scene.of(household, catalogue, calendar, hidden).with(prospects);
  }

  /** The band of each bowl's harvest over so many seasons. */
  private List<Band> bands(SowingPlan plan, int members, long seed) {
    List<PlayedSeason> seasons =
        LongStream.range(0, members)
            .parallel()
            .mapToObj(i -> season(scene, present, plan, seed + i))
            .toList();
    List<Band> bands = new ArrayList<>();
    for (int w = 0; w < plan.weeks().size(); w++) {
      int week = w;
      bands.add(
          Band.of(seasons.stream().mapToDouble(s -> s.weeks().get(week).harvestGrams()).toArray()));
    }
    return bands;
  }

  /** One season in which the plan is followed. */
  static PlayedSeason season(Scene scene, Present present, SowingPlan plan, long seed) {
    World world = new World(scene, seed);
    world.begin(present);
    return world.play(new Fixed(plan), () -> false).orElseThrow();
  }
}
