package sallet.plan;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
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
  /** Days a standing plant past its time may still wait for a bowl. Judgement. */
  private static final int GRACE_DAYS = 6;

  /** What {@link #standing} says of a new sowing. */
  static final int NEW = -1;

  /** The group of standing plants it goes on from, or {@link #NEW}. */
  final int standing;

  final int cropIndex;
  final Crop crop;
  final int group;

  /** Slot of sowing; of a plant that stands already the first slot of the plan. */
  final int sowSlot;

  final int nurserySlot;
  final int benchSlot;
  final LocalDate emergence;

  /** Cells one plant is reckoned with until it leaves its cell. */
  final double cellsPerPlant;

  final PlantParameters parameters;
  final HarvestRule rule;

  /** Days of growth, the last on the last day allowed. */
  final PlantDay[] days;

  /** Bowls at which something may be taken, by index in the calendar, in order. */
  final int[] bowls;

  /** For each of these bowls the index in {@link #days} of its day. */
  final int[] bowlDay;

  /** For each of these bowls the slot that starts on its day. */
  final int[] bowlSlot;

  /** Position of the first of these bowls on which leaves may be picked. */
  final int firstPick;

  /** Last day the plant may stand: it is over age then or near to running to seed. */
  final LocalDate lastDay;

  /** Whether the plant could go on standing after the last bowl of the plan. */
  private final boolean outlivesPlan;

  private final PlantState start;

  /** Days of {@link #days} that the starting state has behind it. */
  private final int grownDays;

  /**
   * Which plant goes where and when.
   *
   * @param standing group of standing plants, or -1
   * @param crop index of the crop
   * @param group group of pots
   * @param sowSlot slot of sowing
   * @param nurserySlot slot of the move to the nursery
   * @param benchSlot slot of the move to the pot
   * @param emergence day of emergence
   */
  record Steps(
      int standing,
      int crop,
      int group,
      int sowSlot,
      int nurserySlot,
      int benchSlot,
      LocalDate emergence) {}

  private Course(Steps steps, Grown grown, double cellsPerPlant, Instance instance) {
    this.standing = steps.standing;
    this.cropIndex = steps.crop;
    this.crop = instance.crops().get(steps.crop);
    this.group = steps.group;
    this.sowSlot = steps.sowSlot;
    this.nurserySlot = steps.nurserySlot;
    this.benchSlot = steps.benchSlot;
    this.emergence = steps.emergence;
    this.cellsPerPlant = cellsPerPlant;
    this.parameters = crop.growth().orElseThrow();
    this.rule = crop.harvest().orElseThrow();
    this.start = grown.start;
    this.lastDay = grown.lastDay;
    this.grownDays = steps.standing != NEW && instance.standing().get(steps.standing).up() ? 1 : 0;
    this.days = grown.days;
    this.bowls = grown.bowls;
    this.outlivesPlan = grown.outlivesPlan;
    this.bowlDay = new int[bowls.length];
    this.bowlSlot = new int[bowls.length];
    TaskCalendar calendar = instance.calendar();
    int first = 0;
    for (int i = 0; i < bowls.length; i++) {
      LocalDate day = calendar.bowl(bowls[i]);
      bowlDay[i] = (int) ChronoUnit.DAYS.between(grown.firstDay, day);
      bowlSlot[i] = calendar.slotOfBowl(bowls[i]);
      if (ChronoUnit.DAYS.between(emergence, day) < HarvestRule.FIRST_PICK_DAYS) {
        first = i + 1;
      }
    }
    firstPick = first;
  }

  /** The days of a course and the state it starts them with. */
  private static final class Grown {
    final LocalDate firstDay;
    final PlantState start;
    final PlantDay[] days;
    final int[] bowls;
    final boolean outlivesPlan;
    final LocalDate lastDay;

    private Grown(
        LocalDate firstDay,
        PlantState start,
        PlantDay[] days,
        int[] bowls,
        boolean outlivesPlan,
        LocalDate lastDay) {
      this.firstDay = firstDay;
      this.start = start;
      this.days = days;
      this.bowls = bowls;
      this.outlivesPlan = outlivesPlan;
      this.lastDay = lastDay;
    }

    static Grown of(
        Steps steps,
        List<Stay> stays,
        PlantState start,
        LocalDate firstDay,
        int[] bowls,
        LocalDate last,
        double vigour,
        Instance instance) {
      TaskCalendar calendar = instance.calendar();
      int end = calendar.bowls() - 1;
      boolean outlives =
          last.isAfter(calendar.bowl(end)) && bowls.length > 0 && bowls[bowls.length - 1] == end;
      LocalDate until =
          bowls.length == 0 ? firstDay : calendar.bowl(bowls[bowls.length - 1]).plusDays(1);
      Crop crop = instance.crops().get(steps.crop);
      PlantDay[] life =
          LifeDays.of(
              crop.growth().orElseThrow(),
              crop.harvest().orElseThrow(),
              vigour,
              steps.emergence,
              stays,
              until);
      int lived = Math.min(life.length, (int) ChronoUnit.DAYS.between(steps.emergence, firstDay));
      return new Grown(
          firstDay, start, Arrays.copyOfRange(life, lived, life.length), bowls, outlives, last);
    }
  }

  /** The course of a new sowing; it has no bowls when nothing could ever be taken from it. */
  static Course sown(Steps steps, double cellsPerPlant, Instance instance) {
    TaskCalendar calendar = instance.calendar();
    LocalDate bench = calendar.slot(steps.benchSlot);
    List<Stay> stays =
        instance
            .at()
            .stays(
                calendar.slot(steps.sowSlot), calendar.slot(steps.nurserySlot), bench, steps.group);
    Crop crop = instance.crops().get(steps.crop);
    LocalDate own =
        LastDay.onBench(crop.harvest().orElseThrow(), crop.bolting(), steps.emergence, stays);
    Grown grown =
        Grown.of(
            steps,
            stays,
            PlantState.atEmergence(crop.growth().orElseThrow()),
            steps.emergence,
            bowlsOf(calendar, bench.plusDays(1), own),
            own,
            instance.vigour().get(steps.crop),
            instance);
    return new Course(steps, grown, cellsPerPlant, instance);
  }

  /**
   * A course of plants that stand already; it has no bowls when nothing more can be taken from
   * them. Plants past their days may still be lifted within a week.
   */
  static Course standing(Steps steps, Instance instance) {
    TaskCalendar calendar = instance.calendar();
    StandingPlants plants = instance.standing().get(steps.standing);
    List<Stay> stays =
        instance
            .at()
            .stays(
                plants.sown(),
                plants.toNursery().or(plants::toBench).orElse(calendar.slot(steps.nurserySlot)),
                plants.toBench().orElse(calendar.slot(steps.benchSlot)),
                steps.group);
    Crop crop = instance.crops().get(steps.crop);
    LocalDate own =
        LastDay.onBench(crop.harvest().orElseThrow(), crop.bolting(), steps.emergence, stays);
    LocalDate last = own;
    LocalDate firstBowlDay = calendar.slot(steps.benchSlot).plusDays(1);
    if (plants.toBench().isPresent()) {
      firstBowlDay = plants.firstPick();
      LocalDate grace = calendar.from().plusDays(GRACE_DAYS);
      last = own.isBefore(grace) ? grace : own;
    }
    Grown grown =
        Grown.of(
            steps,
            stays,
            plants.state(),
            plants.firstDay(),
            bowlsOf(calendar, firstBowlDay, last),
            last,
            plants.vigour(),
            instance);
    return new Course(steps, grown, 0, instance);
  }

  private static int[] bowlsOf(TaskCalendar calendar, LocalDate first, LocalDate last) {
    return IntStream.range(0, calendar.bowls())
        .filter(
            w ->
                calendar.slotOfBowl(w) >= 0
                    && !calendar.bowl(w).isBefore(first)
                    && !calendar.bowl(w).isAfter(last))
        .toArray();
  }

  /** Points for the seeds of one pot's plants; none for plants that stand already. */
  double seedPoints() {
    return standing < 0 ? Weights.seeds(rule) : 0;
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

  /** Whether a plant of this fresh mass may be lifted at a bowl and eaten whole. */
  boolean mayLift(int bowl, double freshG) {
    return freshG >= rule.liftFromG() || mayPick(bowl, freshG);
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
    return grow(start, grownDays, bowlDay[0] + 1);
  }

  /** Fresh mass of one plant at the end of the day of a bowl, g. */
  double freshG(PlantState state, int bowl) {
    return state.freshG(days[bowlDay[bowl]].dryMatterShare());
  }
}
