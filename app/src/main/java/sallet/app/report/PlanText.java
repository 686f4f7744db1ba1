package sallet.app.report;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.SortedMap;
import sallet.crop.Catalogue;
import sallet.crop.HarvestRule;
import sallet.household.Eaters;
import sallet.household.Household;
import sallet.plan.BowlWeek;
import sallet.plan.SowingPlan;

/**
 * The plan as a report for the terminal: at most 80 columns of UTF-8, no colours, no cursor moves.
 */
public final class PlanText {
  /** Columns of the report. */
  static final int WIDTH = 80;

  private final PlanReport report;
  private final StringBuilder out = new StringBuilder();

  private PlanText(PlanReport report) {
    this.report = report;
  }

  /** The report. */
  public static String of(PlanAnswer answer, Household household, Catalogue catalogue) {
    SowingPlan plan = answer.plan();
    PlanText text =
        new PlanText(PlanReport.of(answer, household, catalogue, BenchLight.ofGroups(plan)));
    text.head();
    text.picksNow();
    text.tasks();
    text.sentences("WHAT CHANGED SINCE THE LAST PLAN, AND WHY", answer.changes());
    text.standing();
    text.bowls();
    text.shortWeeks();
    text.sentences("WHAT LIMITS THE BOWL", Found.limits(text.report));
    text.bottlenecks();
    text.sentences("GOOD TO KNOW", plan.notes());
    text.judgement();
    text.cautions();
    text.solver();
    return Words.printable(text.out.toString());
  }

  private void head() {
    SowingPlan plan = report.plan();
    Eaters eaters = report.household().eaters();
    line(
        "SOWING PLAN  %s to %s"
            .formatted(Words.dayAndYear(plan.from()), Words.dayAndYear(report.lastDay())));
    paragraph(
        "%s, %s a week in %s. Task days: %s."
            .formatted(
                eaters.people() == 1 ? "1 person" : eaters.people() + " people",
                Words.grams(eaters.bowlGrams()),
                Words.count(eaters.kinds(), "kind"),
                Words.weekdays(eaters.taskDays())));
    paragraph(report.summary());
  }

  private void picksNow() {
    List<SowingPlan.PickNow> picks = report.plan().picksNow();
    if (!picks.isEmpty()) {
      title("THE NEXT BOWL, " + Words.day(picks.get(0).date()).toUpperCase(Locale.ROOT));
      picks.forEach(p -> wrapped("  - ", PlanWords.pickNow(p)));
    }
  }

  private void standing() {
    List<String> lines =
        report.answer().standing().map(s -> StandingWords.lines(s)).orElse(List.of());
    sentences("WHAT STANDS, WITH ITS FRESH GRAMS", lines);
  }

  private void bottlenecks() {
    sentences("WHAT IF", PlanWords.bottlenecks(report.answer().bottlenecks()));
  }

  private void tasks() {
    title("NEXT TWO WEEKS");
    SortedMap<LocalDate, List<Task>> days =
        Tasks.byDay(report.tasks(), report.plan().from(), PlanReport.TWO_WEEKS);
    if (days.isEmpty()) {
      paragraph(
          report.tasks().isEmpty()
              ? "Nothing to do."
              : "Nothing to do before %s.".formatted(Words.day(report.tasks().get(0).date())));
    }
    days.forEach(
        (day, tasks) -> {
          line("%s, about %d min".formatted(Words.day(day), Tasks.minutes(tasks)));
          tasks.forEach(task -> wrapped("  [ ] ", task.text()));
          report.fridge(day).ifPresent(text -> wrapped("  [ ] ", text));
        });
    later(days);
    List<String> seeds = report.seeds();
    if (!seeds.isEmpty()) {
      paragraph("Seeds for the whole plan: " + String.join(", ", seeds) + ".");
    }
  }

  private void later(SortedMap<LocalDate, List<Task>> told) {
    LocalDate until = report.plan().from().plusDays(PlanReport.TWO_WEEKS);
    List<LocalDate> later =
        report.tasks().stream()
            .map(Task::date)
            .filter(day -> !day.isBefore(until))
            .distinct()
            .toList();
    if (!told.isEmpty() && !later.isEmpty()) {
      paragraph(
          "Then %s of work, the next on %s."
              .formatted(Words.count(later.size(), "day"), Words.day(later.get(0))));
    }
  }

  private void bowls() {
    title("THE BOWLS");
    out.append(TextChart.of(report.plan().weeks()));
    if (report.plan().weeks().stream().anyMatch(week -> PlanReport.luck(week).isPresent())) {
      paragraph(PlanWords.LUCK);
    }
  }

  private void shortWeeks() {
    List<BowlWeek> weeks = report.shortWeeks();
    if (weeks.isEmpty()) {
      return;
    }
    title("SHORT BOWLS AND WHY");
    for (BowlWeek week : weeks) {
      wrapped(
          "  - ",
          "%s: %s short of %s; %s."
              .formatted(
                  Words.day(week.bowlDay()),
                  Words.grams(week.shortfallGrams()),
                  Words.grams(week.demandGrams()),
                  PlanReport.whyShort(week)));
    }
  }

  private void sentences(String title, List<String> sentences) {
    if (!sentences.isEmpty()) {
      title(title);
      sentences.forEach(s -> wrapped("  - ", s));
    }
  }

  private void judgement() {
    title("WHAT IS JUDGEMENT HERE");
    Judgement.of(report).forEach(text -> wrapped("  - ", text));
    wrapped("  - ", Judgement.CROP_RULES);
    line(
        "    %-28s %7s %6s %6s %7s %7s"
            .formatted("", "usable", "slows", "until", "fridge", "edible"));
    Judgement.ofCrops(report).forEach(this::cropRule);
  }

  private void cropRule(Judgement.CropRule crop) {
    HarvestRule rule = crop.rule();
    line(
        "    %-28s %7s %6d %6d %5d d %7s"
            .formatted(
                crop.crop(),
                Words.percent(rule.usableShare()),
                rule.ageingFromDays(),
                rule.overAgeDays(),
                rule.fridgeCarryDays(),
                Words.percent(rule.edibleShare())));
  }

  private void cautions() {
    title("CAUTION");
    Caution.of(report.household()).forEach(c -> wrapped("  ! ", c.subject() + ". " + c.text()));
  }

  private void solver() {
    title("HOW THE PLAN WAS FOUND");
    paragraph(Found.sentence(report));
  }

  private void title(String text) {
    out.append('\n').append(text).append('\n');
  }

  private void line(String text) {
    out.append(text).append('\n');
  }

  private void paragraph(String text) {
    wrapped("", text);
  }

  /**
   * Words in lines of at most {@link #WIDTH}; the first starts with the mark, the rest below it.
   */
  private void wrapped(String mark, String text) {
    String indent = " ".repeat(mark.length());
    StringBuilder line = new StringBuilder(mark);
    boolean fresh = true;
    for (String word : text.split(" ")) {
      if (!fresh && line.length() + 1 + word.length() > WIDTH) {
        line(line.toString());
        line = new StringBuilder(indent);
        fresh = true;
      }
      line.append(fresh ? "" : " ").append(word);
      fresh = false;
    }
    line(line.toString());
  }
}
