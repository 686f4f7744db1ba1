package sallet.learn;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import sallet.crop.PlantState;
import sallet.crop.SeedLot;
import sallet.crop.forecast.Band;

/**
 * The plants of one batch today.
 *
 * @param lot share of its cells that give a plant
 * @param up share of the seedlings to come that are up by today when nobody counted
 * @param judged whether what is not up by today is given up
 */
record BatchNow(
    FollowedBatch batch,
    GrowthLearning growth,
    SeedLot lot,
    double up,
    boolean judged,
    LocalDate today) {
  /** Fewer seedlings than this are none. */
  private static final double HALF_A_PLANT = 0.5;

  /** Its groups: bench in the order of the pots, then nursery, then cells. */
  List<StandingGroup> groups(List<String> pots) {
    List<StandingGroup> groups = new ArrayList<>();
    List<PlantStory> plants = batch.story().plants();
    for (String pot : pots) {
      plants.stream()
          .filter(plant -> plant.onBench() && plant.pot().equals(pot))
          .forEach(plant -> groups.add(group(Stage.BENCH, plant, 1)));
    }
    Map<LocalDate, List<PlantStory>> nursery = new TreeMap<>();
    for (PlantStory plant : plants) {
      if (plant.inNursery()) {
        nursery
            .computeIfAbsent(plant.toNursery().orElseThrow(), day -> new ArrayList<>())
            .add(plant);
      }
    }
    nursery.values().forEach(same -> groups.add(group(Stage.NURSERY, same.get(0), same.size())));
    if (batch.story().keepsCells(today)) {
      addCells(groups);
    }
    return groups;
  }

  private StandingGroup group(Stage stage, PlantStory story, int count) {
    PlantNow now = new PlantNow(batch, Optional.of(story), growth, today);
    GrowingPlant.Lived lived = now.lived();
    double spread = now.spread();
    return new StandingGroup(
        stage,
        count,
        count,
        stage == Stage.BENCH ? List.of(story.pot()) : List.of(),
        now.plant().stays(),
        story.toNursery(),
        story.toBench(),
        lived.taken(),
        now.vigourMedian(),
        lived.state(),
        now.freshG(),
        spread);
  }

  private void addCells(List<StandingGroup> groups) {
    BatchStory story = batch.story();
    int gone = story.movedOut() + story.lostInCells();
    int cells = story.cells() - gone;
    if (batch.emergence().isAfter(today)) {
      addUnborn(groups, cells);
    } else if (story.counted().isPresent()) {
      addSeedlings(groups, story.counted().getAsInt() - gone, story.counted().getAsInt() - gone);
      if (!judged) {
        addUnborn(groups, story.cells() - Math.max(gone, story.counted().getAsInt()));
      }
    } else {
      addSeedlings(groups, cells, Math.min(cells, lot.mean() * story.cells() - gone));
    }
  }

  /** Cells from which something may come yet, seen that it has not come by today. */
  private void addUnborn(List<StandingGroup> groups, int cells) {
    if (cells > 0) {
      double share = lot.mean() * (1 - up) / (1 - lot.mean() * up);
      groups.add(
          inCells(
              Stage.GERMINATING,
              cells,
              cells * share,
              PlantState.atEmergence(batch.story().crop().growth().orElseThrow()),
              new Band(0, 0, 0),
              0));
    }
  }

  private void addSeedlings(List<StandingGroup> groups, int cells, double plants) {
    if (cells > 0 && plants >= HALF_A_PLANT) {
      PlantNow now = new PlantNow(batch, Optional.empty(), growth, today);
      double spread = now.spread();
      groups.add(inCells(Stage.IN_CELL, cells, plants, now.lived().state(), now.freshG(), spread));
    }
  }

  private StandingGroup inCells(
      Stage stage, int cells, double plants, PlantState state, Band freshG, double spread) {
    return new StandingGroup(
        stage,
        cells,
        plants,
        List.of(),
        batch.inCell(batch.emergence()).stays(),
        Optional.empty(),
        Optional.empty(),
        List.of(),
        Math.exp(growth.plant(batch, Optional.empty(), 0).mean()),
        state,
        freshG,
        spread);
  }
}
