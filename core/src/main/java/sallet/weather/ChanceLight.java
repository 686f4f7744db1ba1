package sallet.weather;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.SplittableRandom;
import org.hipparchus.distribution.continuous.BetaDistribution;
import org.hipparchus.distribution.continuous.NormalDistribution;
import sallet.household.Place;

/**
 * Dull and bright days around a mean climate, for scenarios. The clearness of a day is drawn from a
 * beta distribution with the climate's mean; a day takes a quarter of its normal score from the day
 * before. Spread and memory: daily clearness of six hourly weather files (standard deviation 0.10
 * to 0.20, 0.07 to 0.12 in settled summers; correlation 0.2 to 0.3). The same seed gives the same
 * days.
 */
public final class ChanceLight implements OutdoorLight {
  static final double MEMORY = 0.25;

  /** The dullest and the clearest day. Judgement. */
  static final double DULLEST = 0.04;

  static final double CLEAREST = 0.80;

  private static final NormalDistribution NORMAL = new NormalDistribution();

  private final Place place;
  private final ZoneOffset clock;
  private final LocalDate from;
  private final double[] clearness;

  private ChanceLight(Place place, ZoneOffset clock, LocalDate from, double[] clearness) {
    this.place = place;
    this.clock = clock;
    this.from = from;
    this.clearness = clearness;
  }

  /**
   * Days drawn by chance.
   *
   * @param clock the standard time in which hours are counted
   * @param from first day
   * @param days how many
   */
  public static ChanceLight of(Place place, ZoneOffset clock, LocalDate from, int days, long seed) {
    Climate climate = PlaceClimate.of(place).climate();
    SplittableRandom random = new SplittableRandom(seed);
    double[] clearness = new double[days];
    double score = gauss(random);
    for (int i = 0; i < days; i++) {
      score = MEMORY * score + Math.sqrt(1 - MEMORY * MEMORY) * gauss(random);
      LocalDate day = from.plusDays(i);
      double outside = DailyRadiation.outsideAirMegaJoules(place.latitudeDeg(), day.getDayOfYear());
      double mean = outside <= 0 ? 0 : climate.globalMegaJoules(day) / outside;
      clearness[i] = draw(mean, NORMAL.cumulativeProbability(score));
    }
    return new ChanceLight(place, clock, from, clearness);
  }

  /** Clearness of a day by the number of days after the first. */
  double clearness(int day) {
    return clearness[day];
  }

  /**
   * Standard deviation of daily clearness about a mean: 0.17, falling to 0.09 under clear skies.
   */
  static double spread(double mean) {
    return Math.max(0.09, Math.min(0.17, 0.17 - 0.4 * (mean - 0.5)));
  }

  private static double draw(double mean, double quantile) {
    double width = CLEAREST - DULLEST;
    double m = Math.max(0.03, Math.min(0.97, (mean - DULLEST) / width));
    double s = spread(mean) / width;
    double sum = Math.max(1, m * (1 - m) / (s * s) - 1);
    double beta =
        new BetaDistribution(m * sum, (1 - m) * sum).inverseCumulativeProbability(quantile);
    return DULLEST + width * beta;
  }

  private static double gauss(SplittableRandom random) {
    double u = 1 - random.nextDouble();
    return Math.sqrt(-2 * Math.log(u)) * Math.cos(2 * Math.PI * random.nextDouble());
  }

  @Override
  public List<SkyMoment> of(LocalDate day) {
    int i = Math.toIntExact(day.toEpochDay() - from.toEpochDay());
    if (i < 0 || i >= clearness.length) {
      throw new IllegalArgumentException(day + " lies outside the days that were drawn");
    }
    double outside = DailyRadiation.outsideAirMegaJoules(place.latitudeDeg(), day.getDayOfYear());
    return MeanSky.of(place, day, clock, clearness[i] * outside, DiffuseFraction::erbsDaily);
  }
}
