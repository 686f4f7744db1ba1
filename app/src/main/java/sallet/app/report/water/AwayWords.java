package sallet.app.report.water;

import java.util.ArrayList;
import java.util.List;
import sallet.app.report.Words;
import sallet.water.absence.AwaySheet;
import sallet.water.absence.Departure;
import sallet.water.absence.Outlook;
import sallet.water.absence.Step;

/** Sentences about days away that text and page share. */
final class AwayWords {
  /** To be filled in on paper. */
  static final String BLANKS = "Telephone: ____________________  Back on: ____________________";

  private AwayWords() {}

  static String span(AwaySheet sheet) {
    return WaterWords.of(
        "%s to %s, %s",
        Words.dayAndYear(sheet.from()),
        Words.dayAndYear(sheet.to()),
        WaterWords.days(sheet.days()));
  }

  /** The verdict in one sentence. */
  static String verdict(AwaySheet sheet) {
    Outlook now = sheet.asItStands();
    return switch (sheet.verdict()) {
      case SAFE ->
          WaterWords.of(
              "Safe as it stands: the water lasts %s with a chance of %s, and every pot outlives a missed flood.",
              sheet.days() == 1 ? "the day" : "all " + WaterWords.days(sheet.days()),
              chance(now.lasts()));
      case SAFE_WHEN_PREPARED ->
          WaterWords.of(
              "Not safe as it stands (%s), but safe once you have done the %s below.",
              why(sheet, now), sheet.chosen().size() == 1 ? "one thing" : "things");
      case NOT_SAFE ->
          WaterWords.of(
              "Not safe (%s), and no set of steps makes it so: stay, shorten it or clear the bench.",
              why(sheet, sheet.prepared()));
    };
  }

  private static String why(AwaySheet sheet, Outlook outlook) {
    List<String> reasons = new ArrayList<>();
    if (!outlook.waterSafe()) {
      reasons.add(
          WaterWords.of(
              "the water lasts %s with a chance of %s%s",
              WaterWords.days(sheet.days()),
              outlook.lasts() < 0.01 ? "" : "only ",
              chance(outlook.lasts())));
    }
    if (!outlook.atRisk().isEmpty()) {
      reasons.add(
          WaterWords.of(
              "%s when one flood is missed",
              outlook.atRisk().size() == 1
                  ? "pot " + outlook.atRisk().get(0) + " wilts"
                  : outlook.atRisk().size() + " pots wilt"));
    }
    if (reasons.isEmpty()) {
      reasons.add(
          Double.isNaN(outlook.returnHighMsCm())
              ? "so little solution may be left that its strength cannot be told"
              : WaterWords.of("the solution may rise to %.1f mS/cm", outlook.returnHighMsCm()));
    }
    return String.join(", ", reasons);
  }

  /** A chance as whole percent it is not below, never 100. */
  static String chance(double probability) {
    return probability > 0.99
        ? "more than 99 %"
        : probability < 0.01
            ? "less than 1 %"
            : WaterWords.of("%.0f %%", Math.floor(100 * probability + 1e-9));
  }

  /** What to leave with. */
  static String leaveWith(AwaySheet sheet) {
    double besideL = sheet.prepared().tank().startL() - sheet.startL();
    return WaterWords.of(
        "Leave with %.0f L%s of %.1f mS/cm, and the timer as below.",
        sheet.startL(),
        besideL > 0.5 ? WaterWords.of(" and in the second container %.0f L", besideL) : "",
        sheet.startMsCm());
  }

  /** Over the steps: what they are for. */
  static String helps(AwaySheet sheet) {
    return sheet.verdict() == AwaySheet.Verdict.SAFE
        ? "What would save more, though nothing is needed"
        : "What helps, most water first";
  }

  /** The reservoir until the morning of leaving. */
  static String departure(AwaySheet sheet) {
    Departure d = sheet.departure();
    if (d.usedL().isEmpty()) {
      return WaterWords.of("You leave today, with %.0f L of %.1f mS/cm.", d.levelL(), d.msCm());
    }
    String filled =
        d.toppedUp().isEmpty()
            ? ""
            : WaterWords.of(
                " if it is topped up to its strength on each bowl day until then (%s; earlier where the water sheet says so)",
                d.toppedUp().size() == 1
                    ? Words.day(d.toppedUp().get(0))
                    : Words.day(d.toppedUp().get(0))
                        + " to "
                        + Words.day(d.toppedUp().get(d.toppedUp().size() - 1)));
    return WaterWords.of(
        "On the morning you leave the reservoir holds about %.0f L of %.1f mS/cm%s.",
        d.levelL(), d.msCm(), filled);
  }

  /** The numbers when nothing is done. */
  static String asItStands(AwaySheet sheet) {
    return numbers(sheet.asItStands(), false);
  }

  /** The numbers after the steps. */
  static String prepared(AwaySheet sheet) {
    return numbers(sheet.prepared(), !sheet.visits().isEmpty());
  }

  /** Visitors fill it to the brim, so that what there is for it grows with what is used. */
  private static String numbers(Outlook o, boolean visited) {
    String lasts = chance(o.lasts());
    return WaterWords.of(
        "The bench uses about %s L (%s L are enough 95 times in 100)%s; %s; %s.",
        litres(o.demand().medianL()),
        litres(o.demand().litresFor(Outlook.SAFE)),
        visited
            ? WaterWords.of(
                ", and from one filling to the next the water lasts with a chance of %s", lasts)
            : WaterWords.of(
                ", and there are %s L for it: enough with a chance of %s",
                litres(o.usableL()), lasts),
        salt(o),
        o.atRisk().isEmpty()
            ? "every pot outlives a missed flood"
            : "pots at risk when one flood is missed: " + String.join(", ", o.atRisk()));
  }

  private static String litres(double value) {
    return WaterWords.of(value < 9.95 ? "%.1f" : "%.0f", value);
  }

  private static String salt(Outlook o) {
    if (Double.isNaN(o.returnMsCm())) {
      return "the reservoir runs dry";
    }
    return Double.isNaN(o.returnHighMsCm())
        ? WaterWords.of("you find the solution at %.2f mS/cm, or the reservoir dry", o.returnMsCm())
        : WaterWords.of(
            "you find the solution at %.2f mS/cm (%.2f if much water is used)",
            o.returnMsCm(), o.returnHighMsCm());
  }

  /** What a step does alone. */
  static String effect(Step step) {
    return WaterWords.of(
        "%s; alone: lasts with a chance of %s", gain(step), chance(step.lastsAlone()));
  }

  /** Water that a step saves or brings. */
  static String gain(Step step) {
    String change = WaterWords.of("%.0f", Math.abs(100 * step.useChange()));
    return step.useChange() == 0
        ? WaterWords.of("%.1f L more", step.gainL())
        : WaterWords.of(
            "%.1f L %s, %s %% of all",
            Math.abs(step.gainL()), step.gainL() < 0 ? "more used" : "saved", change);
  }
}
