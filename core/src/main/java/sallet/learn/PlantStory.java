package sallet.learn;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What happened to one plant (or the clump of one pot) since it left its cell, as rows tell. */
final class PlantStory {
  private final Optional<LocalDate> toNursery;
  private Optional<LocalDate> toBench = Optional.empty();
  private Optional<LocalDate> end = Optional.empty();
  private String pot = "";
  private final List<Pick> picks = new ArrayList<>();

  /**
   * Leaves that were picked.
   *
   * @param edibleG edible grams taken; empty when nobody weighed them
   * @param share share of the leaf taken by the grower's eye, 0 to 1
   */
  record Pick(LocalDate date, OptionalDouble edibleG, OptionalDouble share) {}

  private PlantStory(Optional<LocalDate> toNursery) {
    this.toNursery = toNursery;
  }

  static PlantStory inNursery(LocalDate from) {
    return new PlantStory(Optional.of(from));
  }

  static PlantStory straightToPot() {
    return new PlantStory(Optional.empty());
  }

  void moveToPot(String name, LocalDate date) {
    pot = name;
    toBench = Optional.of(date);
  }

  void pick(Pick pick) {
    picks.add(pick);
  }

  void end(LocalDate date) {
    end = Optional.of(date);
  }

  Optional<LocalDate> toNursery() {
    return toNursery;
  }

  Optional<LocalDate> toBench() {
    return toBench;
  }

  Optional<LocalDate> ended() {
    return end;
  }

  boolean stands() {
    return end.isEmpty();
  }

  boolean onBench() {
    return stands() && toBench.isPresent();
  }

  boolean inNursery() {
    return stands() && toBench.isEmpty();
  }

  /** The pot it stands or stood in; empty off the bench. */
  String pot() {
    return pot;
  }

  List<Pick> picks() {
    return List.copyOf(picks);
  }

  /** Day of the last pick, or long ago. */
  LocalDate lastPick() {
    return picks.isEmpty() ? LocalDate.MIN : picks.get(picks.size() - 1).date();
  }
}
