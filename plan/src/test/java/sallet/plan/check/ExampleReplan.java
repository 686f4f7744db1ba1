package sallet.plan.check;

import static sallet.plan.check.ExamplePlan.CRISPHEAD;
import static sallet.plan.check.ExamplePlan.FROM;
import static sallet.plan.check.ExamplePlan.LETTUCE;
import static sallet.plan.check.ExamplePlan.ROCKET;
import static sallet.plan.check.ExamplePlan.day;
import static sallet.plan.check.ExamplePlan.kind;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sallet.crop.PlantState;
import sallet.plan.BowlWeek;
import sallet.plan.BowlWeek.Kind;
import sallet.plan.Present;
import sallet.plan.Sowing;
import sallet.plan.Sowing.Course;
import sallet.plan.Sowing.Pick;
import sallet.plan.SowingPlan;
import sallet.plan.SowingPlan.Objective;

/**
 * A small plan made by hand for the household of {@link ExamplePlan} when plants stand already: two
 * large ones in pots, a clump in the nursery, two seeds in cells; something is in the fridge and
 * something was promised.
 *
 * <p>Grams of picks and of what is cleared are those that src/test/python/lives.py prints; bowls
 * and what they cost are reckoned by hand.
 */
final class ExampleReplan {
  private ExampleReplan() {}

  /** Sowing day of the oldest plants: the places drift from then on. */
  static final LocalDate FIRST = LocalDate.of(2026, 11, 30);

  static final String OLD = "old";
  static final String CLUMP = "clump";
  static final String YOUNG = "young";

  /** What stands on the first day. */
  static Present present() {
    return new Present(
        List.of(old(), clump(), young()),
        List.of(),
        Map.of(LETTUCE, 30.0),
        Map.of(),
        Map.of(),
        List.of(
            new Present.Promise(
                "", CRISPHEAD, day(1, 6), day(1, 27), "A3", day(3, 13), true, 2, Map.of())),
        false);
  }

  private static Present.Plants old() {
    return new Present.Plants(
        OLD,
        LETTUCE,
        2,
        FIRST,
        LocalDate.of(2026, 12, 4),
        Optional.of(LocalDate.of(2026, 12, 9)),
        Optional.of(LocalDate.of(2026, 12, 23)),
        List.of("A1", "A2"),
        0,
        0.9,
        new PlantState(6, 0.8, 0.5, 1500, 18),
        Optional.of(day(1, 2)));
  }

  private static Present.Plants clump() {
    return new Present.Plants(
        CLUMP,
        ROCKET,
        1,
        LocalDate.of(2026, 12, 16),
        LocalDate.of(2026, 12, 22),
        Optional.of(LocalDate.of(2026, 12, 23)),
        Optional.empty(),
        List.of(),
        0,
        0.8,
        new PlantState(0.12, 0.016, 0.01, 40, 8),
        Optional.empty());
  }

  private static Present.Plants young() {
    return new Present.Plants(
        YOUNG,
        LETTUCE,
        2,
        day(1, 2),
        day(1, 6),
        Optional.empty(),
        Optional.empty(),
        List.of(),
        3,
        0.85,
        new PlantState(1, 1, 1, 1, 1),
        Optional.empty());
  }

  /** The plan. */
  static SowingPlan plan() {
    return new SowingPlan(
        FROM,
        ExamplePlan.taskDays().subList(0, 8),
        1.15,
        List.of(
            week(day(1, 9), 58.714357964, kind(LETTUCE, 70)),
            week(day(1, 16), 224.309443944, kind(LETTUCE, 120), kind(ROCKET, 11)),
            week(day(1, 23), 14.692154775, kind(LETTUCE, 80), kind(ROCKET, 14)),
            week(day(1, 30), 12.574557011, kind(ROCKET, 12))),
        List.of(oldGoes(), clumpMoves(), youngMove()),
        List.of(sown()),
        List.of(),
        objective(),
        ExamplePlan.plan().solver(),
        ExamplePlan.plan().groups(),
        List.of(),
        List.of());
  }

  /**
   * Aims of 140 g at the next bowl and of 161 g at three more, with 70, 131, 94 and 12 g in them.
   * 301.288763313 g of lettuce are in hand or picked and 270 g eaten, 39.001750381 g of rocket
   * picked and 37 g eaten; 146.959802983 g are cleared. One bowl holds 120 g of lettuce, 161/1.5 g
   * being its share; 80 g are eaten a week late. One crisphead is sown, eight of ten seeds come to
   * something; two were promised.
   */
  private static Objective objective() {
    return new Objective(3578.583966687, Double.NaN, 316, 180.250316677, 38 / 3.0, 80, 1.25, 1);
  }

  /** One is picked and lifted, the other cleared at once. */
  private static Sowing oldGoes() {
    LocalDate toNursery = LocalDate.of(2026, 12, 9);
    LocalDate toBench = LocalDate.of(2026, 12, 23);
    return standing(
        OLD,
        FIRST,
        LETTUCE,
        LocalDate.of(2026, 12, 4),
        new Course(
            1,
            toNursery,
            toBench,
            0,
            List.of("A1"),
            List.of(new Pick(day(1, 9), 0.3, 58.714357964), new Pick(day(1, 16), 1, 212.574405349)),
            day(1, 16),
            true,
            0),
        new Course(1, toNursery, toBench, 0, List.of("A2"), List.of(), FROM, false, 146.959802983));
  }

  /** From the nursery to a pot, picked, still standing on the last day. */
  private static Sowing clumpMoves() {
    return standing(
        CLUMP,
        LocalDate.of(2026, 12, 16),
        ROCKET,
        LocalDate.of(2026, 12, 22),
        new Course(
            1,
            LocalDate.of(2026, 12, 23),
            day(1, 6),
            1,
            List.of("B1"),
            List.of(
                new Pick(day(1, 16), 0.4, 11.735038595),
                new Pick(day(1, 23), 0.4, 14.692154775),
                new Pick(day(1, 30), 0.3, 12.574557011)),
            day(1, 30),
            false,
            0));
  }

  /** One takes over the pot that was cleared, the other is given up before it comes up. */
  private static Sowing youngMove() {
    return standing(
        YOUNG,
        day(1, 2),
        LETTUCE,
        day(1, 6),
        new Course(1, day(1, 9), day(1, 20), 0, List.of("A2"), List.of(), day(1, 30), false, 0),
        new Course(1, FROM, FROM, 0, List.of(), List.of(), FROM, false, 0));
  }

  private static Sowing sown() {
    return new Sowing(
        "B01",
        day(1, 6),
        CRISPHEAD,
        2,
        2,
        day(1, 10),
        List.of(
            new Course(
                1, day(1, 13), day(1, 27), 0, List.of("A3"), List.of(), day(1, 30), false, 0)));
  }

  private static Sowing standing(
      String batch, LocalDate sown, String crop, LocalDate emergence, Course... courses) {
    return new Sowing(batch, sown, crop, 0, 0, emergence, List.of(courses));
  }

  private static BowlWeek week(LocalDate bowlDay, double harvestGrams, Kind... kinds) {
    double planned = List.of(kinds).stream().mapToDouble(Kind::grams).sum();
    return new BowlWeek(bowlDay, 140, true, harvestGrams, planned, List.of(kinds), List.of());
  }
}
