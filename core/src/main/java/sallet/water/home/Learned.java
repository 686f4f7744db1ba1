package sallet.water.home;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import sallet.household.Watering;
import sallet.water.learn.Interval;
import sallet.water.learn.Uptake;
import sallet.water.learn.UseFactor;
import sallet.water.transpiration.HourlyUse;

/**
 * What the household's readings teach.
 *
 * @param factor factor on computed use
 * @param uptake what leaves with a litre of loss
 * @param intervals the intervals between readings of the level that taught
 * @param notes readings that taught nothing, and why
 */
public record Learned(
    UseFactor factor, Uptake uptake, List<Interval> intervals, List<String> notes) {
  /** Spread of one pot's measured over computed use: plants of a kind differ. Judgement. */
  private static final double POT_LOG_SD = 0.35;

  /** Least loss from which salt is balanced, L, and the most plants are believed to drink. */
  private static final double LEAST_SALT_L = 3;

  private static final double MOST_DRUNK_MS_CM = 3;

  public Learned {
    intervals = List.copyOf(intervals);
    notes = List.copyOf(notes);
  }

  /** Before any reading. */
  public static Learned nothing() {
    return new Learned(UseFactor.prior(), Uptake.prior(), List.of(), List.of());
  }

  /** Whether readings taught anything. */
  public boolean taught() {
    return factor.readings() + uptake.readings() > 0;
  }

  /**
   * From readings of the level and pots on the scales.
   *
   * @param use use at factor 1 over all days of the readings
   * @param day today
   */
  static Learned of(HomeBench bench, HourlyUse use, LocalDate day) {
    LevelLosses losses = LevelLosses.of(bench.household().watering().readings().levels(), use);
    UseFactor factor =
        UseFactor.prior().afterLosses(losses.believed()).later(losses.daysSince(day));
    Learned learned = new Learned(factor, Uptake.prior(), losses.believed(), List.of());
    for (LevelLosses.Doubted doubted : losses.doubted()) {
      learned = learned.noting(told(doubted, factor));
    }
    for (List<Watering.Level> filling : losses.fillings()) {
      learned = learned.salt(filling);
    }
    for (Watering.Weighing weighing : bench.household().watering().readings().weighings()) {
      learned = learned.after(weighing, bench, use);
    }
    return learned;
  }

  private static String told(LevelLosses.Doubted doubted, UseFactor factor) {
    double lossL = doubted.loss().lossL();
    return String.format(
        Locale.ROOT,
        "From %s to %s the reservoir %s %.1f L, what was poured in counted, where a loss of %.1f L was reckoned: not used to learn; check for spills, top-ups not written down or a wrong level",
        doubted.from(),
        doubted.to(),
        lossL < 0 ? "won" : "lost",
        Math.abs(lossL),
        factor.median() * doubted.loss().computedL());
  }

  /** Salt at the first reading and poured in since, less that at the last, over the water gone. */
  private Learned salt(List<Watering.Level> levels) {
    List<Watering.Level> read =
        levels.stream().filter(l -> l.ecMsCm().isPresent() && l.litres().isPresent()).toList();
    if (read.size() < 2) {
      return this;
    }
    Watering.Level first = read.get(0);
    Watering.Level last = read.get(read.size() - 1);
    double firstL = first.litres().orElse(0);
    double lastL = last.litres().orElse(0);
    double litres = firstL;
    double salt = firstL * first.ecMsCm().orElse(0);
    for (Watering.Level level : levels) {
      if (!level.date().isBefore(first.date()) && level.date().isBefore(last.date())) {
        litres += level.addedL();
        salt += level.addedL() * level.addedMsCm();
      }
    }
    double loss = litres - lastL;
    if (loss < LEAST_SALT_L) {
      return this;
    }
    double drunk = (salt - lastL * last.ecMsCm().orElse(0)) / loss;
    double unsure = 2 * Uptake.errorMsCm(firstL, lastL, loss);
    return drunk < -unsure || drunk > MOST_DRUNK_MS_CM + unsure
        ? noting("The conductivities do not fit the levels: not used to learn what plants drink")
        : new Learned(factor, uptake.after(drunk, firstL, lastL, loss), intervals, notes);
  }

  private Learned after(Watering.Weighing w, HomeBench bench, HourlyUse use) {
    long day = w.date().map(d -> ChronoUnit.DAYS.between(use.from(), d)).orElse(-1L);
    if (w.beforeG().isEmpty() || day < 0 || day >= use.days()) {
      return this;
    }
    int pot = bench.indexOf(w.pot());
    double computed =
        w.time()
            .map(time -> between(use, pot, 24 * day + time.toSecondOfDay() / 3600.0, w.hours()))
            .orElseGet(() -> use.potDayMl(pot, (int) day) * w.hours() / 24);
    double measured = w.wetG() - w.beforeG().getAsDouble();
    double ratio = measured / computed;
    if (!(ratio > Interval.LEAST_RATIO && ratio < Interval.MOST_RATIO)) {
      return noting(
          String.format(
              Locale.ROOT,
              "Pot %s lost %.0f mL on the scales where %.0f mL were reckoned: not used to learn",
              w.pot(),
              measured,
              factor.median() * computed));
    }
    return new Learned(factor.after(List.of(ratio), POT_LOG_SD), uptake, intervals, notes);
  }

  /** Water of a pot in the hours before one that is counted from the first, mL. */
  private static double between(HourlyUse use, int pot, double until, double hours) {
    double ml = 0;
    double from = Math.max(0, until - hours);
    for (int hour = (int) from; hour < until; hour++) {
      ml += use.potMl(pot, hour) * (Math.min(until, hour + 1.0) - Math.max(from, hour));
    }
    return ml;
  }

  private Learned noting(String note) {
    List<String> more = new ArrayList<>(notes);
    more.add(note);
    return new Learned(factor, uptake, intervals, more);
  }
}
