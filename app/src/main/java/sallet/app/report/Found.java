package sallet.app.report;

import java.util.List;
import sallet.plan.BowlWeek;
import sallet.plan.SowingPlan.Objective;

/** How good a plan is, in plain words and grams. */
final class Found {
  /** Grams a week below which one more place is not worth a word. Judgement. */
  private static final double WORTH_TELLING = 0.5;

  private Found() {}

  /** A short paragraph. */
  static String sentence(PlanReport report) {
    Objective o = report.plan().objective();
    return ("%s; found in %s s. %s are missing against the demand with its margin, %s are grown and not"
            + " eaten, %s are eaten a week after the pick. %s")
        .formatted(
            status(report.plan().solver().status()),
            Words.oneDecimal(report.plan().solver().wallSeconds()),
            Words.grams(o.shortGrams()),
            Words.grams(o.wasteGrams()),
            Words.grams(o.carriedGrams()),
            bound(report));
  }

  /** What one more place would bring: a sentence each, most first. */
  static List<String> limits(PlanReport report) {
    if (report.plan().marginals().isEmpty()) {
      return List.of("Not known: the search had no time to find out; give it more with --seconds.");
    }
    List<String> worth =
        report.plan().marginals().stream()
            .filter(m -> m.gramsPerWeek() >= WORTH_TELLING)
            .map(
                m ->
                    "One more %s would bring about %s g a week."
                        .formatted(m.place(), Words.oneDecimal(m.gramsPerWeek())))
            .toList();
    return worth.isEmpty()
        ? List.of(
            "Nothing much: one more pot, nursery place or cell would bring less than %s g a week."
                .formatted(Words.oneDecimal(WORTH_TELLING)))
        : worth;
  }

  static String status(String status) {
    return switch (status) {
      case "proven" -> "Proven on the decision grid";
      case "good" -> "Good, not proven to be the best";
      case "empty" -> "Empty: nothing could be planned";
      default -> Words.capital(status);
    };
  }

  /** What the bound on the decision grid says. */
  static String bound(PlanReport report) {
    Objective o = report.plan().objective();
    if (!Double.isFinite(o.gridBound())) {
      return "No bound was computed, so how much better a plan could be is not known.";
    }
    return ("On the decision grid (task days, pick shares, listed moves) no plan can gain more than"
            + " %s of bowl, %s of the demand.")
        .formatted(
            Words.grams(Math.max(0, o.gapGrams())),
            Words.oneDecimal(100 * Math.max(0, gapShare(report))) + " %");
  }

  /** Gap as a share of the true demand of all reachable weeks; NaN without bound or demand. */
  static double gapShare(PlanReport report) {
    double demand = report.reachable().stream().mapToDouble(BowlWeek::demandGrams).sum();
    return demand > 0 ? report.plan().objective().gapGrams() / demand : Double.NaN;
  }
}
