package sallet.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import sallet.crop.PlaceDays;
import sallet.crop.Stay;

/**
 * What the places of a household offer over the days of a plan.
 *
 * @param nursery the nursery shelf, cells and places alike
 * @param cellCm2 site of one cell, cm²
 * @param placeCm2 site of one nursery place, cm²
 * @param cellMeanC 24-hour mean temperature at the cells, °C
 * @param cells number of cells
 * @param places number of nursery places
 * @param groups the groups of pots
 */
record Surroundings(
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

  /** The stays of a plant: cell, nursery place and a pot of a group. */
  List<Stay> stays(LocalDate sown, LocalDate toNursery, LocalDate toBench, int group) {
    Group pots = groups.get(group);
    return List.of(
        new Stay(sown, nursery, cellCm2),
        new Stay(toNursery, nursery, placeCm2),
        new Stay(toBench, pots.days(), pots.siteCm2()));
  }

  private static final List<List<String>> GROUP_NAMES =
      List.of(List.of("all"), List.of("better", "weaker"), List.of("best", "middle", "weakest"));

  /** What the groups are called, in their order. */
  List<String> groupNames() {
    return GROUP_NAMES.get(groups.size() - 1);
  }

  /** The same with other numbers of cells and nursery places. */
  Surroundings holding(int otherCells, int otherPlaces) {
    return new Surroundings(nursery, cellCm2, placeCm2, cellMeanC, otherCells, otherPlaces, groups);
  }

  /** The same without some pots; a group that loses all of them is gone unless it is the last. */
  Surroundings without(List<String> taken) {
    List<Group> left = new ArrayList<>();
    for (Group group : groups) {
      List<String> pots = group.pots().stream().filter(p -> !taken.contains(p)).toList();
      if (!pots.isEmpty()) {
        left.add(group.with(pots));
      }
    }
    if (left.isEmpty()) {
      left.add(groups.get(0).with(List.of()));
    }
    return new Surroundings(nursery, cellCm2, placeCm2, cellMeanC, cells, places, left);
  }

  /** The same with one more pot in a group. */
  Surroundings withPot(int group) {
    List<Group> more = new ArrayList<>(groups);
    Group old = groups.get(group);
    List<String> pots = new ArrayList<>(old.pots());
    pots.add("one more");
    more.set(group, old.with(pots));
    return new Surroundings(nursery, cellCm2, placeCm2, cellMeanC, cells, places, more);
  }

  /** The stays of plants until today. */
  List<Stay> stays(Present.Plants plants, int group) {
    List<Stay> stays = new ArrayList<>();
    stays.add(new Stay(plants.sown(), nursery, cellCm2));
    plants.toNursery().ifPresent(day -> stays.add(new Stay(day, nursery, placeCm2)));
    plants
        .toBench()
        .ifPresent(
            day -> stays.add(new Stay(day, groups.get(group).days(), groups.get(group).siteCm2())));
    return stays;
  }

  /** The group a pot belongs to, or -1. */
  int groupOf(String pot) {
    return IntStream.range(0, groups.size())
        .filter(g -> groups.get(g).pots().contains(pot))
        .findFirst()
        .orElse(-1);
  }

  /**
   * Pots with nearly equal light and site.
   *
   * @param pots names of the pots that may be used
   * @param alike names of all pots whose mean it is, those held by other plants too
   * @param days their mean light and air
   * @param siteCm2 mean area one pot offers, cm²
   * @param meanDliMol mean light over the plan, mol/m²/d
   */
  record Group(
      List<String> pots, List<String> alike, PlaceDays days, double siteCm2, double meanDliMol) {
    Group {
      pots = List.copyOf(pots);
      alike = List.copyOf(alike);
    }

    /** A group whose pots may all be used. */
    Group(List<String> pots, PlaceDays days, double siteCm2, double meanDliMol) {
      this(pots, pots, days, siteCm2, meanDliMol);
    }

    /** The same group with other pots that may be used. */
    Group with(List<String> usable) {
      return new Group(usable, alike, days, siteCm2, meanDliMol);
    }
  }
}
