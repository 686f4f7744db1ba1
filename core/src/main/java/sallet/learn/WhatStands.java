package sallet.learn;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.hipparchus.distribution.continuous.NormalDistribution;
import sallet.crop.Catalogue;
import sallet.crop.Emergence;
import sallet.crop.SeedLot;
import sallet.crop.forecast.Spread;
import sallet.journal.Journal;
import sallet.learn.EmergencePace.Look;
import sallet.learn.EmergencePace.Pace;
import sallet.learn.GrowthLearning.Belief;

/** Works out what a journal comes to: seed counts, then emergence, then growth, then each plant. */
final class WhatStands {
  /** A sowing is judged when its usual time has passed by half. Judgement. */
  private static final double LATE = 1.5;

  /** Longer than so many times the usual time a sowing is not waited for. Judgement. */
  private static final double LATEST = 2;

  private final GrowingPlaces places;
  private final LocalDate today;
  private final Ledger ledger;
  private final List<Look> looks;
  private final Pace pace;

  WhatStands(Journal journal, Catalogue catalogue, GrowingPlaces places, LocalDate today) {
    this.places = places;
    this.today = today;
    this.ledger = Ledger.of(journal, catalogue, today);
    this.looks = looks();
    this.pace = EmergencePace.of(looks, EmergencePace.PRIOR_SPREAD, EmergencePace.SOWING_SPREAD);
  }

  Standing standing() {
    Map<String, LearnedShare> seed = seed();
    List<FollowedBatch> followed =
        ledger.batches().stream()
            .map(story -> new FollowedBatch(story, emergence(story), places, today))
            .toList();
    GrowthLearning growth = new GrowthLearning(followed);
    Learned learned = learned(growth, seed);
    List<StandingBatch> batches = new ArrayList<>();
    for (FollowedBatch batch : followed) {
      SeedLot lot = learned.seedOf(batch.story().crop()).now();
      List<StandingGroup> groups =
          new BatchNow(batch, growth, lot, up(batch.story()), judged(batch.story()), today)
              .groups(List.copyOf(places.pots().keySet()));
      if (!groups.isEmpty()) {
        batches.add(batch(batch, groups));
      }
    }
    return new Standing(
        today, batches, lives(followed, growth), ledger.otherPots(), learned, remarks(growth));
  }

  private List<BenchLife> lives(List<FollowedBatch> followed, GrowthLearning growth) {
    List<BenchLife> lives = new ArrayList<>();
    for (FollowedBatch batch : followed) {
      for (PlantStory plant : batch.story().plants()) {
        LocalDate last = plant.ended().orElse(today);
        if (plant.toBench().isPresent() && !batch.emergence().isAfter(last)) {
          lives.add(
              new BenchLife(
                  batch.story().name(),
                  batch.story().crop(),
                  plant.pot(),
                  batch.emergence(),
                  plant.toBench().get(),
                  plant.ended(),
                  new PlantNow(batch, Optional.of(plant), growth, last).evenings()));
        }
      }
    }
    return lives;
  }

  private static StandingBatch batch(FollowedBatch batch, List<StandingGroup> groups) {
    BatchStory story = batch.story();
    return new StandingBatch(
        story.name(),
        story.crop(),
        story.sown(),
        story.seeds(),
        story.cells(),
        batch.emergence(),
        story.cameUp().isPresent(),
        groups);
  }

  /** Median days from sowing to emergence as the handbooks have it. */
  private OptionalDouble usualDays(BatchStory story) {
    int day = places.nursery().index(story.sown());
    return story.crop().germination().daysAt(places.nursery().meanC(day));
  }

  private static double daysSinceSowing(BatchStory story, LocalDate day) {
    return ChronoUnit.DAYS.between(story.sown(), day);
  }

  private List<Look> looks() {
    boolean told = ledger.batches().stream().anyMatch(story -> story.cameUp().isPresent());
    List<Look> all = new ArrayList<>();
    for (BatchStory story : ledger.batches()) {
      OptionalDouble usual = usualDays(story);
      if (usual.isEmpty()) {
        continue;
      }
      double most = LATEST * usual.getAsDouble();
      if (story.cameUp().isPresent()) {
        double by = Math.max(1, daysSinceSowing(story, story.cameUp().get()));
        if (by <= most && by >= usual.getAsDouble() / LATEST) {
          all.add(new Look(usual.getAsDouble(), by - 1, by));
        }
      } else if (told && story.movedOut() + story.lostInCells() == 0) {
        double after = Math.min(most, daysSinceSowing(story, today));
        all.add(new Look(usual.getAsDouble(), after, Double.POSITIVE_INFINITY));
      }
    }
    return all;
  }

  private OptionalDouble reckonedDays(BatchStory story) {
    OptionalDouble usual = usualDays(story);
    return usual.isEmpty() ? usual : OptionalDouble.of(usual.getAsDouble() / Math.exp(pace.mean()));
  }

  /** First day of growth: as written down, else as reckoned, but never after the first move. */
  private LocalDate emergence(BatchStory story) {
    if (story.cameUp().isPresent()) {
      return story.seenUp().orElseThrow();
    }
    OptionalDouble days = reckonedDays(story);
    LocalDate reckoned =
        days.isEmpty()
            ? today.plusDays(1)
            : story.sown().plusDays(Math.max(1, (long) Math.ceil(days.getAsDouble() - 1e-9)));
    return story.seenUp().filter(seen -> seen.isBefore(reckoned)).orElse(reckoned);
  }

  /** Share of the seedlings to come that should be up by today. */
  private double up(BatchStory story) {
    OptionalDouble days = reckonedDays(story);
    double since = daysSinceSowing(story, today);
    return days.isEmpty() || since <= 0
        ? 0
        : new NormalDistribution()
            .cumulativeProbability(Math.log(since / days.getAsDouble()) / Emergence.SPREAD);
  }

  /** Whether nothing more is expected to come up. */
  private boolean judged(BatchStory story) {
    OptionalDouble days = reckonedDays(story);
    return story.movedOut() > 0
        || story.lostInCells() == story.cells()
        || (days.isPresent() && daysSinceSowing(story, today) >= LATE * days.getAsDouble());
  }

  private Map<String, LearnedShare> seed() {
    Map<String, LearnedShare> seed = new LinkedHashMap<>();
    for (BatchStory story : ledger.batches()) {
      LearnedShare before =
          seed.computeIfAbsent(
              story.crop().name(),
              name -> LearnedShare.prior(SeedLot.expecting(story.crop().usableShare())));
      seed.put(story.crop().name(), counted(story, before));
    }
    return seed;
  }

  private LearnedShare counted(BatchStory story, LearnedShare before) {
    if (!story.sownSingly() || !judged(story)) {
      return before;
    }
    boolean failed = story.movedOut() == 0 && story.lostInCells() == story.cells();
    if (story.counted().isPresent() || failed) {
      int came = story.counted().orElse(0);
      return before.with(story.cells(), came, before.now().seen(came, story.cells()));
    }
    return story.movedOut() == 0
        ? before
        : before.with(
            story.cells(),
            story.movedOut(),
            SeedCounts.atLeast(before.now(), story.movedOut(), story.cells()));
  }

  private Learned learned(GrowthLearning growth, Map<String, LearnedShare> seed) {
    Map<String, LearnedFactor> crops = new LinkedHashMap<>();
    for (BatchStory story : ledger.batches()) {
      String crop = story.crop().name();
      crops.computeIfAbsent(crop, name -> factor(growth.readings(name), growth.crop(name)));
    }
    Belief regrowth = growth.regrowth();
    return new Learned(
        factor(growth.readings(), growth.anyCrop()),
        crops,
        new LearnedFactor(
            1,
            GrowthLearning.REGROWTH_SPREAD,
            growth.readingsAfterPicks(),
            Math.exp(regrowth.mean()),
            regrowth.sd()),
        new LearnedFactor(
            1, EmergencePace.PRIOR_SPREAD, looks.size(), Math.exp(pace.mean()), pace.sd()),
        seed);
  }

  private static LearnedFactor factor(int readings, Belief now) {
    return new LearnedFactor(
        Spread.PRIOR.vigour(),
        Math.hypot(GrowthLearning.ROOM_SPREAD, GrowthLearning.CROP_SPREAD),
        readings,
        Math.exp(now.mean()),
        now.sd());
  }

  private List<Remark> remarks(GrowthLearning growth) {
    return Stream.of(ledger.remarks(), growth.remarks(), coldSowings())
        .flatMap(List::stream)
        .sorted(
            Comparator.comparing((Remark remark) -> !remark.contradiction())
                .thenComparingInt(Remark::line))
        .toList();
  }

  private List<Remark> coldSowings() {
    return ledger.batches().stream()
        .filter(story -> usualDays(story).isEmpty() && story.seenUp().isEmpty())
        .map(
            story ->
                new Remark(
                    story.line(),
                    false,
                    "%s does not come up at the shelf's %.0f °C; %s waits for an emerge row"
                        .formatted(
                            story.crop().name(),
                            places.nursery().meanC(places.nursery().index(story.sown())),
                            story.name())))
        .toList();
  }
}
