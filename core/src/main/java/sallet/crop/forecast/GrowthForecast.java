package sallet.crop.forecast;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import sallet.crop.Crop;
import sallet.crop.Emergence;
import sallet.crop.HarvestRule;
import sallet.crop.HarvestStyle;
import sallet.crop.HeadWindow;
import sallet.crop.LastDay;
import sallet.crop.LifeDays;
import sallet.crop.PlantLife;
import sallet.crop.PlantLife.Picking;
import sallet.crop.PlantParameters;
import sallet.crop.Stay;
import sallet.crop.forecast.GrowthEnsemble.Member;
import sallet.crop.risk.CropRisks;
import sallet.crop.risk.Exposure;
import sallet.crop.risk.Risk;

/**
 * What becomes of one sowing of a crop that stands in pots.
 *
 * @param crop the crop
 * @param sown day of sowing
 * @param emergence what comes of the seed
 * @param course what follows; empty when nothing comes up
 */
public record GrowthForecast(
    Crop crop, LocalDate sown, Emergence emergence, Optional<Course> course) {

  /**
   * From emergence to the last day. Days from sowing and masses are bands over many plants; dates
   * are those of a plant that comes up at the median time.
   *
   * @param emerged day it comes up
   * @param outOfCell day it leaves its cell
   * @param toBench day it moves to its pot
   * @param lastDay last day on the bench
   * @param nearSeed whether running to seed and not age sets the last day
   * @param window days on which a whole plant of median luck is best lifted; empty for other styles
   * @param replace day on which a new plant is the better use of the pot than a plant picked leaf
   *     by leaf; empty when there is none before its last day
   * @param curve fresh mass of one plant on every day from emergence on
   * @param readyDays days from sowing to the first harvest; infinite ends are never reached
   * @param takes what is harvested of one pot
   * @param potG edible grams of one pot, all takes together
   * @param potWeekG edible grams of one pot by week on the bench, median
   * @param risks what may go wrong, the gravest first
   */
  public record Course(
      LocalDate emerged,
      LocalDate outOfCell,
      LocalDate toBench,
      LocalDate lastDay,
      boolean nearSeed,
      Optional<HeadWindow> window,
      Optional<LocalDate> replace,
      List<Day> curve,
      Band readyDays,
      List<Take> takes,
      Band potG,
      double potWeekG,
      List<Risk> risks) {
    public Course {
      curve = List.copyOf(curve);
      takes = List.copyOf(takes);
      risks = List.copyOf(risks);
    }
  }

  /** Fresh mass of one plant on a day, before that day's harvest, g. */
  public record Day(LocalDate date, Band freshG) {}

  /**
   * One harvest of a pot.
   *
   * @param date when
   * @param lift whether the plants are lifted, else outer leaves are picked
   * @param edibleG edible grams of the pot
   */
  public record Take(LocalDate date, boolean lift, Band edibleG) {}

  /**
   * The forecast of a sowing.
   *
   * @param crop a crop that can be planned
   * @param room where it grows, known from the day of sowing to the crop's age limit
   */
  public static GrowthForecast of(Crop crop, LocalDate sown, GrowingRoom room, Spread spread) {
    return of(crop, sown, room, spread, HarvestRule.LARGEST_PICK);
  }

  /**
   * The same with a weekly pick of a share of the leaf area, above 0 up to {@link
   * HarvestRule#LARGEST_PICK}; crops harvested as a whole are not picked.
   */
  public static GrowthForecast of(
      Crop crop, LocalDate sown, GrowingRoom room, Spread spread, double pickShare) {
    if (!crop.plannable()) {
      throw new IllegalArgumentException(
          crop.name() + " has no growth forecast: " + crop.whyNotPlannable());
    }
    Emergence emergence = Emergence.of(crop, room.nursery().meanC(room.nursery().index(sown)));
    if (emergence.medianDays().isEmpty()) {
      return new GrowthForecast(crop, sown, emergence, Optional.empty());
    }
    LocalDate emerged =
        sown.plusDays((long) Math.ceil(emergence.medianDays().getAsDouble() - 1e-9));
    return new GrowthForecast(
        crop,
        sown,
        emergence,
        Optional.of(new Outlook(crop, sown, emergence, emerged, room, spread, pickShare).course()));
  }

  /** The steps of a forecast. */
  private record Outlook(
      Crop crop,
      LocalDate sown,
      Emergence emergence,
      LocalDate emerged,
      GrowingRoom room,
      Spread spread,
      double pickShare) {

    Course course() {
      HarvestRule rule = rule();
      List<Stay> stays = room.stays(crop, emerged, room.bench());
      LocalDate toBench = stays.get(stays.size() - 1).from();
      LocalDate due = LastDay.onBench(rule, crop.bolting(), emerged, stays);
      LocalDate lastDay = due.isAfter(toBench) ? due : toBench.plusDays(1);
      boolean leafByLeaf = crop.style() == HarvestStyle.LEAF_BY_LEAF;
      LocalDate firstPick = later(emerged.plusDays(HarvestRule.FIRST_PICK_DAYS), toBench);
      GrowthEnsemble plants =
          GrowthEnsemble.of(
              new GrowthEnsemble.Sowing(
                  crop,
                  sown,
                  emergence,
                  days(lastDay),
                  days(firstPick),
                  leafByLeaf ? pickShare : 0),
              room,
              spread);
      List<Take> takes =
          leafByLeaf ? leaves(plants, firstPick, lastDay) : head(plants, toBench, lastDay);
      LocalDate end = takes.isEmpty() ? lastDay : takes.get(takes.size() - 1).date();
      Band potG = leafByLeaf ? all(plants) : takes.get(0).edibleG();
      double weeks = Math.max(1, ChronoUnit.DAYS.between(toBench, end)) / 7.0;
      return new Course(
          emerged,
          emerged.plusDays(GrowingRoom.daysInCell(crop)),
          toBench,
          lastDay,
          lastDay.isBefore(emerged.plusDays(rule.overAgeDays())),
          leafByLeaf
              ? Optional.empty()
              : HeadWindow.of(median(stays, lastDay, Picking.NONE), rule, crop.guide().yieldG()),
          leafByLeaf ? replace(stays, firstPick, lastDay) : Optional.empty(),
          curve(plants, lastDay),
          ready(plants, leafByLeaf),
          takes,
          potG,
          potG.median() / weeks,
          CropRisks.of(
              new Exposure(
                  crop,
                  emerged,
                  end.isAfter(emerged) ? end : emerged.plusDays(1),
                  stays,
                  room.air(),
                  room.airMPerS(),
                  room.southern())));
    }

    /** A plant of median luck. */
    private PlantLife median(List<Stay> stays, LocalDate lastDay, Picking picking) {
      PlantParameters p = crop.growth().orElseThrow();
      return PlantLife.of(
          p, LifeDays.of(p, rule(), spread.vigour(), emerged, stays, lastDay), picking);
    }

    private Optional<LocalDate> replace(List<Stay> stays, LocalDate firstPick, LocalDate lastDay) {
      int first = (int) Math.max(1, ChronoUnit.DAYS.between(emerged, firstPick));
      OptionalInt day = median(stays, lastDay, new Picking(first, 7, pickShare)).renewDay();
      return day.isPresent() ? Optional.of(emerged.plusDays(day.getAsInt())) : Optional.empty();
    }

    private HarvestRule rule() {
      return crop.harvest().orElseThrow();
    }

    private int days(LocalDate date) {
      return (int) ChronoUnit.DAYS.between(sown, date);
    }

    private static LocalDate later(LocalDate a, LocalDate b) {
      return a.isAfter(b) ? a : b;
    }

    /** Edible grams of a pot by fresh grams of one plant. */
    private double ediblePerFresh() {
      return rule().edibleShare() * rule().plantsPerPot();
    }

    private List<Day> curve(GrowthEnsemble plants, LocalDate lastDay) {
      List<Day> curve = new ArrayList<>();
      for (LocalDate d = emerged; !d.isAfter(lastDay); d = d.plusDays(1)) {
        curve.add(new Day(d, plants.freshG(days(d))));
      }
      return curve;
    }

    private Band ready(GrowthEnsemble plants, boolean leafByLeaf) {
      if (!leafByLeaf) {
        return plants.daysTo(rule().liftFromG());
      }
      return Band.of(
          plants.members().stream()
              .mapToDouble(
                  m ->
                      Math.max(
                          m.daysTo(HarvestRule.PICK_FROM_G),
                          m.emergenceDay() + HarvestRule.FIRST_PICK_DAYS))
              .toArray());
    }

    /** Weekly picks, and on the last day what stands. */
    private List<Take> leaves(GrowthEnsemble plants, LocalDate firstPick, LocalDate lastDay) {
      List<Take> takes = new ArrayList<>();
      for (LocalDate d = firstPick; d.isBefore(lastDay); d = d.plusWeeks(1)) {
        Band picked = plants.pickedG(days(d)).times(ediblePerFresh());
        if (picked.median() > 0) {
          takes.add(new Take(d, false, picked));
        }
      }
      double[] left = plants.members().stream().mapToDouble(Outlook::standingG).toArray();
      takes.add(new Take(lastDay, true, Band.of(left).times(ediblePerFresh())));
      return takes;
    }

    private Band all(GrowthEnsemble plants) {
      return Band.of(
              plants.members().stream()
                  .mapToDouble(m -> m.life().pickedG() + standingG(m))
                  .toArray())
          .times(ediblePerFresh());
    }

    /** What stands at the end, after a pick of the last day. */
    private static double standingG(Member member) {
      PlantLife life = member.life();
      if (life.days() == 0) {
        return 0;
      }
      double takenG =
          life.picks().stream()
              .filter(pick -> pick.day() == life.days())
              .mapToDouble(PlantLife.Pick::freshG)
              .sum();
      return life.freshG(life.days()) - takenG;
    }

    /** Lifted when the median plant has its usual mass, at the latest on the last day. */
    private List<Take> head(GrowthEnsemble plants, LocalDate toBench, LocalDate lastDay) {
      double wantedG = crop.guide().typicalYieldG().orElse(rule().liftFromG());
      double usual = plants.daysTo(Math.max(wantedG, rule().liftFromG())).median();
      LocalDate full =
          usual <= days(lastDay) ? later(sown.plusDays((long) usual), toBench) : lastDay;
      return List.of(new Take(full, true, plants.freshG(days(full)).times(ediblePerFresh())));
    }
  }
}
