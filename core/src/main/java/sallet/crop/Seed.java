package sallet.crop;

import java.util.Collections;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * What is known of a crop's seed beside its time to emergence: the share that comes at a
 * temperature, relative to the best, and how long it keeps.
 *
 * <p>Share: by thermo-inhibition where the half temperature is known (lettuce, logistic with 0.9
 * °C, Gray 1975, J. Hort. Sci. 50:349-361: spread of the upper limit); else the normal seedlings of
 * Harrington and Minges (1954), straight between their temperatures; else (judgement) full in the
 * best range, falling in straight lines to nothing at base and ceiling.
 *
 * @param baseC coldest germination, °C
 * @param bestC best temperatures, °C
 * @param ceilingC warmest germination, °C
 * @param tableShare share of normal seedlings by °C, 0 to 1, empty when the table lacks the crop
 * @param halfInhibitedC temperature at which half the seed stays dormant, °C
 * @param minimumShare least share that 7 CFR 201.31 lets a plain packet have
 * @param keepsYears years seed keeps when stored cool and dry
 */
public record Seed(
    double baseC,
    Span bestC,
    double ceilingC,
    NavigableMap<Double, Double> tableShare,
    Optional<Double> halfInhibitedC,
    Optional<Double> minimumShare,
    Optional<Double> keepsYears) {

  /** Steepness of thermo-inhibition, °C. Source: Gray 1975, abstract. */
  private static final double INHIBITION_C = 0.9;

  /** Share of a very good lot; a plain packet lies between the legal minimum and this. */
  private static final double GOOD_LOT = 0.95;

  /** Share of a good lot when the years it keeps are over. Judgement: the usual legal minimum. */
  private static final double OLD_LOT = 0.75;

  /** Share of a lot of which nothing is known, without a legal minimum. Judgement. */
  private static final double UNKNOWN_LOT = 0.85;

  public Seed {
    if (!Cardinals.rise(baseC, bestC.low(), bestC.high(), ceilingC)) {
      throw new IllegalArgumentException(
          "germination temperatures must rise from base over best range to ceiling, were %s, %s, %s, %s °C"
              .formatted(baseC, bestC.low(), bestC.high(), ceilingC));
    }
    tableShare = Collections.unmodifiableNavigableMap(new TreeMap<>(tableShare));
    tableShare.values().forEach(Seed::requireShare);
    minimumShare.ifPresent(Seed::requireShare);
    keepsYears.ifPresent(
        years -> {
          if (!(years > 0)) {
            throw new IllegalArgumentException("seed must keep more than 0 years, was " + years);
          }
        });
  }

  private static void requireShare(double share) {
    if (!(share >= 0 && share <= 1)) {
      throw new IllegalArgumentException("a share of seed must be 0 to 1, was " + share);
    }
  }

  /** Cardinal temperatures of germination. */
  public Cardinals temperatures() {
    return new Cardinals(baseC, bestC.low(), bestC.high(), ceilingC);
  }

  /** Share of the seed that comes at a steady temperature, relative to the best temperature. */
  public double shareAt(double temperatureC) {
    if (temperatureC < 0) {
      return 0;
    }
    if (halfInhibitedC.isPresent()) {
      return 1 / (1 + Math.exp((temperatureC - halfInhibitedC.get()) / INHIBITION_C));
    }
    return tableShare.isEmpty() ? fromRange(temperatureC) : fromTable(temperatureC);
  }

  private double fromTable(double temperatureC) {
    double best = Collections.max(tableShare.values());
    Map.Entry<Double, Double> below = tableShare.floorEntry(temperatureC);
    Map.Entry<Double, Double> above = tableShare.ceilingEntry(temperatureC);
    if (below == null) {
      return tableShare.firstEntry().getValue() / best;
    }
    if (above == null) {
      return 0;
    }
    double width = above.getKey() - below.getKey();
    double part = width == 0 ? 0 : (temperatureC - below.getKey()) / width;
    return (below.getValue() + part * (above.getValue() - below.getValue())) / best;
  }

  private double fromRange(double temperatureC) {
    double rising = (temperatureC - baseC) / (bestC.low() - baseC);
    double falling = (ceilingC - temperatureC) / (ceilingC - bestC.high());
    return Math.max(0, Math.min(1, Math.min(rising, falling)));
  }

  /**
   * A packet that prints no test: between the legal minimum, which a plain packet must reach, and a
   * very good lot. Seed that falls below the minimum must say so on the packet.
   */
  public SeedLot plainPacket() {
    return SeedLot.expecting(minimumShare.map(least -> (least + GOOD_LOT) / 2).orElse(UNKNOWN_LOT));
  }

  /**
   * Share of a lot that still comes after some years of cool, dry storage. Viability falls along a
   * cumulative normal curve (Ellis and Roberts 1980, Annals of Botany 45:13-30); its spread is set
   * so that a lot of 95 % is at 75 % when the handbook's years are over (judgement). A lot whose
   * years are not known stays as it is.
   *
   * @param freshShare share that came when it was new, between 0 and 1
   * @param years age, 0 or more
   */
  public double shareAfter(double freshShare, double years) {
    SeedCount.requireShare("germinating share", freshShare);
    if (!(years >= 0)) {
      throw new IllegalArgumentException("age of seed must be 0 years or more, was " + years);
    }
    if (keepsYears.isEmpty() || freshShare == 1) {
      return freshShare;
    }
    NormalDistribution normal = new NormalDistribution();
    double fall =
        (normal.inverseCumulativeProbability(GOOD_LOT)
                - normal.inverseCumulativeProbability(OLD_LOT))
            * years
            / keepsYears.get();
    return normal.cumulativeProbability(normal.inverseCumulativeProbability(freshShare) - fall);
  }
}
