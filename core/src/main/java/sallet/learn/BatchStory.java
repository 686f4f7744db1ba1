package sallet.learn;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;
import sallet.crop.Crop;
import sallet.crop.HarvestRule;
import sallet.journal.Entry;
import sallet.journal.Where;
import sallet.learn.PlantReading.Kind;

/** What the rows of one batch tell, taken in order of time. */
final class BatchStory {
  /** Days that spare seedlings stay in their cells after the first of them moved. Judgement. */
  private static final int KEEP_SPARE_DAYS = 7;

  private final Entry sowing;
  private final Crop crop;
  private final int seeds;
  private final int cells;
  private final List<PlantStory> plants = new ArrayList<>();
  private final List<PlantReading> readings = new ArrayList<>();
  private final List<Remark> remarks = new ArrayList<>();
  private final PlantChoice choice;
  private Optional<LocalDate> cameUp = Optional.empty();
  private OptionalInt counted = OptionalInt.empty();
  private Optional<LocalDate> firstOut = Optional.empty();
  private int lostInCells;

  BatchStory(Entry sowing, Crop crop) {
    this.sowing = sowing;
    this.crop = crop;
    this.choice = new PlantChoice(sowing.batch(), plants, remarks);
    int each = rule().plantsPerPot();
    int named = sowing.place() instanceof Where.Cells c ? c.count() : 0;
    this.seeds = sowing.count().orElse(Math.max(1, named) * each);
    this.cells = named > 0 ? named : (seeds + each - 1) / each;
  }

  String name() {
    return sowing.batch();
  }

  /** Line of its sow row. */
  int line() {
    return sowing.line();
  }

  Crop crop() {
    return crop;
  }

  HarvestRule rule() {
    return crop.harvest().orElseThrow();
  }

  LocalDate sown() {
    return sowing.date();
  }

  int seeds() {
    return seeds;
  }

  int cells() {
    return cells;
  }

  /** Whether each cell got the seeds a plant of its crop needs and no spare ones. */
  boolean sownSingly() {
    return seeds <= cells * rule().plantsPerPot();
  }

  /** All plants that left their cells, gone ones too. */
  List<PlantStory> plants() {
    return List.copyOf(plants);
  }

  List<PlantReading> readings() {
    return List.copyOf(readings);
  }

  List<Remark> remarks() {
    return List.copyOf(remarks);
  }

  /** Day of the first row that tells of seedlings: counted, or moved. */
  Optional<LocalDate> seenUp() {
    return Stream.of(cameUp, firstOut).flatMap(Optional::stream).min(LocalDate::compareTo);
  }

  /** Day of the row that tells when they came up. */
  Optional<LocalDate> cameUp() {
    return cameUp;
  }

  /** Cells with a seedling as counted; empty when nobody counted. */
  OptionalInt counted() {
    return counted;
  }

  /** Plants that left their cells. */
  int movedOut() {
    return plants.size();
  }

  int lostInCells() {
    return lostInCells;
  }

  /** Whether what is left in the cells is still kept on a day. */
  boolean keepsCells(LocalDate day) {
    return firstOut.isEmpty() || !day.isAfter(firstOut.get().plusDays(KEEP_SPARE_DAYS));
  }

  /** Takes the next row of the batch. */
  void take(Entry e) {
    if (e.date().isBefore(sown())) {
      contradict(e, "%s was sown on %s, after this row's date", name(), sown());
      return;
    }
    switch (e.event()) {
      case EMERGE -> emerge(e);
      case MOVE -> move(e);
      case PICK -> pick(e);
      case LIFT -> lift(e);
      case LOST -> lost(e);
      case WEIGH -> read(e, Kind.WEIGHED, e.grams().orElseThrow());
      case WIDTH -> read(e, Kind.MEASURED, e.value().orElseThrow());
      default ->
          contradict(
              e, "%s was sown already on %s; give every sowing a name of its own", name(), sown());
    }
  }

  private void emerge(Entry e) {
    int before = counted.orElse(0);
    int now = before + e.count().orElse(0);
    if (now > seeds) {
      contradict(
          e, "%d have come up of %d seeds of %s; count only what is new", now, seeds, name());
      return;
    }
    if (now > cells) {
      remark(e, "cells with a seedling are counted; %s has %d cells", name(), cells);
    }
    cameUp = cameUp.or(() -> Optional.of(e.date()));
    if (e.count().isPresent()) {
      counted = OptionalInt.of(Math.min(now, cells));
    }
  }

  private void move(Entry e) {
    if (e.place() instanceof Where.Pots pots) {
      moveToPots(e, pots.names());
    } else {
      moveToNursery(e, e.count().orElse(counted.orElse(cells) - plants.size() - lostInCells));
    }
  }

  private void moveToNursery(Entry e, int count) {
    if (count > cellsLeft() || count < 1) {
      contradict(
          e,
          "%s moved to the nursery, but %d of the %d cells of %s are left",
          count == 1 ? "1 is" : Math.max(0, count) + " are",
          cellsLeft(),
          cells,
          name());
      return;
    }
    outOfCells(e, count);
    for (int i = 0; i < count; i++) {
      plants.add(PlantStory.inNursery(e.date()));
    }
  }

  private int cellsLeft() {
    return cells - plants.size() - lostInCells;
  }

  private void moveToPots(Entry e, List<String> pots) {
    List<PlantStory> waiting = plants.stream().filter(PlantStory::inNursery).toList();
    int fromCells = Math.max(0, pots.size() - waiting.size());
    if (e.count().orElse(pots.size()) != pots.size()) {
      contradict(
          e,
          "%s for %s; name one pot for each",
          pots(pots.size()),
          PlantChoice.plants(e.count().orElse(0)));
    } else if (fromCells > cellsLeft()) {
      contradict(
          e,
          "%d are moved into pots, but only %d of %s are in nursery and cells",
          pots.size(),
          waiting.size() + cellsLeft(),
          name());
    } else {
      if (fromCells > 0) {
        outOfCells(e, fromCells);
      }
      for (int i = 0; i < pots.size(); i++) {
        PlantStory plant = i < waiting.size() ? waiting.get(i) : PlantStory.straightToPot();
        plant.moveToPot(pots.get(i), e.date());
        if (i >= waiting.size()) {
          plants.add(plant);
        }
      }
    }
  }

  private void outOfCells(Entry e, int count) {
    int out = plants.size() + lostInCells + count;
    if (counted.isPresent() && out > counted.getAsInt()) {
      remark(e, "%d left their cells, so at least so many of %s have come up", out, name());
      counted = OptionalInt.of(out);
    }
    firstOut = firstOut.or(() -> Optional.of(e.date()));
  }

  private void pick(Entry e) {
    List<PlantStory> chosen = choice.counted(e, PlantStory::onBench);
    if (chosen.isEmpty()) {
      return;
    }
    int n = chosen.size();
    OptionalDouble each =
        e.grams().isPresent()
            ? OptionalDouble.of(e.grams().getAsDouble() / n)
            : OptionalDouble.empty();
    OptionalDouble share =
        e.value().isPresent()
            ? OptionalDouble.of(e.value().getAsDouble() / 100)
            : OptionalDouble.empty();
    if (share.orElse(0) > 0 && each.orElse(0) > 0) {
      HarvestRule rule = rule();
      add(e, Kind.PICKED, chosen, each.getAsDouble() / share.getAsDouble() / rule.edibleShare());
    }
    chosen.forEach(plant -> plant.pick(new PlantStory.Pick(e.date(), each, share)));
  }

  private void lift(Entry e) {
    List<PlantStory> chosen = choice.counted(e, PlantStory::stands);
    if (!chosen.isEmpty() && e.grams().orElse(0) > 0) {
      double edibleG = e.grams().getAsDouble() / chosen.size();
      add(e, Kind.LIFTED, chosen, edibleG / rule().edibleShare());
    }
    chosen.forEach(plant -> plant.end(e.date()));
  }

  private void lost(Entry e) {
    int inCells = cellsLeft();
    if (e.place() instanceof Where.Anywhere && inCells > 0 && keepsCells(e.date())) {
      int fromCells = Math.min(inCells, e.count().orElse(inCells));
      lostInCells += fromCells;
      if (e.count().orElse(0) <= fromCells) {
        return;
      }
      contradict(
          e,
          "%s are lost, but %s has %d cells left; name the place of the others",
          PlantChoice.plants(e.count().orElse(0)),
          name(),
          fromCells);
      return;
    }
    choice.counted(e, PlantStory::stands).forEach(plant -> plant.end(e.date()));
  }

  private void read(Entry e, Kind kind, double value) {
    List<PlantStory> candidates = choice.all(e, PlantStory::stands);
    if (!candidates.isEmpty() && value > 0) {
      add(e, kind, candidates, value);
    }
  }

  private void add(Entry e, Kind kind, List<PlantStory> of, double value) {
    List<Integer> picks = of.stream().map(plant -> plant.picks().size()).toList();
    readings.add(new PlantReading(e.line(), e.date(), kind, of, picks, value));
  }

  private void contradict(Entry e, String sentence, Object... parts) {
    remarks.add(new Remark(e.line(), true, sentence.formatted(parts)));
  }

  private void remark(Entry e, String sentence, Object... parts) {
    remarks.add(new Remark(e.line(), false, sentence.formatted(parts)));
  }

  private static String pots(int count) {
    return count == 1 ? "1 pot is named" : count + " pots are named";
  }
}
