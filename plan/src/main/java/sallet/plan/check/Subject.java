package sallet.plan.check;

import java.util.List;
import sallet.crop.Catalogue;
import sallet.crop.Crop;
import sallet.household.Household;
import sallet.plan.SowingPlan;

/**
 * A plan with everything it is judged by.
 *
 * @param plan the plan
 * @param household whom it is for
 * @param catalogue crops
 * @param calendar days of the plan
 * @param surroundings light and air where its plants stand
 */
record Subject(
    SowingPlan plan,
    Household household,
    Catalogue catalogue,
    HomeCalendar calendar,
    Surroundings surroundings) {

  /** Crops that may be sown for this household, in catalogue order. */
  List<Crop> sowableCrops() {
    return catalogue.all().stream().filter(this::sowable).toList();
  }

  /** Whether a crop may be sown for this household. */
  boolean sowable(Crop crop) {
    List<String> want = household.crops().want();
    return crop.plannable()
        && (want.isEmpty() || names(want, crop))
        && !names(household.crops().avoid(), crop);
  }

  private boolean names(List<String> names, Crop crop) {
    return names.stream()
        .flatMap(name -> catalogue.find(name).stream())
        .anyMatch(named -> named.name().equals(crop.name()));
  }
}
