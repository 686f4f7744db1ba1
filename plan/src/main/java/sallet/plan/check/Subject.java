package sallet.plan.check;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sallet.crop.Catalogue;
import sallet.crop.Crop;
import sallet.household.Household;
import sallet.plan.Present;
import sallet.plan.SowingPlan;

/**
 * A plan with everything it is judged by.
 *
 * @param plan the plan
 * @param household whom it is for
 * @param catalogue crops
 * @param present what stood when it was made
 * @param calendar days of the plan
 * @param surroundings light and air where its plants stand
 */
record Subject(
    SowingPlan plan,
    Household household,
    Catalogue catalogue,
    Present present,
    HomeCalendar calendar,
    Surroundings surroundings) {

  /** What becomes of the plants that stand already. */
  List<StandingCourse> standing() {
    return StandingCourse.of(plan.standing(), present);
  }

  /** A crop that can be planned, with what was learned of its seeds. */
  Optional<Crop> crop(String name) {
    return catalogue
        .find(name)
        .filter(Crop::plannable)
        .map(
            crop ->
                Optional.ofNullable(present.usableShares().get(crop.name()))
                    .map(crop::withUsableShare)
                    .orElse(crop));
  }

  /** Whether plants that stand can be planned with. */
  boolean knows(Present.Plants plants) {
    return crop(plants.crop()).isPresent();
  }

  /** Pots held by plants that cannot be planned with. */
  List<String> heldPots() {
    return Stream.concat(
            present.otherPots().stream(),
            present.plants().stream().filter(p -> !knows(p)).flatMap(p -> p.pots().stream()))
        .toList();
  }

  /** Edible grams in hand for the first bowl. */
  double inHandGrams() {
    return present.inHandGrams().values().stream().mapToDouble(g -> g).sum();
  }

  /** Factor on assimilation of a crop in this household. */
  double vigour(Crop crop) {
    return present.growthFactors().getOrDefault(crop.name(), Life.VIGOUR);
  }

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
