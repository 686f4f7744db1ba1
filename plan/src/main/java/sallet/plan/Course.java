package sallet.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;
import sallet.crop.Crop;
import sallet.crop.HarvestRule;
import sallet.crop.LastDay;
import sallet.crop.LifeDays;
import sallet.crop.PlantDay;
import sallet.crop.PlantModel;
import sallet.crop.PlantParameters;
import sallet.crop.PlantState;
import sallet.crop.Stay;

/**
 * Where and when one plant (or the clump of one pot) grows: crop, sowing, moves and group of pots.
 * What is picked and when it ends is left open.
 */
final class Course {
  final int cropIndex;
  final Crop crop;
  final int group;
  final int sowSlot;
  final int nurserySlot;
  final int benchSlot;
  final LocalDate emergence;
  final PlantParameters parameters;
  final HarvestRule rule;

  /** Days of growth, the first on the day of emergence, the last on the last day allowed. */
  final PlantDay[] days;

  /** Bowls at which something may be taken, by index in the calendar, in order. */
  final int[] bowls;

  /** For each of these bowls the index in {@link #days} of its day. */
  final int[] bowlDay;

  /** For each of these bowls the slot that starts on its day. */
  final int[] bowlSlot;

  /** Whether the plant could go on standing after the last bowl of the plan. */
  private final boolean outlivesPlan;

  /** Position of the first of these bowls on which leaves may be picked. */
  final int firstPick;

  private Course(
      int cropIndex,
      Crop crop,
      int group,
      int sowSlot,
      int nurserySlot,
      int benchSlot,
      LocalDate emergence,
      PlantDay[] days,
      int[] bowls,
      boolean outlivesPlan,
      TaskCalendar calendar) {
    this.cropIndex = cropIndex;
    this.crop = crop;
    this.group = group;
    this.sowSlot = sowSlot;
    this.nurserySlot = nurserySlot;
    this.benchSlot = benchSlot;
    this.emergence = emergence;
    this.parameters = crop.growth().orElseThrow();
    this.rule = crop.harvest().orElseThrow();
    this.days = days;
    this.bowls = bowls;
    this.outlivesPlan = outlivesPlan;
    this.bowlDay = new int[bowls.length];
    this.bowlSlot = new int[bowls.length];
    for (int i = 0; i < bowls.length; i++) {
      LocalDate day = calendar.bowl(bowls[i]);
      bowlDay[i] = (int) (day.toEpochDay() - emergence.toEpochDay());
      bowlSlot[i] = calendar.slotOfBowl(bowls[i]);
    }
    int first = 0;
    while (first < bowls.length && bowlDay[first] < HarvestRule.FIRST_PICK_DAYS) {
      first++;
    }
    firstPick = first;
  }

  /** The course; it has no bowls when nothing could ever be taken from it. */
  static Course of(
      int cropIndex,
      Crop crop,
      int group,
      int sowSlot,
      int nurserySlot,
      int benchSlot,
      LocalDate emergence,
      Surroundings at,
      TaskCalendar calendar) {
    Surroundings.Group pots = at.groups().get(group);
    List<Stay> stays =
        List.of(
            new Stay(calendar.slot(sowSlot), at.nursery(), at.cellCm2()),
            new Stay(calendar.slot(nurserySlot), at.nursery(), at.placeCm2()),
            new Stay(calendar.slot(benchSlot), pots.days(), pots.siteCm2()));
    HarvestRule rule = crop.harvest().orElseThrow();
    LocalDate horizon = calendar.bowl(calendar.bowls() - 1);
    LocalDate own = LastDay.onBench(rule, crop.bolting(), emergence, stays);
    LocalDate last = own.isAfter(horizon) ? horizon : own;
    int[] bowls = bowlsOf(calendar, calendar.slot(benchSlot), last);
    LocalDate until =
        bowls.length == 0 ? emergence : calendar.bowl(bowls[bowls.length - 1]).plusDays(1);
    PlantDay[] days =
        LifeDays.of(crop.growth().orElseThrow(), rule, at.vigour(), emergence, stays, until);
    return new Course(
        cropIndex,
        crop,
        group,
        sowSlot,
        nurserySlot,
        benchSlot,
        emergence,
        days,
        bowls,
        own.isAfter(horizon) && endsWith(bowls, calendar.bowls() - 1),
        calendar);
  }

  private static int[] bowlsOf(TaskCalendar calendar, LocalDate bench, LocalDate last) {
    return IntStream.range(0, calendar.bowls())
        .filter(
            w ->
                calendar.slotOfBowl(w) >= 0
                    && calendar.bowl(w).isAfter(bench)
                    && !calendar.bowl(w).isAfter(last))
        .toArray();
  }

  /**
   * Share of what stands after a bowl that is lost if the plant is not eaten then: nothing at the
   * last bowl of the plan when the plant can go on standing.
   */
  double lostShare(int bowl) {
    return outlivesPlan && bowl == bowls.length - 1 ? 0 : 1;
  }

  /** Whether leaves may be picked at a bowl from a pot whose plants have this fresh mass each. */
  boolean mayPick(int bowl, double freshG) {
    return rule.leafPick()
        && bowl >= firstPick
        && rule.plantsPerPot() * freshG >= HarvestRule.PICK_FROM_G;
  }

  private static boolean endsWith(int[] bowls, int bowl) {
    return bowls.length > 0 && bowls[bowls.length - 1] == bowl;
  }

  /** Edible grams a pot gives for each gram of fresh mass of one of its plants. */
  double ediblePerFresh() {
    return rule.edibleShare() * rule.plantsPerPot();
  }

  /** The state at the end of a day of growth, from the state at the end of an earlier one. */
  PlantState grow(PlantState state, int fromDay, int toDay) {
    PlantState s = state;
    for (int d = fromDay; d < toDay; d++) {
      s = PlantModel.step(s, parameters, days[d]);
    }
    return s;
  }

  /** The state at the end of the day of the first bowl. */
  PlantState atFirstBowl() {
    return grow(PlantState.atEmergence(parameters), 0, bowlDay[0] + 1);
  }

  /** Fresh mass of one plant at the end of the day of a bowl, g. */
  double freshG(PlantState state, int bowl) {
    return state.freshG(days[bowlDay[bowl]].dryMatterShare());
  }
}
