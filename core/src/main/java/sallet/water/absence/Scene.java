package sallet.water.absence;

import java.util.List;
import sallet.household.Household;
import sallet.water.transpiration.StandingPlant;

/**
 * How things stand when the door closes.
 *
 * @param household the household
 * @param plants what stands on the bench
 * @param levelL water in the reservoir, L; reckoned when {@code usedL} tells of days before
 * @param msCm its conductivity, mS/cm
 * @param usedL median use of each day since the level was sure, L
 */
record Scene(
    Household household,
    List<StandingPlant> plants,
    double levelL,
    double msCm,
    List<Double> usedL) {
  Scene {
    plants = List.copyOf(plants);
    usedL = List.copyOf(usedL);
  }

  /** With a level that is read. */
  Scene(Household household, List<StandingPlant> plants, double levelL, double msCm) {
    this(household, plants, levelL, msCm, List.of());
  }

  Scene with(Household other) {
    return new Scene(other, plants, levelL, msCm, usedL);
  }

  Scene withPlants(List<StandingPlant> others) {
    return new Scene(household, others, levelL, msCm, usedL);
  }

  /** With so much in the reservoir, by the eye. */
  Scene filled(double litres, double conductivity) {
    return new Scene(household, plants, litres, conductivity);
  }

  /** Water used since the level was sure, L. */
  double usedSinceL() {
    return usedL.stream().mapToDouble(Double::doubleValue).sum();
  }
}
