package sallet.learn;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import sallet.household.Watering;
import sallet.journal.Entry;
import sallet.units.Quantity;

/** Pots on the scales: what they hold (dry and wet), and what they use (wet and before a flood). */
final class PotRows {
  /** Days from weighing a pot dry to weighing it wet, while nothing stands in it. Judgement. */
  private static final int DRY_DAYS = 7;

  /** Longest time from a flood to the weighing before the next, h. Judgement. */
  private static final double LONGEST_HOURS = 72;

  private static final double MINUTES_PER_HOUR = 60;

  private final List<Remark> remarks;
  private final Map<String, Entry> dry = new HashMap<>();
  private final Map<String, Entry> wet = new HashMap<>();
  private final List<Watering.Weighing> weighings = new ArrayList<>();

  PotRows(List<Remark> remarks) {
    this.remarks = remarks;
  }

  List<Watering.Weighing> of(List<Entry> rows) {
    for (Entry row : rows) {
      for (String pot : row.place().pots()) {
        switch (row.event()) {
          case POT_DRY -> dry.put(pot, row);
          case POT_WET -> wet(pot, row);
          case POT_MASS -> mass(pot, row);
          default -> {}
        }
      }
    }
    return weighings;
  }

  private void wet(String pot, Entry row) {
    wet.put(pot, row);
    Optional<Entry> before = Optional.ofNullable(dry.remove(pot));
    if (before.isEmpty() || row.date().isAfter(before.get().date().plusDays(DRY_DAYS))) {
      return;
    }
    double dryG = before.get().value().orElseThrow();
    double wetG = row.value().orElseThrow();
    if (wetG <= dryG) {
      contradict(row, "pot %s weighs no more wet (%s g) than dry (%s g)", pot, wetG, dryG);
    } else {
      weighings.add(
          new Watering.Weighing(
              pot, OptionalDouble.of(dryG), wetG, OptionalDouble.empty(), 1, Optional.empty()));
    }
  }

  private void mass(String pot, Entry row) {
    Entry full = wet.remove(pot);
    if (full == null) {
      remark(row, "pot %s was not weighed wet before (pot-wet), so this teaches nothing", pot);
      return;
    }
    if (full.time().isEmpty() || row.time().isEmpty()) {
      remark(
          row,
          "pot %s teaches what it uses only when both weighings name their time of the day, like"
              + " 07:30 in a column \"time\"",
          pot);
      return;
    }
    LocalDateTime then = full.date().atTime(full.time().get());
    LocalDateTime now = row.date().atTime(row.time().get());
    double hours = Duration.between(then, now).toMinutes() / MINUTES_PER_HOUR;
    double wetG = full.value().orElseThrow();
    double nowG = row.value().orElseThrow();
    if (nowG > wetG) {
      contradict(row, "pot %s weighs more (%s g) than after the flood (%s g)", pot, nowG, wetG);
    } else if (hours <= 0) {
      remark(row, "pot %s was weighed wet at the same time or later; put the times right", pot);
    } else if (hours > LONGEST_HOURS) {
      remark(row, "pot %s was weighed wet more than three days ago; weigh it wet again", pot);
    } else {
      weighings.add(
          new Watering.Weighing(
              pot,
              OptionalDouble.empty(),
              wetG,
              OptionalDouble.of(nowG),
              hours,
              Optional.of(row.date()),
              row.time()));
    }
  }

  private void remark(Entry row, String sentence, String pot) {
    remarks.add(new Remark(row.line(), false, sentence.formatted(pot)));
  }

  private void contradict(Entry row, String sentence, String pot, double g, double thanG) {
    remarks.add(
        new Remark(
            row.line(), true, sentence.formatted(pot, Quantity.plain(g), Quantity.plain(thanG))));
  }
}
