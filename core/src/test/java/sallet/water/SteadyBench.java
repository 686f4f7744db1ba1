package sallet.water;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.stream.IntStream;
import sallet.air.HourlyAir;
import sallet.air.MoistAir;
import sallet.light.HourlyLight;

/** Light and air that are the same every day, for tests. */
final class SteadyBench {
  static final LocalDate FIRST = LocalDate.of(2027, 1, 4);
  static final int ON = 6;

  private SteadyBench() {}

  /** Lamp light from 06:00, the same at every pot. */
  static HourlyLight lamp(int pots, int days, double ppfdUmol, int hours) {
    double[] lamp = new double[24 * days];
    for (int h = 0; h < lamp.length; h++) {
      lamp[h] = h % 24 >= ON && h % 24 < ON + hours ? ppfdUmol : 0;
    }
    double[][] each = new double[pots][];
    double[][] none = new double[pots][24 * days];
    Arrays.fill(each, lamp);
    double[] photoperiod = new double[days];
    Arrays.fill(photoperiod, hours);
    return new HourlyLight(FIRST, none, each, photoperiod);
  }

  /** Air of one temperature; humidity may differ from day to day. */
  static HourlyAir air(int days, double temperatureC, Humidity humidity) {
    return new HourlyAir(
        FIRST,
        IntStream.range(0, 24 * days)
            .mapToObj(h -> MoistAir.of(temperatureC, humidity.percent(h / 24)))
            .toList());
  }

  interface Humidity {
    double percent(int day);
  }
}
