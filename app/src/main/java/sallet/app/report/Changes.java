package sallet.app.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import sallet.learn.LearnedFactor;
import sallet.learn.Standing;
import sallet.plan.BowlWeek;
import sallet.plan.LastPlan;
import sallet.plan.Sowing;
import sallet.plan.SowingPlan;

/** What differs from the last plan in the coming two weeks, and what was seen that explains it. */
public final class Changes {
  private static final int TWO_WEEKS = 14;

  /** Share of a bowl that makes a difference worth telling. Judgement. */
  private static final double NOTABLE = 0.1;

  /** Change of a growth factor worth telling. Judgement. */
  private static final double NOTABLE_FACTOR = 0.05;

  private final SowingPlan plan;
  private final LastPlan last;
  private final Standing standing;

  private Changes(SowingPlan plan, LastPlan last, Standing standing) {
    this.plan = plan;
    this.last = last;
    this.standing = standing;
  }

  /** Sentences: first what changed, then what was seen; one that says so when nothing changed. */
  public static List<String> of(SowingPlan plan, LastPlan last, Standing standing) {
    Changes changes = new Changes(plan, last, standing);
    List<String> told = changes.sowings();
    if (told.isEmpty()) {
      return List.of("No sowing of the coming two weeks has changed.");
    }
    List<String> why = changes.reasons();
    told.addAll(
        why.isEmpty()
            ? List.of("Nothing new was seen; the search found a better plan this time.")
            : why);
    return told;
  }

  private List<String> sowings() {
    Map<LocalDate, Map<String, Integer>> before = new TreeMap<>();
    Set<String> counted = new LinkedHashSet<>();
    for (LastPlan.Group g : last.sowings()) {
      if (!g.standing() && near(g.sown()) && counted.add(g.batch())) {
        before
            .computeIfAbsent(g.sown(), d -> new TreeMap<>())
            .merge(g.crop(), g.cells(), Integer::sum);
      }
    }
    Map<LocalDate, Map<String, Integer>> now = new TreeMap<>();
    for (Sowing s : plan.sowings()) {
      if (near(s.date())) {
        now.computeIfAbsent(s.date(), d -> new TreeMap<>())
            .merge(s.crop(), s.cells(), Integer::sum);
      }
    }
    Set<LocalDate> days = new TreeSet<>(before.keySet());
    days.addAll(now.keySet());
    List<String> told = new ArrayList<>();
    for (LocalDate day : days) {
      Map<String, Integer> old = before.getOrDefault(day, Map.of());
      Map<String, Integer> fresh = now.getOrDefault(day, Map.of());
      Set<String> crops = new LinkedHashSet<>(old.keySet());
      crops.addAll(fresh.keySet());
      for (String crop : crops) {
        int was = old.getOrDefault(crop, 0);
        int is = fresh.getOrDefault(crop, 0);
        if (was != is) {
          told.add(
              "%s: sow %s of %s instead of %s."
                  .formatted(
                      Words.day(day),
                      is == 0 ? "none" : Words.count(is, "cell"),
                      Words.spoken(crop),
                      was == 0 ? "none" : was));
        }
      }
    }
    return told;
  }

  private boolean near(LocalDate day) {
    return !day.isBefore(plan.from()) && day.isBefore(plan.from().plusDays(TWO_WEEKS));
  }

  private List<String> reasons() {
    List<String> why = new ArrayList<>(plants());
    standing.learned().growth().forEach((crop, factor) -> growth(crop, factor, why));
    for (BowlWeek week : plan.weeks()) {
      Double before = last.plannedGrams().get(week.bowlDay());
      double stands = week.bowlDay().isBefore(plan.from().plusWeeks(4)) ? week.plannedGrams() : -1;
      if (before != null
          && stands >= 0
          && Math.abs(stands - before) > NOTABLE * Math.max(1, week.demandGrams())) {
        why.add(
            "The bowl of %s comes to %s instead of %s with what stands now."
                .formatted(Words.day(week.bowlDay()), Words.grams(stands), Words.grams(before)));
      }
    }
    return why;
  }

  /** Batches of which more or fewer plants stand than the last plan counted on. */
  private List<String> plants() {
    Map<String, Integer> meant =
        last.sowings().stream()
            .filter(g -> g.end().isAfter(plan.from()))
            .collect(
                Collectors.groupingBy(
                    LastPlan.Group::batch, Collectors.summingInt(LastPlan.Group::count)));
    List<String> why = new ArrayList<>();
    standing
        .batches()
        .forEach(
            batch -> {
              Integer was = meant.get(batch.batch());
              int is = (int) Math.round(batch.plants());
              if (was != null && is < was) {
                why.add(
                    "Of batch %s %s instead of %d."
                        .formatted(
                            batch.batch(), is == 1 ? "1 plant stands" : is + " plants stand", was));
              }
            });
    return why;
  }

  private void growth(String crop, LearnedFactor factor, List<String> why) {
    double before = last.growthFactors().getOrDefault(crop, factor.priorMedian());
    if (Math.abs(factor.median() - before) > NOTABLE_FACTOR * before) {
      why.add(
          "%s grows %s than the last plan thought: growth factor %.2f instead of %.2f, from %s."
              .formatted(
                  Words.spoken(crop).substring(0, 1).toUpperCase(Locale.ROOT)
                      + Words.spoken(crop).substring(1),
                  factor.median() < before ? "slower" : "faster",
                  factor.median(),
                  before,
                  Words.count(factor.readings(), "reading")));
    }
  }
}
