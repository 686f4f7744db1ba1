package sallet.water.absence;

import java.util.List;
import sallet.household.Household;
import sallet.water.transpiration.StandingPlant;

/**
 * How things stand when the door closes.
 *
 * @param household the household
 * @param plants what stands on the bench
 * @param levelL water in the reservoir, L
 * @param msCm its conductivity, mS/cm
 */
record Scene(Household household, List<StandingPlant> plants, double levelL, double msCm) {
  Scene {
    plants = List.copyOf(plants);
  }

  Scene with(Household other) {
    return new Scene(other, plants, levelL, msCm);
  }

  Scene withPlants(List<StandingPlant> others) {
    return new Scene(household, others, levelL, msCm);
  }

  Scene filled(double litres, double conductivity) {
    return new Scene(household, plants, litres, conductivity);
  }
}
