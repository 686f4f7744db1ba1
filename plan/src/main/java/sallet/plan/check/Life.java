package sallet.plan.check;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import sallet.crop.Bolting;
import sallet.crop.Crop;
import sallet.crop.HarvestRule;
import sallet.crop.LifeDays;
import sallet.crop.PlantDay;
import sallet.crop.PlantModel;
import sallet.crop.PlantParameters;
import sallet.crop.PlantState;
import sallet.crop.Stay;

/**
 * The life of one pot's plants grown again, day by day, from emergence.
 *
 * <p>A day's picks come after its growth. Masses are of the whole pot: a clump counts with all its
 * plants.
 */
final class Life {
  /**
   * Factor on assimilation in a household: growth is less than in the trials the model was fitted
   * to. Judgement, docs/models/growth.md.
   */
  static final double VIGOUR = 0.85;

  private final LocalDate emergence;
  private final List<Double> standingG;
  private final List<Double> leaves;
  private final double leftG;
  private final HarvestRule rule;

  private Life(
      LocalDate emergence,
      List<Double> standingG,
      List<Double> leaves,
      double leftG,
      HarvestRule rule) {
    this.emergence = emergence;
    this.standingG = standingG;
    this.leaves = leaves;
    this.leftG = leftG;
    this.rule = rule;
  }

  /**
   * Grows a plant.
   *
   * @param crop a crop that can be planned
   * @param emergence first day of growth
   * @param stays where it stands, in order
   * @param last last day of growth, not before emergence
   * @param pickedShares share of the leaf area taken on a day
   */
  static Life grow(
      Crop crop,
      LocalDate emergence,
      List<Stay> stays,
      LocalDate last,
      Map<LocalDate, Double> pickedShares) {
    PlantParameters parameters = crop.growth().orElseThrow();
    HarvestRule rule = crop.harvest().orElseThrow();
    PlantDay[] days = LifeDays.of(parameters, rule, VIGOUR, emergence, stays, last.plusDays(1));
    PlantState state = PlantState.atEmergence(parameters);
    List<Double> standing = new ArrayList<>();
    List<Double> leaves = new ArrayList<>();
    double left = 0;
    for (int age = 0; age < days.length; age++) {
      state = PlantModel.step(state, parameters, days[age]);
      standing.add(rule.plantsPerPot() * state.freshG(days[age].dryMatterShare()));
      leaves.add(state.leaves());
      state = state.pickedLeaves(pickedShares.getOrDefault(emergence.plusDays(age), 0.0));
      left = rule.plantsPerPot() * state.freshG(days[age].dryMatterShare());
    }
    return new Life(emergence, List.copyOf(standing), List.copyOf(leaves), left, rule);
  }

  /** Fresh mass of one plant on a day before its pick, g. */
  double plantG(LocalDate day) {
    return standingG(day) / rule.plantsPerPot();
  }

  /** Fresh mass in the pot on a day before its pick, g. */
  double standingG(LocalDate day) {
    return standingG.get((int) ChronoUnit.DAYS.between(emergence, day));
  }

  /** Leaves on one plant on a day before its pick. */
  double leaves(LocalDate day) {
    return leaves.get((int) ChronoUnit.DAYS.between(emergence, day));
  }

  /** Edible grams a pick of a share of the leaf area gives on a day. */
  double pickGrams(LocalDate day, double share) {
    return share * standingG(day) * rule.edibleShare();
  }

  /** Edible grams that stand after the last day's pick. */
  double leftGrams() {
    return leftG * rule.edibleShare();
  }

  /**
   * The last day a plant may stand on the bench: its age limit or, if sooner, the first day on
   * which the bolting sum from emergence has reached its limit. Days after {@code horizon} are not
   * looked at.
   */
  static LocalDate lastBenchDay(
      Crop crop, LocalDate emergence, List<Stay> stays, LocalDate horizon) {
    LocalDate oldest = emergence.plusDays(crop.harvest().orElseThrow().overAgeDays());
    if (crop.bolting().isEmpty()) {
      return oldest;
    }
    Bolting bolting = crop.bolting().get();
    double limitCd = Bolting.LEAVE_AT * bolting.halfSumCd();
    double sumCd = 0;
    for (LocalDate day = emergence;
        day.isBefore(oldest) && !day.isAfter(horizon);
        day = day.plusDays(1)) {
      Stay stay = stayOn(stays, day);
      int at = stay.place().index(day);
      sumCd += bolting.dayCd(stay.place().boltingHeatCd(at), stay.place().photoperiodHours(at));
      if (sumCd >= limitCd) {
        return day;
      }
    }
    return oldest;
  }

  private static Stay stayOn(List<Stay> stays, LocalDate day) {
    Stay found = stays.get(0);
    for (Stay stay : stays) {
      if (!stay.from().isAfter(day)) {
        found = stay;
      }
    }
    return found;
  }
}
