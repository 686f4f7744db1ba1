package sallet.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What to take from which pot at the next bowl, and why: the plan's own choice. */
final class PicksNow {
  /** Days for which advice is given. */
  private static final int WEEK = 7;

  private final Instance instance;
  private final List<Sowing> batches;
  private final List<BlendedLife> lives;
  private final List<List<String>> pots;

  /**
   * @param batches all batches of the plan
   * @param lives all lives of the plan
   * @param pots pots of each of these lives
   */
  PicksNow(
      Instance instance, List<Sowing> batches, List<BlendedLife> lives, List<List<String>> pots) {
    this.instance = instance;
    this.batches = batches;
    this.lives = lives;
    this.pots = pots;
  }

  /** The advice, by pot; empty when no bowl lies within a week or nothing is picked for it. */
  List<SowingPlan.PickNow> of() {
    LocalDate bowl = instance.calendar().bowl(0);
    List<SowingPlan.PickNow> advice = new ArrayList<>();
    if (bowl.isBefore(instance.calendar().from().plusDays(WEEK))) {
      for (int i = 0; i < lives.size(); i++) {
        BlendedLife life = lives.get(i);
        if (life.skeleton().course().bowls[0] == 0 && life.shares().get(0) > 0) {
          for (String pot : pots.get(i)) {
            advice.add(advice(life, pot, bowl));
          }
        }
      }
    }
    advice.sort(Comparator.comparing(SowingPlan.PickNow::place));
    return advice;
  }

  private SowingPlan.PickNow advice(BlendedLife life, String pot, LocalDate bowl) {
    Course c = life.skeleton().course();
    boolean lift = life.lifted() && life.skeleton().end() == 0;
    return new SowingPlan.PickNow(
        bowl,
        pot,
        instance.standing().get(c.standing).batch(),
        c.crop.name(),
        life.gramsEach().get(0),
        lift,
        lift ? whyLift(c, pot, bowl) : whyPick(life));
  }

  private String whyLift(Course c, String pot, LocalDate bowl) {
    if (!c.lastDay.isAfter(bowl.plusDays(WEEK))) {
      boolean young = c.lastDay.isBefore(c.emergence.plusDays(c.rule.overAgeDays()));
      return young ? "it is about to run to seed" : "it is near the end of its age";
    }
    return next(pot, bowl)
        .map(
            s ->
                String.format(
                    Locale.ROOT, "its pot is wanted for %s (batch %s)", s.crop(), s.batch()))
        .orElse("it gives this bowl more than it would give by standing on");
  }

  /** The batch that moves into a pot within a week from a day on. */
  private Optional<Sowing> next(String pot, LocalDate day) {
    return batches.stream()
        .filter(
            s ->
                s.courses().stream()
                    .anyMatch(
                        c ->
                            c.pots().contains(pot)
                                && !c.toBench().isBefore(day)
                                && c.toBench().isBefore(day.plusDays(WEEK))))
        .findFirst();
  }

  private static String whyPick(BlendedLife life) {
    return String.format(
        Locale.ROOT,
        "%.0f %% of its leaf now; the rest grows on for %s",
        100 * life.shares().get(0),
        life.shares().size() > 1 ? "later bowls" : "the next plan");
  }
}
