package sallet.crop;

import java.util.OptionalDouble;
import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * What comes of a sowing at a steady temperature.
 *
 * @param medianDays days from sowing until half of the seedlings that come are up; empty when none
 *     come
 * @param warmthShare share of the seed that comes, relative to the best temperature
 * @param usableShare share of the seed that becomes a usable transplant
 * @param concern how far the temperature is from good
 * @param advice one or two sentences, with the temperature to aim at
 */
public record Emergence(
    OptionalDouble medianDays,
    double warmthShare,
    double usableShare,
    Concern concern,
    String advice) {

  /** Spread of the time between seeds of a lot, of its logarithm. From memory, 0.15 to 0.25. */
  public static final double SPREAD = 0.2;

  /** A room thermometer tells no better, °C: so far above the best range is still good. */
  private static final double THERMOMETER_C = 1;

  /** Share of the seed that must come. Judgement. */
  private static final double HALF = 0.5;

  /** Slower than this many times the time in the best range is cold. Judgement. */
  private static final double SLOW = 2;

  /**
   * A sowing of a crop.
   *
   * @param temperatureC temperature of the medium, mean of the 24 hours, °C
   */
  public static Emergence of(Crop crop, double temperatureC) {
    Seed seed = crop.seed();
    OptionalDouble days = crop.germination().daysAt(temperatureC);
    double share = days.isEmpty() ? 0 : seed.shareAt(temperatureC);
    double usable = share * crop.usableShare();
    return new Emergence(
        days,
        share,
        usable,
        concern(crop, temperatureC, days, share),
        advice(crop, temperatureC, days, share));
  }

  /** Days from sowing until a share of the seedlings that come are up (0 to 1, both excluded). */
  public OptionalDouble daysUntil(double share) {
    double z = new NormalDistribution().inverseCumulativeProbability(share);
    return medianDays.isEmpty()
        ? medianDays
        : OptionalDouble.of(medianDays.getAsDouble() * Math.exp(SPREAD * z));
  }

  private static Concern concern(
      Crop crop, double temperatureC, OptionalDouble days, double share) {
    Seed seed = crop.seed();
    if (days.isEmpty() || share < HALF) {
      return Concern.ACT;
    }
    double half = (seed.bestC().high() + seed.ceilingC()) / 2;
    Concern warm = Concern.rising(temperatureC, seed.bestC().high() + THERMOMETER_C, half);
    return warm.or(slow(crop, temperatureC, days.getAsDouble()) ? Concern.WATCH : Concern.NONE);
  }

  private static boolean slow(Crop crop, double temperatureC, double days) {
    double lowC = crop.seed().bestC().low();
    OptionalDouble best = crop.germination().daysAt(lowC);
    return temperatureC < lowC && best.isPresent() && days > SLOW * best.getAsDouble();
  }

  private static String advice(Crop crop, double temperatureC, OptionalDouble days, double share) {
    Seed seed = crop.seed();
    String aim =
        "Aim at %s to %s °C.".formatted(plain(seed.bestC().low()), plain(seed.bestC().high()));
    String at = plain(temperatureC) + " °C";
    if (days.isEmpty()) {
      String side = temperatureC < seed.bestC().low() ? "cold" : "warm";
      return "Too %s: at %s no seed comes up. %s".formatted(side, at, aim);
    }
    String comes = "%d of 100 seeds that come up at their best do so".formatted(percent(share));
    return switch (concern(crop, temperatureC, days, share)) {
      case NONE -> "%s suits the seed.".formatted(at);
      case WATCH, ACT ->
          temperatureC > seed.bestC().high()
              ? "Warm for the seed: at %s %s, less evenly. %s".formatted(at, comes, aim)
              : "Cold for the seed: at %s it takes about %d days and %s. %s"
                  .formatted(at, Math.round(days.getAsDouble()), comes, aim);
    };
  }

  private static long percent(double share) {
    return Math.round(100 * share);
  }

  private static String plain(double value) {
    double tenths = Math.round(value * 10) / 10.0;
    return tenths == Math.rint(tenths) ? Long.toString((long) tenths) : Double.toString(tenths);
  }
}
