package sallet.app.report.rehearse;

import java.util.List;
import java.util.Locale;
import sallet.app.report.Words;
import sallet.plan.rehearse.Hidden;
import sallet.plan.rehearse.Result;

/** Sentences about a rehearsal. */
final class RehearsalWords {
  private RehearsalWords() {}

  /** What was played. */
  static String played(RehearsalReport report) {
    return ("Each habit was played through the same seasons (seed %d): %d weeks from %s with an"
            + " empty bench, of which the first %d are not counted.")
        .formatted(
            report.seed(), report.weeks(), Words.dayAndYear(report.from()), report.startUp());
  }

  /** What a habit does. */
  static String habit(Result result) {
    return "%s (%s): %s."
        .formatted(
            result.habit().word(),
            Words.count(result.scores().size(), "season"),
            result.habit().does());
  }

  static final String TUNED =
      "The number of plants of the rhythms is the best of several, found in other seasons than"
          + " these.";

  static final String INTERVAL =
      "The second line is where the true mean lies in nine of ten rehearsals.";

  /** What differs between the seasons and the planner's belief. */
  static List<String> hidden(Hidden hidden) {
    return List.of(
        String.format(
            Locale.ROOT,
            "Every crop of every season grows with a factor of its own (median %.2f, varying by"
                + " %.0f %%), every plant too (%.0f %%); seed lots differ.",
            hidden.growthMedian(),
            100 * hidden.growthCv(),
            100 * hidden.plantCv()),
        String.format(
            Locale.ROOT,
            "Daylight differs from the mean day by %.0f %%, dull days come in spells, and every pot"
                + " has its own light; %.0f %% of the plants die early.",
            100 * hidden.sunSpread(),
            100 * hidden.deathShare()),
        hidden.regrowth() == 1
            ? "Picked plants regrow as the planner thinks."
            : String.format(
                Locale.ROOT,
                "Each pick leaves a plant %.0f %% of its growth, which the planner does not know.",
                100 * hidden.regrowth()),
        "All of this is judgement (docs/models/rehearsal.md), and growth follows the planner's own"
            + " law: take the differences between habits from here, not the grams of your bench.");
  }
}
