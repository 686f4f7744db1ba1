package sallet.plan.rehearse;

import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import sallet.crop.Catalogue;
import sallet.crop.forecast.Band;
import sallet.household.Household;
import sallet.learn.Learned;
import sallet.plan.BowlWeek;
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
   * The plan with what each bowl comes to, 10, 50 and 90 %.
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
    return plan.withLuck(luck.weeks(plan, MEMBERS, SEED));
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

  /** What each bowl comes to over so many seasons. */
  private List<BowlWeek.Luck> weeks(SowingPlan plan, int members, long seed) {
    List<PlayedSeason> seasons =
        LongStream.range(0, members)
            .parallel()
            .mapToObj(i -> season(scene, present, plan, seed + i))
            .toList();
    return IntStream.range(0, plan.weeks().size())
        .mapToObj(
            w ->
                new BowlWeek.Luck(
                    band(seasons, w, PlayedSeason.Week::harvestGrams),
                    band(seasons, w, PlayedSeason.Week::eatenGrams)))
        .toList();
  }

  private static Band band(
      List<PlayedSeason> seasons, int w, ToDoubleFunction<PlayedSeason.Week> grams) {
    return Band.of(seasons.stream().map(s -> s.weeks().get(w)).mapToDouble(grams).toArray());
  }

  /** One season in which the plan is followed. */
  static PlayedSeason season(Scene scene, Present present, SowingPlan plan, long seed) {
    World world = new World(scene, seed);
    world.begin(present);
    return world.play(new Fixed(plan), () -> false).orElseThrow();
  }
}
