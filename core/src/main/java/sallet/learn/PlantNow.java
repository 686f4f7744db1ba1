package sallet.learn;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sallet.crop.Emergence;
import sallet.crop.PlantState;
import sallet.crop.forecast.Band;
import sallet.learn.GrowingPlant.Lived;
import sallet.learn.GrowingPlant.Scaling;
import sallet.learn.GrowingPlant.Vigour;
import sallet.learn.GrowthLearning.Belief;

/**
 * One plant today: lived with the factor believed of it, put right by its weighings, with what is
 * not known of it.
 */
final class PlantNow {
  /** How far a plant strays from a steady factor, standard deviation of a logarithm. Judgement. */
  private static final double STRAY = 0.09;

  /** A plant on the kitchen scale, the same: a drop of water, a gram of reading. Judgement. */
  private static final double SCALE = 0.04;

  /**
   * Days in which it forgets how it strayed: its variance after a weighing is 1 - exp(-2 t / this)
   * of the whole (Uhlenbeck and Ornstein 1930, Physical Review 36:823-841). Judgement.
   */
  private static final double STRAY_DAYS = 14;

  /** Day of emergence when somebody looked, standard deviation, d. Judgement. */
  private static final double LOOKED_DAYS = 0.5;

  private static final double STEP = 0.02;

  private final FollowedBatch batch;
  private final Optional<PlantStory> story;
  private final GrowingPlant plant;
  private final GrowthLearning growth;
  private final LocalDate today;
  private final Vigour vigour;
  private final List<Scaling> scalings = new ArrayList<>();
  private double scaledVariance;

  PlantNow(
      FollowedBatch batch, Optional<PlantStory> story, GrowthLearning growth, LocalDate today) {
    this.batch = batch;
    this.story = story;
    this.plant = story.map(batch::grown).orElseGet(() -> batch.inCell(batch.emergence()));
    this.growth = growth;
    this.today = today;
    this.vigour = new Vigour(growth.plant(batch, story, 0).mean(), growth.regrowth().mean());
    story.map(growth::weighings).orElse(List.of()).forEach(this::weigh);
  }

  /** Puts the plant right by a weighing: nearly all the way, as scales err less than plants. */
  private void weigh(PlantReading weighing) {
    Instant then = new Instant(weighing.date(), weighing.picksBefore().get(0));
    double surprise = Math.log(weighing.value()) - logFresh(plant, vigour, scalings, then);
    double unknown = variance(then, STEP);
    double gain = unknown / (unknown + SCALE * SCALE);
    scalings.add(new Scaling(then.date(), then.picks(), gain * surprise));
    scaledVariance = gain * SCALE * SCALE;
  }

  /** The end of a day, after so many picks. */
  private record Instant(LocalDate date, int picks) {}

  GrowingPlant plant() {
    return plant;
  }

  double vigourMedian() {
    return Math.exp(vigour.log());
  }

  Lived lived() {
    return plant.live(vigour, scalings, today, plant.picks());
  }

  /** The plant at the end of each day from emergence on. */
  List<PlantState> evenings() {
    List<PlantState> evenings = new ArrayList<>();
    plant.live(vigour, scalings, today, plant.picks(), evenings::add);
    return evenings;
  }

  /**
   * Its fresh grams. A plant that was picked by the scale may have little left when it was smaller
   * than thought, so the two ends are reckoned each for itself.
   */
  Band freshG() {
    double median = plant.freshG(lived().state(), today);
    return new Band(
        median * Math.exp(-LearnedFactor.TENTH * spread(-1)),
        median,
        median * Math.exp(LearnedFactor.TENTH * spread(1)));
  }

  /** Standard deviation of the logarithm of its fresh grams, the mean of both sides. */
  double spread() {
    return (spread(-1) + spread(1)) / 2;
  }

  private double spread(int side) {
    double tenth = LearnedFactor.TENTH * growth.plant(batch, story, 0).sd();
    return Math.sqrt(variance(new Instant(today, plant.picks()), side * tenth));
  }

  private double variance(Instant then, double step) {
    double onFactor = slope(then, step);
    double onRegrowth = regrowthSlope(then);
    if (scalings.isEmpty()) {
      return STRAY * STRAY + emergenceVariance(then) + factorVariance(onFactor, onRegrowth);
    }
    Scaling last = scalings.get(scalings.size() - 1);
    Instant weighed = new Instant(last.date(), last.picksBefore());
    double onSize = onSize(last, then);
    double since = ChronoUnit.DAYS.between(last.date(), then.date());
    return onSize * onSize * scaledVariance
        + STRAY * STRAY * -Math.expm1(-2 * since / STRAY_DAYS)
        + factorVariance(
            onFactor - onSize * slope(weighed, step), onRegrowth - onSize * regrowthSlope(weighed));
  }

  private double factorVariance(double onFactor, double onRegrowth) {
    double weight = onFactor == 0 ? 0 : onRegrowth / onFactor;
    Belief belief = growth.plant(batch, story, weight);
    return onFactor * onFactor * belief.variance();
  }

  /** What a step of the logarithm of its factor does to that of its fresh grams, by the step. */
  private double slope(Instant then, double step) {
    return (logFresh(plant, vigour.plus(step), scalings, then)
            - logFresh(plant, vigour, scalings, then))
        / step;
  }

  private double regrowthSlope(Instant then) {
    return (logFresh(plant, vigour.regrowing(STEP), scalings, then)
            - logFresh(plant, vigour, scalings, then))
        / STEP;
  }

  /** What its size when it was last weighed does to its size now. */
  private double onSize(Scaling last, Instant then) {
    List<Scaling> larger = new ArrayList<>(scalings);
    larger.set(
        larger.size() - 1, new Scaling(last.date(), last.picksBefore(), last.logScale() + STEP));
    return (logFresh(plant, vigour, larger, then) - logFresh(plant, vigour, scalings, then)) / STEP;
  }

  /** What not knowing the day of emergence adds. */
  private double emergenceVariance(Instant then) {
    LocalDate later = batch.emergence().plusDays(1);
    if (later.isAfter(then.date()) || (story.isPresent() && later.isAfter(firstOut(story.get())))) {
      return 0;
    }
    GrowingPlant late = story.map(s -> batch.grow(s, later)).orElseGet(() -> batch.inCell(later));
    double aDay = logFresh(plant, vigour, scalings, then) - logFresh(late, vigour, scalings, then);
    double days =
        batch.story().cameUp().isPresent()
            ? LOOKED_DAYS
            : Emergence.SPREAD * ChronoUnit.DAYS.between(batch.story().sown(), batch.emergence());
    return aDay * aDay * days * days;
  }

  private static LocalDate firstOut(PlantStory story) {
    return story.toNursery().or(story::toBench).orElse(LocalDate.MAX);
  }

  private static double logFresh(
      GrowingPlant plant, Vigour vigour, List<Scaling> scalings, Instant then) {
    PlantState state = plant.live(vigour, scalings, then.date(), then.picks()).state();
    return Math.log(plant.freshG(state, then.date()));
  }
}
