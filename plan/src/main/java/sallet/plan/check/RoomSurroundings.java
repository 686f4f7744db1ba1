package sallet.plan.check;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import sallet.crop.PlaceDays;
import sallet.crop.RoomDays;
import sallet.household.Household;
import sallet.household.Pot;
import sallet.light.HourlyLight;
import sallet.light.RoomLight;
import sallet.plan.Present;
import sallet.plan.SowingPlan.PotGroup;

/** The light and air of a household's own room. */
final class RoomSurroundings implements Surroundings {
  private final Household household;
  private final HourlyLight atPots;
  private final PlaceDays nursery;
  private final Map<PotGroup, PlaceDays> benches = new HashMap<>();

  private RoomSurroundings(Household household, LocalDate first, int days) {
    this.household = household;
    this.atPots = RoomLight.atPots(household, first, days);
    HourlyLight shelf = RoomLight.inNursery(household, first, days);
    this.nursery = RoomDays.inNursery(shelf, household.nursery(), household.room().air());
  }

  /** From the day the oldest plant was sown to the plan's last day. */
  static RoomSurroundings of(Household household, HomeCalendar calendar, Present present) {
    LocalDate first =
        Stream.concat(
                Stream.of(calendar.from()), present.plants().stream().map(Present.Plants::sown))
            .min(LocalDate::compareTo)
            .orElseThrow();
    int before = (int) ChronoUnit.DAYS.between(first, calendar.from());
    return new RoomSurroundings(household, first, before + calendar.days());
  }

  @Override
  public PlaceDays nursery() {
    return nursery;
  }

  @Override
  public PlaceDays bench(PotGroup group) {
    return benches.computeIfAbsent(
        group, g -> RoomDays.mean(atPots, places(g), household.room().air()));
  }

  /** Positions of a group's pots in the household's list. */
  private List<Integer> places(PotGroup group) {
    List<String> names = household.bench().pots().stream().map(Pot::name).toList();
    return group.pots().stream().map(names::indexOf).toList();
  }
}
