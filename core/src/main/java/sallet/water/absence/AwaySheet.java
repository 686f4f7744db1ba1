package sallet.water.absence;

import java.time.LocalDate;
import java.util.List;
import sallet.water.caution.WaterCaution;
import sallet.water.home.Learned;

/**
 * Whether the bench may be left alone, and what to do before.
 *
 * @param from first day away
 * @param to last day away
 * @param verdict the verdict
 * @param departure the reservoir on the morning of leaving when nothing is done
 * @param asItStands what becomes of it when nothing is done
 * @param prepared what becomes of it when the chosen steps are done
 * @param chosen the steps with the least trouble that make it safe; empty when none are needed
 * @param startL level to leave with, L
 * @param startMsCm conductivity to leave with, mS/cm
 * @param visits days on which somebody pours in water
 * @param steps everything that would help, each alone, most water saved or brought first
 * @param breaks what would break the verdict
 * @param note for the person who looks in
 * @param learned what readings taught
 * @param cautions safety texts that belong to it
 */
public record AwaySheet(
    LocalDate from,
    LocalDate to,
    Verdict verdict,
    Departure departure,
    Outlook asItStands,
    Outlook prepared,
    List<Step> chosen,
    double startL,
    double startMsCm,
    List<Visit> visits,
    List<Step> steps,
    List<String> breaks,
    List<String> note,
    Learned learned,
    List<WaterCaution> cautions) {

  /** What is said first. */
  public enum Verdict {
    /** Safe as it stands. */
    SAFE,
    /** Safe once the chosen steps are done. */
    SAFE_WHEN_PREPARED,
    /** Not safe whatever is done. */
    NOT_SAFE
  }

  /**
   * A visit.
   *
   * @param day morning of the day
   * @param litres water to pour in, as a rule, L
   */
  public record Visit(LocalDate day, double litres) {}

  public AwaySheet {
    chosen = List.copyOf(chosen);
    visits = List.copyOf(visits);
    steps = List.copyOf(steps);
    breaks = List.copyOf(breaks);
    note = List.copyOf(note);
    cautions = List.copyOf(cautions);
  }

  /** Days away. */
  public int days() {
    return (int) (to.toEpochDay() - from.toEpochDay()) + 1;
  }
}
