package sallet.plan;

import java.util.List;
import sallet.crop.PlaceDays;

/**
 * What the places of a household offer over the days of a plan.
 *
 * @param vigour household factor on assimilation
 * @param nursery the nursery shelf, cells and places alike
 * @param cellCm2 site of one cell, cm²
 * @param placeCm2 site of one nursery place, cm²
 * @param cellMeanC 24-hour mean temperature at the cells, °C
 * @param cells number of cells
 * @param places number of nursery places
 * @param groups the groups of pots
 */
record Surroundings(
    double vigour,
    PlaceDays nursery,
    double cellCm2,
    double placeCm2,
    double cellMeanC,
    int cells,
    int places,
    List<Group> groups) {
  Surroundings {
    groups = List.copyOf(groups);
  }

  /**
   * Pots with nearly equal light and site.
   *
   * @param pots names of the pots
   * @param days their mean light and air
   * @param siteCm2 mean area one pot offers, cm²
   * @param meanDliMol mean light over the plan, mol/m²/d
   */
  record Group(List<String> pots, PlaceDays days, double siteCm2, double meanDliMol) {
    Group {
      pots = List.copyOf(pots);
    }
  }
}
