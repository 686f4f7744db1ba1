package sallet.learn;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import sallet.crop.Catalogue;
import sallet.crop.Crop;
import sallet.journal.Entry;
import sallet.journal.Event;
import sallet.journal.Journal;
import sallet.journal.Where;

/** Books the rows of a journal to their batches, day by day. */
final class Ledger {
  private static final int MOST_NAMES = 6;

  private final Catalogue catalogue;
  private final Map<String, BatchStory> batches = new LinkedHashMap<>();
  private final Map<String, Untold> untold = new LinkedHashMap<>();
  private final List<Remark> remarks = new ArrayList<>();

  /** A batch of a crop without growth model: only the pots it holds are booked. */
  private record Untold(List<String> pots) {}

  private Ledger(Catalogue catalogue) {
    this.catalogue = catalogue;
  }

  /** Books all rows up to and with a day. */
  static Ledger of(Journal journal, Catalogue catalogue, LocalDate today) {
    Ledger ledger = new Ledger(catalogue);
    SortedMap<LocalDate, List<Entry>> days = new TreeMap<>();
    for (Entry entry : journal.until(today).entries()) {
      if (entry.event().ofBatch()) {
        days.computeIfAbsent(entry.date(), d -> new ArrayList<>()).add(entry);
      }
    }
    days.values().forEach(ledger::book);
    ledger.tellOfLater(journal, today);
    return ledger;
  }

  /** Batches whose crop has a growth model, by day of sowing and then name. */
  List<BatchStory> batches() {
    return batches.values().stream()
        .sorted(Comparator.comparing(BatchStory::sown).thenComparing(BatchStory::name))
        .toList();
  }

  /** Pots held by plants that have no growth model. */
  List<String> otherPots() {
    return untold.values().stream().flatMap(u -> u.pots().stream()).sorted().toList();
  }

  List<Remark> remarks() {
    List<Remark> all = new ArrayList<>(remarks);
    batches.values().forEach(batch -> all.addAll(batch.remarks()));
    return all;
  }

  private void book(List<Entry> day) {
    day.stream().filter(e -> e.event() == Event.SOW).forEach(this::sow);
    day.stream().filter(e -> e.event() != Event.SOW).forEach(this::take);
    checkPots(day);
  }

  private void sow(Entry e) {
    if (batches.containsKey(e.batch()) || untold.containsKey(e.batch())) {
      Optional.ofNullable(batches.get(e.batch())).ifPresent(batch -> batch.take(e));
      return;
    }
    Optional<Crop> crop = catalogue.find(e.crop());
    if (crop.isEmpty()) {
      contradict(e, "a sowing needs a crop of the catalogue, not \"" + e.crop() + "\"");
    } else if (crop.get().plannable()) {
      batches.put(e.batch(), new BatchStory(e, crop.get()));
    } else {
      untold.put(e.batch(), new Untold(new ArrayList<>()));
      remarks.add(
          new Remark(
              e.line(),
              false,
              "%s has no growth model, so %s is not followed; its pots count as taken"
                  .formatted(crop.get().name(), e.batch())));
    }
  }

  private void take(Entry e) {
    BatchStory batch = batches.get(e.batch());
    Untold other = untold.get(e.batch());
    if (batch != null) {
      if (!e.crop().isEmpty() && !e.crop().equals(batch.crop().name())) {
        contradict(e, "%s is %s, not %s".formatted(e.batch(), batch.crop().name(), e.crop()));
        return;
      }
      batch.take(e);
    } else if (other != null) {
      take(e, other);
    } else {
      contradict(e, "nothing was sown under the name " + e.batch() + " by then" + known());
    }
  }

  private static void take(Entry e, Untold batch) {
    switch (e.event()) {
      case MOVE -> batch.pots().addAll(e.place().pots());
      case LIFT, LOST -> {
        if (e.place() instanceof Where.Pots pots) {
          batch.pots().removeAll(pots.names());
        } else {
          batch.pots().clear();
        }
      }
      default -> {}
    }
  }

  private String known() {
    List<String> names = batches.keySet().stream().sorted().toList();
    if (names.isEmpty()) {
      return "; write its sow row first";
    }
    List<String> few = names.subList(0, Math.min(MOST_NAMES, names.size()));
    return "; batches so far: "
        + String.join(", ", few)
        + (few.size() < names.size() ? " and more" : "");
  }

  /** At the end of a day a pot holds one plant, or one clump. */
  private void checkPots(List<Entry> day) {
    Map<String, List<String>> holders = new HashMap<>();
    for (BatchStory batch : batches.values()) {
      for (PlantStory plant : batch.plants()) {
        if (plant.onBench()) {
          holders.computeIfAbsent(plant.pot(), pot -> new ArrayList<>()).add(batch.name());
        }
      }
    }
    untold.forEach(
        (name, batch) ->
            batch
                .pots()
                .forEach(pot -> holders.computeIfAbsent(pot, p -> new ArrayList<>()).add(name)));
    for (Entry e : day) {
      if (e.event() == Event.MOVE) {
        e.place().pots().forEach(pot -> checkPot(e, pot, holders.getOrDefault(pot, List.of())));
      }
    }
  }

  private void checkPot(Entry e, String pot, Collection<String> holders) {
    if (holders.size() > 1) {
      Optional<String> other = holders.stream().filter(name -> !name.equals(e.batch())).findFirst();
      contradict(
          e,
          "%s holds a plant of %s already; write what became of it (lift or lost)"
              .formatted(pot, other.orElse(e.batch())));
    }
  }

  private void tellOfLater(Journal journal, LocalDate today) {
    List<Entry> later =
        journal.entries().stream().filter(entry -> entry.date().isAfter(today)).toList();
    if (!later.isEmpty()) {
      remarks.add(
          new Remark(
              later.get(0).line(),
              false,
              "%s dated after %s and not counted"
                  .formatted(
                      later.size() == 1 ? "this row is" : later.size() + " rows from here on are",
                      today)));
    }
  }

  private void contradict(Entry e, String sentence) {
    remarks.add(new Remark(e.line(), true, sentence));
  }
}
