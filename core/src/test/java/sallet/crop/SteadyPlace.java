package sallet.crop;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.Collections;
import sallet.household.AirClimate;
import sallet.light.HourlyLight;

/**
 * A place where every day is the same, for tests.
 *
 * @param ppfdUmol light while the lamp is on, µmol/m²/s
 * @param litHours hours the lamp is on from midnight, whole
 * @param dayC temperature in the light, °C
 * @param nightC temperature in the dark, °C
 * @param co2Ppm carbon dioxide, ppm
 */
record SteadyPlace(double ppfdUmol, int litHours, double dayC, double nightC, double co2Ppm) {
  static final LocalDate FIRST = LocalDate.of(2027, 1, 1);

  /** A place of a daily light integral, mol/m²/d. */
  static SteadyPlace ofDli(double dliMol, int litHours, double dayC, double nightC, double co2Ppm) {
    return new SteadyPlace(dliMol / (litHours * 3600e-6), litHours, dayC, nightC, co2Ppm);
  }

  HourlyLight light(int days) {
    double[] ppfd = new double[days * 24];
    double[] photoperiod = new double[days];
    for (int h = 0; h < ppfd.length; h++) {
      ppfd[h] = h % 24 < litHours ? ppfdUmol : 0;
    }
    Arrays.fill(photoperiod, litHours);
    return new HourlyLight(
        FIRST, new double[][] {new double[days * 24]}, new double[][] {ppfd}, photoperiod);
  }

  AirClimate air() {
    return new AirClimate(
        Collections.nCopies(12, dayC), Collections.nCopies(12, nightC), 60, co2Ppm);
  }

  PlaceDays days(int days) {
    return RoomDays.atPlace(light(days), 0, air());
  }
}
