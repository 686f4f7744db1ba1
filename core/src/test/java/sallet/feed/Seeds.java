package sallet.feed;

import java.util.EnumMap;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import sallet.feed.ion.Composition;
import sallet.feed.ion.Ion;
import sallet.feed.product.Salt;
import sallet.feed.product.Use;

/** Random but repeatable solutions; the seed is the name of the test case. */
final class Seeds {
  private Seeds() {}

  static LongStream few() {
    return LongStream.range(0, 60);
  }

  /** A mix of catalogue salts and a little bicarbonate, from rain to tank strength. */
  static Composition solution(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    double strength = Math.pow(10, random.nextDouble(-1.5, 1.3));
    Composition sum = Composition.of(Ion.CARBON, random.nextDouble(2));
    sum = sum.plus(Composition.of(Ion.SODIUM, sum.mmol(Ion.CARBON)));
    for (Salt salt : Salt.catalogue()) {
      if (salt.use() == Use.MACRO && random.nextInt(3) == 0) {
        sum = sum.plus(salt.product(1).perUnit().times(random.nextDouble(0.5) * strength));
      }
    }
    return sum;
  }

  /** The largest relative difference of any ion. */
  static double difference(Composition a, Composition b) {
    Map<Ion, Double> all = new EnumMap<>(Ion.class);
    all.putAll(a.mmol());
    all.putAll(b.mmol());
    return all.keySet().stream()
        .mapToDouble(i -> Math.abs(a.mmol(i) - b.mmol(i)) / (1e-9 + a.mmol(i) + b.mmol(i)))
        .max()
        .orElse(0);
  }
}
