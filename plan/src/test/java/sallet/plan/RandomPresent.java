package sallet.plan;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import sallet.crop.Catalogue;
import sallet.crop.Crop;
import sallet.crop.HarvestRule;
import sallet.crop.LifeDays;
import sallet.crop.PlantDay;
import sallet.crop.PlantModel;
import sallet.crop.PlantState;
import sallet.crop.Stay;
import sallet.household.Pot;
import sallet.plan.RandomHouseholds.Wish;

/**
 * Invented plants on the bench, in the nursery and in the cells of an invented household: grown
 * there on the growth model, some better and some worse than expected, some picked, some too old.
 */
final class RandomPresent {
  /** Oldest sowing, days before the plan begins. */
  private static final int OLDEST = 100;

  private final SplittableRandom random;
  private final Wish wish;
  private final List<Crop> crops;
  private final Surroundings at;
  private final List<String> freePots;
  private int freePlaces;
  private int freeCells;

  private RandomPresent(long seed, Wish wish, Catalogue catalogue) {
    this.random = new SplittableRandom(seed);
    this.wish = wish;
    this.crops = Question.crops(wish.household().crops(), catalogue);
    TaskCalendar calendar =
        new TaskCalendar(
            wish.household().eaters(), wish.household().absences(), wish.from(), wish.bowls());
    this.at =
        Question.surroundings(
            wish.household(), wish.from().minusDays(OLDEST), OLDEST, OLDEST + calendar.days());
    this.freePots =
        new ArrayList<>(wish.household().bench().pots().stream().map(Pot::name).toList());
    this.freePlaces = wish.household().nursery().places();
    this.freeCells = wish.household().nursery().cells();
  }

  /** What stands in a household, the same for the same seed. */
  static Present of(long seed, Wish wish, Catalogue catalogue) {
    return new RandomPresent(seed, wish, catalogue).present();
  }

  private Present present() {
    List<Present.Plants> plants = new ArrayList<>();
    int batches = crops.isEmpty() ? 0 : random.nextInt(0, 5);
    for (int b = 0; b < batches; b++) {
      addBatch("batch " + b, crops.get(random.nextInt(crops.size())), plants);
    }
    Map<String, Double> inHand = new HashMap<>();
    Map<String, Double> growth = new HashMap<>();
    Map<String, Double> usable = new HashMap<>();
    for (Crop crop : crops) {
      if (random.nextInt(4) == 0) {
        inHand.put(crop.name(), random.nextDouble(0, 80));
      }
      if (random.nextInt(3) == 0) {
        growth.put(crop.name(), random.nextDouble(0.5, 1.2));
      }
      if (random.nextInt(3) == 0) {
        usable.put(crop.name(), random.nextDouble(0.4, 0.98));
      }
    }
    List<String> others =
        freePots.isEmpty() || random.nextInt(5) > 0 ? List.of() : List.of(freePots.get(0));
    return new Present(plants, others, inHand, growth, usable, promises(), random.nextInt(4) == 0);
  }

  private List<Present.Promise> promises() {
    if (crops.isEmpty() || random.nextInt(3) > 0) {
      return List.of();
    }
    LocalDate sown = wish.from().plusDays(random.nextInt(0, 16));
    return List.of(
        new Present.Promise(
            "",
            crops.get(random.nextInt(crops.size())).name(),
            sown,
            sown.plusDays(21),
            wish.household().bench().pots().get(0).name(),
            sown.plusDays(60),
            true,
            random.nextInt(1, 4),
            Map.of()));
  }

  private void addBatch(String batch, Crop crop, List<Present.Plants> plants) {
    LocalDate sown = wish.from().minusDays(random.nextInt(0, OLDEST));
    Optional<LocalDate> expected = Question.emergence(crop, sown, at.cellMeanC());
    if (expected.isEmpty()) {
      return;
    }
    LocalDate emergence = expected.get().plusDays(random.nextInt(0, 3));
    long age = ChronoUnit.DAYS.between(emergence, wish.from());
    for (int part = random.nextInt(1, 3); part > 0; part--) {
      int count = random.nextInt(1, 4);
      if (age >= 14 && !freePots.isEmpty() && random.nextInt(4) > 0) {
        plants.add(inPots(batch, crop, sown, emergence, Math.min(count, freePots.size())));
      } else if (age >= 1 && freePlaces > 0) {
        plants.add(inNursery(batch, crop, sown, emergence, Math.min(count, freePlaces)));
      } else if (age < 10 && freeCells > 0) {
        plants.add(inCells(batch, crop, sown, emergence, Math.min(count, freeCells)));
        return;
      }
    }
  }

  private Present.Plants inPots(
      String batch, Crop crop, LocalDate sown, LocalDate emergence, int count) {
    Collections.swap(freePots, 0, random.nextInt(freePots.size()));
    List<String> pots = new ArrayList<>(freePots.subList(0, count));
    freePots.removeAll(pots);
    LocalDate toNursery = emergence.plusDays(1);
    LocalDate toBench = emergence.plusDays(14);
    int group = at.groupOf(pots.get(0));
    Optional<LocalDate> lastPick =
        random.nextBoolean()
            ? Optional.of(wish.from().minusDays(random.nextInt(1, 12)))
                .filter(day -> day.isAfter(toBench))
            : Optional.empty();
    return plants(
        batch,
        crop,
        count,
        sown,
        emergence,
        Optional.of(toNursery),
        Optional.of(toBench),
        pots,
        0,
        at.stays(sown, toNursery, toBench, group),
        lastPick);
  }

  private Present.Plants inNursery(
      String batch, Crop crop, LocalDate sown, LocalDate emergence, int count) {
    freePlaces -= count;
    LocalDate toNursery = emergence.plusDays(1);
    return plants(
        batch,
        crop,
        count,
        sown,
        emergence,
        Optional.of(toNursery),
        Optional.empty(),
        List.of(),
        0,
        at.stays(sown, toNursery, wish.from().plusDays(400), 0),
        Optional.empty());
  }

  private Present.Plants inCells(
      String batch, Crop crop, LocalDate sown, LocalDate emergence, int count) {
    int cells = random.nextInt(count, freeCells + 1);
    freeCells -= cells;
    return plants(
        batch,
        crop,
        count,
        sown,
        emergence,
        Optional.empty(),
        Optional.empty(),
        List.of(),
        cells,
        at.stays(sown, wish.from().plusDays(400), wish.from().plusDays(401), 0),
        Optional.empty());
  }

  private Present.Plants plants(
      String batch,
      Crop crop,
      int count,
      LocalDate sown,
      LocalDate emergence,
      Optional<LocalDate> toNursery,
      Optional<LocalDate> toBench,
      List<String> pots,
      int cells,
      List<Stay> stays,
      Optional<LocalDate> lastPick) {
    double vigour = random.nextDouble(0.4, 1.3);
    return new Present.Plants(
        batch,
        crop.name(),
        count,
        sown,
        emergence,
        toNursery,
        toBench,
        pots,
        cells,
        vigour,
        state(crop, emergence, stays, vigour),
        lastPick);
  }

  /** Grown to the end of the first day, then seen larger or smaller, some of it picked. */
  private PlantState state(Crop crop, LocalDate emergence, List<Stay> stays, double vigour) {
    HarvestRule rule = crop.harvest().orElseThrow();
    PlantState state = PlantState.atEmergence(crop.growth().orElseThrow());
    LocalDate until = wish.from().plusDays(1);
    if (!until.isAfter(emergence)) {
      return state;
    }
    for (PlantDay day :
        LifeDays.of(crop.growth().orElseThrow(), rule, vigour, emergence, stays, until)) {
      state = PlantModel.step(state, crop.growth().orElseThrow(), day);
    }
    double size = random.nextDouble(0.6, 1.4);
    state =
        new PlantState(
            state.shootG() * size,
            state.rootG() * random.nextDouble(0.6, 1.4),
            state.reserveG() * size,
            state.leafCm2() * size,
            state.leaves());
    return random.nextInt(3) == 0 ? state.pickedLeaves(random.nextDouble(0, 0.6)) : state;
  }
}
