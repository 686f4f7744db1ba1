package sallet.learn;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import sallet.crop.Stay;
import sallet.learn.GrowingPlaces.PotPlace;

/** A batch with its plants on the growth model. */
final class FollowedBatch {
  private final BatchStory story;
  private final LocalDate emergence;
  private final GrowingPlaces places;
  private final LocalDate today;
  private final Map<PlantStory, GrowingPlant> grown = new HashMap<>();

  /**
   * @param emergence day it came up or is thought to
   * @param today last day of growth
   */
  FollowedBatch(BatchStory story, LocalDate emergence, GrowingPlaces places, LocalDate today) {
    this.story = story;
    this.emergence = emergence;
    this.places = places;
    this.today = today;
    story.plants().forEach(plant -> grown.put(plant, grow(plant, emergence)));
  }

  BatchStory story() {
    return story;
  }

  LocalDate emergence() {
    return emergence;
  }

  /** A plant that left its cell. */
  GrowingPlant grown(PlantStory plant) {
    return Objects.requireNonNull(grown.get(plant), "a plant of another batch");
  }

  /** The same plant, had it come up on another day not after it moved. */
  GrowingPlant grow(PlantStory plant, LocalDate up) {
    return new GrowingPlant(
        story.crop(), up, stays(plant), plant.picks(), plant.ended().orElse(today));
  }

  /** A seedling still in its cell. */
  GrowingPlant inCell(LocalDate up) {
    return new GrowingPlant(story.crop(), up, List.of(cell()), List.of(), today);
  }

  private Stay cell() {
    return new Stay(story.sown(), places.nursery(), places.cellCm2());
  }

  private List<Stay> stays(PlantStory plant) {
    List<Stay> stays = new ArrayList<>(List.of(cell()));
    plant
        .toNursery()
        .ifPresent(day -> stays.add(new Stay(day, places.nursery(), places.placeCm2())));
    plant
        .toBench()
        .ifPresent(
            day -> {
              PotPlace pot = places.pot(plant.pot());
              stays.add(new Stay(day, pot.days(), pot.siteCm2()));
            });
    return stays;
  }
}
