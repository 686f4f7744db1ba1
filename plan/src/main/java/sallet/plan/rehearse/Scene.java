package sallet.plan.rehearse;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import sallet.crop.Catalogue;
import sallet.crop.Crop;
import sallet.crop.PlaceDays;
import sallet.household.Household;
import sallet.household.PotSites;
import sallet.plan.Planner;
import sallet.plan.TaskCalendar;

/**
 * What is the same in every season of a rehearsal.
 *
 * @param household the household
 * @param catalogue all crops
 * @param crops crops it may sow
 * @param calendar task days and bowls
 * @param light light of its places by weather
 * @param pots names of its pots
 * @param siteCm2 area what grows in each pot may fill, cm²
 * @param hidden what the planner does not know
 * @param prospects what each crop's truth is drawn from, by its name
 */
record Scene(
    Household household,
    Catalogue catalogue,
    List<Crop> crops,
    TaskCalendar calendar,
    Skylight light,
    List<String> pots,
    List<Double> siteCm2,
    Hidden hidden,
    Map<String, Prospect> prospects) {

  /** A leaf plant fills no more than a square of 30 cm, cm². Common practice. */
  private static final double WIDEST_PLANT_CM2 = 900;

  Scene {
    crops = List.copyOf(crops);
    pots = List.copyOf(pots);
    siteCm2 = List.copyOf(siteCm2);
    prospects = Map.copyOf(prospects);
  }

  static Scene of(Household household, Catalogue catalogue, TaskCalendar calendar, Hidden hidden) {
    return new Scene(
        household,
        catalogue,
        Planner.crops(household, catalogue),
        calendar,
        Skylight.of(household, calendar.from(), calendar.days()),
        Skylight.names(household),
        PotSites.siteCm2(household.bench()).stream()
            .map(site -> Math.min(site, WIDEST_PLANT_CM2))
            .toList(),
        hidden,
        Prospect.of(hidden, catalogue));
  }

  /** The same with other prospects. */
  Scene with(Map<String, Prospect> others) {
    return new Scene(household, catalogue, crops, calendar, light, pots, siteCm2, hidden, others);
  }

  /** Pots by the light on their sites under the mean sky, most first. */
  List<String> brightestFirst() {
    double[] mean = new double[light.days()];
    Arrays.fill(mean, 1);
    List<PlaceDays> days = light.pots(mean);
    return IntStream.range(0, pots.size())
        .boxed()
        .sorted(
            Comparator.comparingDouble(
                i ->
                    -siteCm2.get(i)
                        * IntStream.range(0, mean.length).mapToDouble(days.get(i)::dliMol).sum()))
        .map(pots::get)
        .toList();
  }

  /** Days from the first of the season. */
  int index(LocalDate day) {
    return (int) ChronoUnit.DAYS.between(calendar.from(), day);
  }

  LocalDate day(int index) {
    return calendar.from().plusDays(index);
  }

  /** Whether somebody is at home. */
  boolean atHome(LocalDate day) {
    int away =
        household.absences().stream().filter(a -> a.covers(day)).mapToInt(a -> a.people()).sum();
    return away < household.eaters().people();
  }

  /** Largest share of a bowl one kind may take in the first helping. */
  double kindShare() {
    return 1 / (household.eaters().kinds() - 0.5);
  }
}
