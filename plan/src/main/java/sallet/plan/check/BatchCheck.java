package sallet.plan.check;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import sallet.crop.Crop;
import sallet.crop.HarvestRule;
import sallet.crop.PlaceDays;
import sallet.crop.SeedCount;
import sallet.plan.Sowing;
import sallet.plan.SowingPlan;

/** What is sown: batches, crops, seeds and emergence. */
final class BatchCheck implements Check {
  /** Germination times nearer to a whole day than this may be rounded either way, d. */
  private static final double WHOLE_DAY = 1e-9;

  @Override
  public void examine(Subject subject, List<Fault> faults) {
    names(subject.plan(), faults);
    for (Sowing sowing : subject.plan().sowings()) {
      if (!subject.calendar().isTaskDay(sowing.date())) {
        faults.add(
            new Fault(
                Rule.SOWING_DAY,
                where(sowing),
                "sowing date",
                "a task day",
                sowing.date().toString()));
      }
      Optional<Crop> crop = subject.catalogue().find(sowing.crop());
      if (crop.isEmpty()
          || !crop.get().name().equals(sowing.crop())
          || !subject.sowable(crop.get())) {
        faults.add(
            new Fault(
                Rule.CROP,
                where(sowing),
                "crop",
                "a crop that can be planned, is wanted and not avoided",
                sowing.crop()));
      }
      subject
          .crop(sowing.crop())
          .ifPresent(
              known -> {
                seeds(sowing, known.harvest().orElseThrow(), faults);
                certainty(subject, sowing, known.harvest().orElseThrow(), faults);
                emergence(subject, sowing, known, faults);
              });
    }
  }

  static String where(Sowing sowing) {
    return "batch " + sowing.batch();
  }

  private static void names(SowingPlan plan, List<Fault> faults) {
    Set<String> names = new HashSet<>();
    plan.standing().forEach(batch -> names.add(batch.batch()));
    LocalDate before = LocalDate.MIN;
    for (Sowing sowing : plan.sowings()) {
      if (!names.add(sowing.batch())) {
        faults.add(
            new Fault(
                Rule.BATCH, where(sowing), "name", "used once", sowing.batch() + " used again"));
      }
      if (sowing.date().isBefore(before)) {
        faults.add(
            new Fault(
                Rule.BATCH,
                where(sowing),
                "order of batches",
                "not before " + before,
                sowing.date().toString()));
      }
      if (sowing.courses().isEmpty()
          || sowing.courses().stream().anyMatch(course -> course.plants() < 1)) {
        faults.add(
            new Fault(Rule.BATCH, where(sowing), "plants", "at least 1 in each course", "none"));
      }
      before = sowing.date();
    }
  }

  private static void seeds(Sowing sowing, HarvestRule rule, List<Fault> faults) {
    int seeds = sowing.cells() * rule.plantsPerPot();
    if (sowing.seeds() != seeds) {
      faults.add(Fault.number(Rule.SEEDS, where(sowing), "seeds", seeds, sowing.seeds()));
    }
    if (sowing.cells() < sowing.plants()) {
      faults.add(Fault.below(Rule.SEEDS, where(sowing), "cells", sowing.plants(), sowing.cells()));
    }
  }

  private static void certainty(
      Subject subject, Sowing sowing, HarvestRule rule, List<Fault> faults) {
    boolean tooFewForOne =
        subject.household().nursery().cells() < SeedCount.cellsFor(1, rule.usableShare());
    if (sowing.plants() < 1 || tooFewForOne) {
      return;
    }
    int cells = SeedCount.cellsFor(sowing.plants(), rule.usableShare());
    if (sowing.cells() < cells) {
      faults.add(Fault.below(Rule.CERTAINTY, where(sowing), "cells", cells, sowing.cells()));
    }
  }

  private static void emergence(Subject subject, Sowing sowing, Crop crop, List<Fault> faults) {
    if (!subject.calendar().holds(sowing.date())) {
      return;
    }
    PlaceDays nursery = subject.surroundings().nursery();
    OptionalDouble days = crop.germination().daysAt(nursery.meanC(nursery.index(sowing.date())));
    if (days.isEmpty()) {
      faults.add(
          new Fault(
              Rule.EMERGENCE,
              where(sowing),
              "emergence",
              "none at the nursery's temperature",
              sowing.emergence().toString()));
      return;
    }
    LocalDate early = emergence(sowing.date(), days.getAsDouble() - WHOLE_DAY);
    LocalDate late = emergence(sowing.date(), days.getAsDouble() + WHOLE_DAY);
    if (!sowing.emergence().equals(early) && !sowing.emergence().equals(late)) {
      faults.add(
          new Fault(
              Rule.EMERGENCE,
              where(sowing),
              "emergence",
              early.toString(),
              sowing.emergence().toString()));
    }
  }

  /** The day a seed sown on a date emerges. */
  static LocalDate emergence(LocalDate sown, double germinationDays) {
    return sown.plusDays((long) Math.ceil(germinationDays));
  }
}
