package sallet.plan.rehearse;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import sallet.crop.Crop;
import sallet.journal.Entry;
import sallet.journal.Event;
import sallet.journal.Journal;
import sallet.journal.Where;

/** The rows a careful grower writes down; all the habit that plans may know of a season. */
final class Notebook {
  private final List<Entry> rows = new ArrayList<>();
  private final SplittableRandom eye;
  private final double readingSd;

  Notebook(SplittableRandom eye, double readingSd) {
    this.eye = eye;
    this.readingSd = readingSd;
  }

  Journal journal() {
    return new Journal(rows);
  }

  void sow(LocalDate day, String batch, Crop crop, int seeds, int cells) {
    add(day, Event.SOW, batch, crop, seeds, new Where.Cells(cells), OptionalDouble.empty());
  }

  void emerge(LocalDate day, String batch, Crop crop, int count) {
    add(day, Event.EMERGE, batch, crop, count, new Where.Anywhere(), OptionalDouble.empty());
  }

  void toNursery(LocalDate day, Plant plant) {
    add(day, Event.MOVE, plant, new Where.Nursery(), OptionalDouble.empty());
  }

  void toPot(LocalDate day, Plant plant) {
    add(day, Event.MOVE, plant, pot(plant), OptionalDouble.empty());
  }

  void pick(LocalDate day, Plant plant, double edibleG) {
    add(day, Event.PICK, plant, pot(plant), OptionalDouble.of(edibleG));
  }

  void lift(LocalDate day, Plant plant, double edibleG) {
    add(day, Event.LIFT, plant, pot(plant), OptionalDouble.of(edibleG));
  }

  void lost(LocalDate day, Plant plant) {
    Where where =
        switch (plant.stage()) {
          case CELL -> new Where.Anywhere();
          case NURSERY -> new Where.Nursery();
          case BENCH -> pot(plant);
        };
    add(day, Event.LOST, plant, where, OptionalDouble.empty());
  }

  /** Weighs a plant that stands, more or less well. */
  void weigh(LocalDate day, Plant plant) {
    double grams = plant.freshG() * Math.exp(readingSd * eye.nextGaussian());
    add(day, Event.WEIGH, plant, pot(plant), OptionalDouble.of(grams));
  }

  private static Where pot(Plant plant) {
    return new Where.Pots(List.of(plant.pot()));
  }

  private void add(LocalDate day, Event event, Plant plant, Where where, OptionalDouble grams) {
    add(day, event, plant.batch, plant.crop, 1, where, grams);
  }

  private void add(
      LocalDate day,
      Event event,
      String batch,
      Crop crop,
      int count,
      Where where,
      OptionalDouble grams) {
    rows.add(
        new Entry(
            rows.size() + 1,
            day,
            event,
            batch,
            crop.name(),
            OptionalInt.of(count),
            where,
            grams,
            OptionalDouble.empty(),
            ""));
  }
}
