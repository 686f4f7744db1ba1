package sallet.app.use;

import java.time.LocalDate;
import java.util.Optional;
import sallet.app.report.light.LightReport;
import sallet.household.Household;
import sallet.light.LightExplanation;
import sallet.light.LightTarget;
import sallet.light.LightYear;
import sallet.light.RoomLight;

/** How much light does each pot get, when, and what should the lamp do? */
public final class ShowLight {
  private ShowLight() {}

  /** One pot and hour to explain: its place in the household's list and the hour it begins. */
  public record Question(int pot, int hour) {}

  /**
   * The light of a household.
   *
   * @throws IllegalArgumentException when a lamp hangs too low
   */
  public static LightReport of(
      Household household, LocalDate day, LightTarget target, Optional<Question> question) {
    return new LightReport(
        LightYear.of(household, day, target),
        day,
        RoomLight.atPots(household, day, 1),
        question.map(q -> LightExplanation.of(household, q.pot, day, q.hour)));
  }
}
