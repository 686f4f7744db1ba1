package sallet.plan.check;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import sallet.crop.Crop;
import sallet.crop.HarvestRule;
import sallet.crop.PlaceDays;
import sallet.crop.Stay;
import sallet.plan.Present;
import sallet.plan.SowingPlan.PotGroup;

/**
 * The first bowl day on which anything sown within the plan could be eaten, found by growing
 * unpicked plants: every crop that may be sown, every task day, the earliest move to the nursery
 * and every group of pots.
 */
final class Reach {
  private final Subject subject;
  private final List<LocalDate> taskDays;

  Reach(Subject subject) {
    this.subject = subject;
    this.taskDays = subject.calendar().taskDays();
  }

  /** The first bowl day that plants can serve which move to the bench as soon as they may. */
  Optional<LocalDate> withEarliestMoves() {
    return firstBowlDay(1);
  }

  /** The first bowl day that plants can serve which move to the bench on any day they may. */
  Optional<LocalDate> withAnyMoves() {
    return firstBowlDay(taskDays.size());
  }

  private Optional<LocalDate> firstBowlDay(int movesToTry) {
    LocalDate best = subject.calendar().last().plusDays(1);
    List<Crop> crops = subject.sowableCrops();
    for (LocalDate sown : taskDays) {
      for (Crop crop : crops) {
        best = earlier(best, crop, sown, movesToTry);
      }
    }
    for (Present.Plants plants : subject.present().plants()) {
      Optional<Crop> crop = subject.crop(plants.crop());
      if (crop.isPresent()) {
        best = earlier(best, crop.get(), plants, movesToTry);
      }
    }
    return subject.calendar().holds(best) ? Optional.of(best) : Optional.empty();
  }

  /** The same for plants that stand already. */
  private LocalDate earlier(LocalDate best, Crop crop, Present.Plants plants, int movesToTry) {
    LocalDate from = subject.calendar().from();
    LocalDate up = plants.emergence();
    LocalDate oldest = up.plusDays(MoveCheck.OLDEST_TO_BENCH);
    List<LocalDate> moves =
        plants.toBench().isPresent()
            ? List.of(plants.toBench().get())
            : taskDaysFrom(up.plusDays(MoveCheck.YOUNGEST_TO_BENCH)).limit(movesToTry).toList();
    LocalDate found = best;
    for (LocalDate toBench : moves) {
      boolean tooLate = toBench.isAfter(oldest) && !toBench.equals(taskDays.get(0));
      LocalDate first = plants.toBench().isPresent() ? rested(plants, from) : toBench.plusDays(1);
      LocalDate toNursery = plants.toNursery().orElse(taskDaysFrom(up).findFirst().orElse(toBench));
      for (PotGroup group : subject.plan().groups()) {
        boolean own =
            plants.pots().isEmpty() || group.pots().stream().anyMatch(plants.pots()::contains);
        if (own && (plants.toBench().isPresent() || !tooLate)) {
          List<Stay> stays = LifeCheck.stays(subject, group, plants.sown(), toNursery, toBench);
          found =
              firstHarvest(
                      crop, Life.Start.of(plants, crop, from), stays, first, found.minusDays(1))
                  .orElse(found);
        }
      }
    }
    return found;
  }

  private static LocalDate rested(Present.Plants plants, LocalDate from) {
    return plants
        .lastPick()
        .map(day -> day.plusDays(StandingCheck.REST_DAYS))
        .filter(from::isBefore)
        .orElse(from);
  }

  private LocalDate earlier(LocalDate best, Crop crop, LocalDate sown, int movesToTry) {
    PlaceDays nursery = subject.surroundings().nursery();
    OptionalDouble days = crop.germination().daysAt(nursery.meanC(nursery.index(sown)));
    if (days.isEmpty()) {
      return best;
    }
    LocalDate emergence = BatchCheck.emergence(sown, days.getAsDouble());
    LocalDate youngest = emergence.plusDays(MoveCheck.YOUNGEST_TO_BENCH);
    LocalDate oldest = emergence.plusDays(MoveCheck.OLDEST_TO_BENCH);
    List<LocalDate> toBenchDays = taskDaysFrom(youngest).limit(movesToTry).toList();
    LocalDate found = best;
    for (LocalDate toBench : toBenchDays) {
      if (toBench.isAfter(oldest) || !toBench.isBefore(found)) {
        break;
      }
      LocalDate firstAfterSowing = emergence.isAfter(sown) ? emergence : sown.plusDays(1);
      LocalDate toNursery = taskDaysFrom(firstAfterSowing).findFirst().orElse(toBench);
      for (PotGroup group : subject.plan().groups()) {
        List<Stay> stays = LifeCheck.stays(subject, group, sown, toNursery, toBench);
        Life.Start start = Life.Start.atEmergence(crop, emergence, subject.vigour(crop));
        found =
            firstHarvest(crop, start, stays, toBench.plusDays(1), found.minusDays(1)).orElse(found);
      }
    }
    return found;
  }

  private Stream<LocalDate> taskDaysFrom(LocalDate first) {
    return taskDays.stream().filter(day -> !day.isBefore(first));
  }

  /** The first bowl day up to {@code horizon} on which an unpicked plant can be eaten. */
  private Optional<LocalDate> firstHarvest(
      Crop crop, Life.Start start, List<Stay> stays, LocalDate first, LocalDate horizon) {
    LocalDate emergence = start.emergence();
    LocalDate own = Life.lastBenchDay(crop, emergence, stays, horizon);
    LocalDate grace = subject.calendar().from().plusDays(LifeCheck.GRACE_DAYS);
    boolean stands = stays.get(stays.size() - 1).from().isBefore(subject.calendar().from());
    LocalDate leave = stands && own.isBefore(grace) ? grace : own;
    LocalDate last = leave.isBefore(horizon) ? leave : horizon;
    if (last.isBefore(first) || last.isBefore(start.first())) {
      return Optional.empty();
    }
    Life life = Life.grow(crop, start, stays, last, Map.of());
    HarvestRule rule = crop.harvest().orElseThrow();
    LocalDate firstPick = emergence.plusDays(HarvestRule.FIRST_PICK_DAYS);
    return subject.calendar().bowlDays().stream()
        .filter(day -> !day.isBefore(first) && !day.isAfter(last))
        .filter(subject.calendar()::isPickDay)
        .filter(
            day -> {
              double standing = life.standingG(day);
              boolean leaves =
                  rule.leafPick()
                      && !day.isBefore(firstPick)
                      && standing >= HarvestRule.PICK_FROM_G;
              return leaves || life.plantG(day) >= rule.liftFromG();
            })
        .findFirst();
  }
}
