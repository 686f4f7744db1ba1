package sallet.app.report;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sallet.crop.HarvestRule;
import sallet.household.Pot;
import sallet.plan.BowlWeek;
import sallet.plan.Sowing;
import sallet.plan.SowingPlan.Objective;

/** The tables of the page; each drawing has one that says the same. */
final class PageTables {
  private PageTables() {}

  static Markup bowls(PlanReport report) {
    Markup out = start("The bowls as a table", "Day", "Wanted g", "Planned g", "Short g", "Kinds");
    for (BowlWeek week : report.plan().weeks()) {
      out.open("tr");
      rowHead(out, Words.day(week.bowlDay()));
      number(out, week.demandGrams());
      number(out, week.plannedGrams());
      if (week.reachable()) {
        number(out, week.shortfallGrams());
      } else {
        out.element("td", "too early");
      }
      String kinds =
          week.kinds().stream()
              .map(k -> k.crop() + " " + Words.grams(k.grams()))
              .collect(Collectors.joining("; "));
      out.element("td", kinds).closeLine();
    }
    return end(out);
  }

  static Markup batches(PlanReport report) {
    Markup out =
        start(
            "The batches as a table",
            "Batch",
            "Crop",
            "Sow",
            "Seeds",
            "To nursery",
            "To pots",
            "Pots",
            "First pick",
            "End",
            "Grams");
    for (Timeline.Lane lane : Timeline.lanes(report)) {
      Sowing sowing = lane.sowing();
      Sowing.Course course = lane.course();
      out.open("tr");
      rowHead(out, sowing.batch());
      out.element("td", sowing.crop());
      out.element("td", Words.day(sowing.date()));
      number(out, Integer.toString(sowing.seeds()));
      out.element("td", Words.day(course.toNursery()));
      out.element("td", Words.day(course.toBench()));
      out.element("td", String.join(", ", course.pots()));
      out.element("td", Timeline.firstPick(lane).map(Words::day).orElse("none"));
      out.element("td", Words.day(course.end()) + (course.lifted() ? ", lift" : ", clear"));
      number(out, Timeline.grams(lane));
      out.closeLine();
    }
    return end(out);
  }

  static Markup bench(PlanReport report) {
    List<LocalDate> days = BenchMap.days(report);
    String[] heads =
        Stream.concat(Stream.of("Pot"), days.stream().map(Words::day)).toArray(String[]::new);
    Markup out = start("The bench as a table", heads);
    for (Pot pot : report.household().bench().pots()) {
      out.open("tr");
      rowHead(out, pot.name());
      for (LocalDate day : days) {
        String crop = BenchMap.standing(report, pot.name(), day).map(Sowing::crop).orElse("free");
        OptionalDouble dli = report.light().dliMol(pot.name(), day);
        String light =
            dli.isPresent() ? ", " + Words.oneDecimal(dli.getAsDouble()) + " mol/m²/d" : "";
        out.element("td", crop + light);
      }
      out.closeLine();
    }
    return end(out);
  }

  static Markup tasks(PlanReport report) {
    Markup out =
        start(
            Words.count(report.tasks().size(), "task") + " in all",
            "Day",
            "Task",
            "Batch",
            "Grams",
            "Minutes");
    for (Task task : report.tasks()) {
      out.open("tr");
      rowHead(out, Words.day(task.date()));
      out.element("td", task.text());
      out.element("td", task.batch());
      number(out, task.grams() > 0 ? whole(task.grams()) : "");
      number(out, Integer.toString(task.minutes()));
      out.closeLine();
    }
    return end(out);
  }

  static Markup objective(PlanReport report) {
    Objective o = report.plan().objective();
    Markup out = start("What the plan costs, in grams", "Term", "Amount");
    term(out, "Missing against demand with margin", Words.grams(o.shortGrams()));
    term(out, "Grown and not eaten", Words.grams(o.wasteGrams()));
    term(out, "One kind above its share of the bowl", Words.grams(o.oneKindGrams()));
    term(out, "Eaten a week after the pick", Words.grams(o.carriedGrams()));
    term(out, "Seeds counted", Words.oneDecimal(o.seeds()));
    term(out, "All terms together, as grams of missing salad", Words.grams(o.value() / 10));
    boolean bounded = Double.isFinite(o.gridBound());
    term(
        out,
        "Could at most still be gained on the decision grid",
        bounded ? Words.grams(Math.max(0, o.gapGrams())) : "not known");
    return end(out);
  }

  static Markup cropRules(PlanReport report) {
    Markup out =
        start(
            "The crops' rules as a table",
            "Crop",
            "Usable seeds",
            "Slows from day",
            "Until day",
            "Fridge days",
            "Edible share");
    for (Judgement.CropRule crop : Judgement.ofCrops(report)) {
      HarvestRule rule = crop.rule();
      out.open("tr");
      rowHead(out, crop.crop());
      number(out, Words.percent(rule.usableShare()));
      number(out, Integer.toString(rule.ageingFromDays()));
      number(out, Integer.toString(rule.overAgeDays()));
      number(out, Integer.toString(rule.fridgeCarryDays()));
      number(out, Words.percent(rule.edibleShare()));
      out.closeLine();
    }
    return end(out);
  }

  private static void term(Markup out, String name, String amount) {
    out.open("tr");
    rowHead(out, name);
    number(out, amount);
    out.closeLine();
  }

  private static Markup start(String summary, String... heads) {
    Markup out = new Markup();
    out.open("details").element("summary", summary);
    out.open("div", "class", "scroll", "tabindex", 0, "role", "region", "aria-label", summary);
    out.open("table").open("thead").open("tr");
    for (String head : heads) {
      out.element("th", head, "scope", "col");
    }
    return out.close().closeLine().open("tbody");
  }

  private static Markup end(Markup out) {
    return out.close().close().close().closeLine();
  }

  private static void rowHead(Markup out, String text) {
    out.element("th", text, "scope", "row");
  }

  private static void number(Markup out, double grams) {
    number(out, whole(grams));
  }

  private static void number(Markup out, String number) {
    out.element("td", number, "class", "number");
  }

  private static String whole(double grams) {
    return String.format(Locale.ROOT, "%d", Math.round(grams));
  }
}
