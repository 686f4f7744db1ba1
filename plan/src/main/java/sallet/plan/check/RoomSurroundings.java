package sallet.plan.check;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import sallet.crop.PlaceDays;
import sallet.crop.RoomDays;
import sallet.household.Household;
import sallet.household.Pot;
import sallet.light.HourlyLight;
import sallet.light.RoomLight;
import sallet.plan.SowingPlan.PotGroup;

/** The light and air of a household's own room. */
final class RoomSurroundings implements Surroundings {
  private final Household household;
  private final HourlyLight atPots;
  private final PlaceDays nursery;
  private final Map<PotGroup, PlaceDays> benches = new HashMap<>();

  RoomSurroundings(Household household, HomeCalendar calendar) {
    this.household = household;
    this.atPots = RoomLight.atPots(household, calendar.from(), calendar.days());
    HourlyLight shelf = RoomLight.inNursery(household, calendar.from(), calendar.days());
    this.nursery = RoomDays.inNursery(shelf, household.nursery(), household.room().air());
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
