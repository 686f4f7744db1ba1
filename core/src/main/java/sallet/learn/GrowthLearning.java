package sallet.learn;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import sallet.crop.HarvestRule;
import sallet.crop.PlantState;
import sallet.crop.forecast.Spread;
import sallet.learn.GrowingPlant.Vigour;
import sallet.learn.LinearGaussian.Posterior;
import sallet.learn.LinearGaussian.Reading;
import sallet.learn.LinearGaussian.Term;
import sallet.learn.PlantReading.Kind;

/**
 * Learns how well plants grow here. The logarithm of a plant's factor on assimilation is the usual
 * one plus a room's part, a crop's, a batch's and its own, all normal and independent beforehand;
 * each pick adds the logarithm of a regrowth factor. A reading bears on the factor with the
 * elasticity the growth model gives it; the model is made straight anew around what was found
 * (Gauss-Newton) until nothing moves.
 */
final class GrowthLearning {
  /** Standard deviation of the room's part. Judgement. */
  static final double ROOM_SPREAD = 0.15;

  /** The crop's part: with the room's it gives what is not known of a household. */
  static final double CROP_SPREAD =
      Math.sqrt(Math.log1p(Math.pow(Spread.PRIOR.vigourCv(), 2)) - ROOM_SPREAD * ROOM_SPREAD);

  /** The batch's part. Judgement. */
  static final double BATCH_SPREAD = 0.08;

  /** The plant's own part. */
  static final double PLANT_SPREAD = Math.sqrt(Math.log1p(Math.pow(Spread.PRIOR.plantCv(), 2)));

  /** Standard deviation of the logarithm of the regrowth factor of one pick. Judgement. */
  static final double REGROWTH_SPREAD = 0.1;

  /** Logarithm of the usual factor. */
  static final double USUAL = Math.log(Spread.PRIOR.vigour());

  /** A reading further than so many deviations of plant and scale is doubted. Judgement. */
  private static final double DOUBTED = 3;

  /**
   * Further than so many it is never believed: grams for kilograms, a digit too many. Judgement.
   */
  private static final double IMPOSSIBLE = 6;

  private static final int ROUNDS = 10;
  private static final double STEP = 0.02;
  private static final double LEAST_ELASTICITY = 0.1;
  private static final double LARGEST_SURPRISE = 1.5;

  private final LinearGaussian unknowns = new LinearGaussian();
  private final int room = unknowns.unknown(ROOM_SPREAD);
  private final int regrowth = unknowns.unknown(REGROWTH_SPREAD);
  private final Map<String, Integer> crops = new HashMap<>();
  private final Map<FollowedBatch, Integer> batches = new HashMap<>();
  private final Map<PlantStory, Integer> plants = new HashMap<>();
  private final List<Read> reads = new ArrayList<>();
  private final List<Remark> remarks = new ArrayList<>();
  private Posterior posterior = unknowns.after(List.of());

  /** A reading of plants of a batch. */
  private record Read(FollowedBatch batch, PlantReading reading) {}

  /**
   * A normal belief about a logarithm.
   *
   * @param mean of the logarithm
   * @param variance of the logarithm
   */
  record Belief(double mean, double variance) {
    double sd() {
      return Math.sqrt(variance);
    }
  }

  GrowthLearning(List<FollowedBatch> followed) {
    List<Read> all =
        followed.stream()
            .flatMap(batch -> batch.story().readings().stream().map(one -> new Read(batch, one)))
            .toList();
    List<Read> doubted = all.stream().filter(read -> !within(read, DOUBTED)).toList();
    List<Read> possible = doubted.stream().filter(read -> within(read, IMPOSSIBLE)).toList();
    List<Read> out =
        doubted.stream()
            .filter(read -> !possible.contains(read) || !confirmed(read, possible))
            .toList();
    out.forEach(read -> remarks.add(leftOut(read)));
    all.stream().filter(read -> !out.contains(read)).forEach(this::add);
    settle();
    List<Read> larger = followed.stream().flatMap(this::largerThanThought).toList();
    if (!larger.isEmpty()) {
      larger.forEach(this::add);
      settle();
    }
  }

  private void add(Read read) {
    crops.computeIfAbsent(read.batch().story().crop().name(), c -> unknowns.unknown(CROP_SPREAD));
    batches.computeIfAbsent(read.batch(), b -> unknowns.unknown(BATCH_SPREAD));
    for (PlantStory plant : read.reading().plants()) {
      plants.computeIfAbsent(plant, p -> unknowns.unknown(PLANT_SPREAD));
    }
    reads.add(read);
  }

  private void settle() {
    posterior = unknowns.after(List.of());
    boolean moves = !reads.isEmpty();
    for (int round = 0; round < ROUNDS && moves; round++) {
      Posterior before = posterior;
      posterior = unknowns.after(reads.stream().flatMap(r -> straight(r).stream()).toList());
      moves = !posterior.nearly(before);
    }
  }

  /** The reading as a weighted sum of the unknowns, straight about what is believed now. */
  private Optional<Reading> straight(Read read) {
    double logValue = Math.log(value(read, 0, 0));
    double elasticity = (Math.log(value(read, STEP, 0)) - logValue) / STEP;
    if (!(elasticity >= LEAST_ELASTICITY)) {
      return Optional.empty();
    }
    double onRegrowth = (Math.log(value(read, 0, STEP)) - logValue) / STEP;
    List<Term> terms = terms(read, onRegrowth / elasticity);
    double surprise = Math.log(read.reading().value()) - logValue;
    double held = Math.max(-LARGEST_SURPRISE, Math.min(LARGEST_SURPRISE, surprise));
    return Optional.of(
        new Reading(
            terms,
            posterior.mean(terms) + held / elasticity,
            read.reading().kind().sd() / elasticity));
  }

  private List<Term> terms(Read read, double onRegrowth) {
    List<PlantStory> of = read.reading().plants();
    List<Term> terms = new ArrayList<>(terms(read.batch(), Optional.empty()));
    terms.add(new Term(regrowth, onRegrowth));
    of.forEach(
        plant ->
            Optional.ofNullable(plants.get(plant))
                .ifPresent(i -> terms.add(new Term(i, 1.0 / of.size()))));
    return terms;
  }

  private List<Term> terms(FollowedBatch batch, Optional<PlantStory> plant) {
    return Stream.of(
            Optional.of(room),
            Optional.ofNullable(crops.get(batch.story().crop().name())),
            Optional.ofNullable(batches.get(batch)),
            plant.flatMap(p -> Optional.ofNullable(plants.get(p))))
        .flatMap(Optional::stream)
        .map(unknown -> new Term(unknown, 1))
        .toList();
  }

  private double logVigour(FollowedBatch batch, PlantStory plant) {
    return USUAL + posterior.mean(terms(batch, Optional.of(plant)));
  }

  private double logRegrowth() {
    return posterior.mean(List.of(new Term(regrowth, 1)));
  }

  /** What the reading would be with other factors than those believed, by their logarithms. */
  private double value(Read read, double more, double moreRegrowth) {
    PlantReading reading = read.reading();
    return IntStream.range(0, reading.plants().size())
        .mapToDouble(
            i -> {
              PlantStory plant = reading.plants().get(i);
              Vigour vigour =
                  new Vigour(logVigour(read.batch(), plant) + more, logRegrowth() + moreRegrowth);
              GrowingPlant grown = read.batch().grown(plant);
              PlantState state =
                  grown
                      .live(vigour, List.of(), reading.date(), reading.picksBefore().get(i))
                      .state();
              return reading.kind() == Kind.MEASURED
                  ? grown.widthCm(state, reading.date())
                  : grown.freshG(state, reading.date());
            })
        .average()
        .orElseThrow();
  }

  /** Whether a reading lies within so many deviations of what was thought beforehand. */
  private boolean within(Read read, double deviations) {
    double far = deviations * Math.sqrt(prior() + PLANT_SPREAD * PLANT_SPREAD);
    double noise = Math.exp(deviations * read.reading().kind().sd());
    return read.reading().value() >= value(read, -far, 0) / noise
        && read.reading().value() <= value(read, far, 0) * noise;
  }

  /** Whether another plant of the same crop is doubted too, and errs to the same side. */
  private boolean confirmed(Read read, List<Read> possible) {
    return possible.stream()
        .anyMatch(
            other ->
                other.batch().story().crop().equals(read.batch().story().crop())
                    && large(other) == large(read)
                    && Collections.disjoint(other.reading().plants(), read.reading().plants()));
  }

  private boolean large(Read read) {
    return read.reading().value() > value(read, 0, 0);
  }

  private Remark leftOut(Read read) {
    String unit = read.reading().kind() == Kind.MEASURED ? "cm" : "g";
    return new Remark(
        read.reading().line(),
        false,
        "%.3g %s is %s than a plant of %s can be here (about %.3g %s); the row is left out"
            .formatted(
                read.reading().value(),
                unit,
                large(read) ? "more" : "less",
                read.batch().story().name(),
                value(read, 0, 0),
                unit));
  }

  private static double prior() {
    return ROOM_SPREAD * ROOM_SPREAD + CROP_SPREAD * CROP_SPREAD + BATCH_SPREAD * BATCH_SPREAD;
  }

  /** Plants that gave more leaf than they are thought to have had: they must have been larger. */
  private Stream<Read> largerThanThought(FollowedBatch batch) {
    List<Read> found = new ArrayList<>();
    for (PlantStory plant : batch.story().plants()) {
      Vigour vigour = new Vigour(logVigour(batch, plant), logRegrowth());
      List<PlantStory.Pick> picks = plant.picks();
      List<StandingGroup.Taken> taken =
          picks.isEmpty()
              ? List.of()
              : batch
                  .grown(plant)
                  .live(vigour, List.of(), picks.get(picks.size() - 1).date(), picks.size())
                  .taken();
      for (int i = 0; i < taken.size(); i++) {
        if (taken.get(i).share() >= GrowingPlant.MOST_TAKEN) {
          double edible = batch.story().rule().edibleShare();
          found.add(
              new Read(
                  batch,
                  new PlantReading(
                      0,
                      taken.get(i).date(),
                      Kind.PICKED,
                      List.of(plant),
                      List.of(i),
                      taken.get(i).edibleG() / HarvestRule.LARGEST_PICK / edible)));
        }
      }
    }
    return found.stream();
  }

  /** What was wrong with single readings. */
  List<Remark> remarks() {
    return remarks;
  }

  /** Weighings of one plant alone, in order of time. */
  List<PlantReading> weighings(PlantStory plant) {
    return reads.stream()
        .map(Read::reading)
        .filter(r -> r.kind() == Kind.WEIGHED && r.plants().equals(List.of(plant)))
        .toList();
  }

  /** Readings that count for a crop. */
  int readings(String crop) {
    return (int) reads.stream().filter(r -> crop.equals(r.batch().story().crop().name())).count();
  }

  /** Readings that count. */
  int readings() {
    return reads.size();
  }

  /** Readings of plants that had been picked. */
  int readingsAfterPicks() {
    return (int)
        reads.stream()
            .filter(r -> r.reading().picksBefore().stream().anyMatch(picks -> picks > 0))
            .count();
  }

  /** Factor of a crop that was never weighed here. */
  Belief anyCrop() {
    return belief(List.of(new Term(room, 1)), CROP_SPREAD * CROP_SPREAD);
  }

  /** Factor of a crop on this bench. */
  Belief crop(String name) {
    return Optional.ofNullable(crops.get(name))
        .map(crop -> belief(List.of(new Term(room, 1), new Term(crop, 1)), 0))
        .orElseGet(this::anyCrop);
  }

  /**
   * Factor of a plant of a batch.
   *
   * @param plant the plant; empty for a seedling still in its cell
   * @param onRegrowth weight of the logarithm of the regrowth factor that is added to it
   */
  Belief plant(FollowedBatch batch, Optional<PlantStory> plant, double onRegrowth) {
    List<Term> terms = new ArrayList<>(terms(batch, plant));
    terms.add(new Term(regrowth, onRegrowth));
    double unread =
        (crops.containsKey(batch.story().crop().name()) ? 0 : CROP_SPREAD * CROP_SPREAD)
            + (batches.containsKey(batch) ? 0 : BATCH_SPREAD * BATCH_SPREAD)
            + (plant.isPresent() && plants.containsKey(plant.get())
                ? 0
                : PLANT_SPREAD * PLANT_SPREAD);
    return belief(terms, unread);
  }

  private Belief belief(List<Term> terms, double unreadVariance) {
    return new Belief(USUAL + posterior.mean(terms), posterior.variance(terms) + unreadVariance);
  }

  /** Logarithm of the regrowth factor. */
  Belief regrowth() {
    List<Term> one = List.of(new Term(regrowth, 1));
    return new Belief(posterior.mean(one), posterior.variance(one));
  }
}
