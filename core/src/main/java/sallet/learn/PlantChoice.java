package sallet.learn;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import sallet.journal.Entry;
import sallet.journal.Where;

/**
 * Which plants of a batch a row speaks of.
 *
 * @param batch name of the batch
 * @param plants plants that left their cells
 * @param remarks takes what is wrong or was assumed
 */
record PlantChoice(String batch, List<PlantStory> plants, List<Remark> remarks) {

  /** All plants a row may speak of; none, with a contradiction, when none fits. */
  List<PlantStory> all(Entry e, Predicate<PlantStory> fits) {
    List<PlantStory> found = new ArrayList<>();
    if (e.place() instanceof Where.Pots pots) {
      for (String pot : pots.names()) {
        Optional<PlantStory> there =
            plants.stream().filter(p -> p.onBench() && p.pot().equals(pot)).findFirst();
        if (there.isEmpty()) {
          contradict(e, "no plant of %s stands in %s then".formatted(batch, pot));
          return List.of();
        }
        found.add(there.get());
      }
    } else if (e.place() instanceof Where.Nursery) {
      plants.stream().filter(fits).filter(PlantStory::inNursery).forEach(found::add);
    } else {
      found.addAll(benchFirst(fits));
    }
    if (found.isEmpty()) {
      contradict(e, "no plant of %s stands there then; write its move first".formatted(batch));
    }
    return found;
  }

  /** As many of them as the row counts: those longest unpicked. */
  List<PlantStory> counted(Entry e, Predicate<PlantStory> fits) {
    List<PlantStory> found = all(e, fits);
    int count = e.count().orElse(found.size());
    if (found.isEmpty() || count == found.size()) {
      return found;
    }
    if (count > found.size() || !e.place().pots().isEmpty()) {
      contradict(
          e,
          "%s of %s, but %d stand there; name one pot for each or leave the count out"
              .formatted(plants(count), batch, found.size()));
      return List.of();
    }
    List<PlantStory> first =
        found.stream().sorted(Comparator.comparing(PlantStory::lastPick)).limit(count).toList();
    List<String> pots = first.stream().map(PlantStory::pot).filter(p -> !p.isEmpty()).toList();
    if (!pots.isEmpty()) {
      remarks.add(
          new Remark(
              e.line(),
              false,
              "no pot is named; those longest unpicked were taken: " + String.join("+", pots)));
    }
    return first;
  }

  /** Plants on the bench that fit, or all that do when none is there. */
  private List<PlantStory> benchFirst(Predicate<PlantStory> fits) {
    List<PlantStory> all = plants.stream().filter(fits).toList();
    List<PlantStory> bench = all.stream().filter(PlantStory::onBench).toList();
    return bench.isEmpty() ? all : bench;
  }

  private void contradict(Entry e, String sentence) {
    remarks.add(new Remark(e.line(), true, sentence));
  }

  static String plants(int count) {
    return count == 1 ? "1 plant" : count + " plants";
  }
}
