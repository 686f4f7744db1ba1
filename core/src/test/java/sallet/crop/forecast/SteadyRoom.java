package sallet.crop.forecast;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import sallet.crop.PlaceDays;
import sallet.crop.RoomDays;
import sallet.household.AirClimate;
import sallet.light.HourlyLight;

/**
 * A room in which every day is the same, for tests.
 *
 * @param daylightMol daily light of the bench from the sky, mol/m²/d
 * @param lampMol the same from a lamp of 16 h, mol/m²/d
 * @param dayC temperature in the light, °C
 * @param nightC temperature in the dark, °C
 * @param nurseryC temperature of the seed shelf, °C
 */
record SteadyRoom(double daylightMol, double lampMol, double dayC, double nightC, double nurseryC) {
  static final LocalDate FIRST = LocalDate.of(2027, 3, 1);
  static final int DAYS = 260;
  static final SteadyRoom GOOD = new SteadyRoom(0, 12, 21, 17, 20);

  HourlyLight light() {
    return light(daylightMol, lampMol);
  }

  private static HourlyLight light(double daylightMol, double lampMol) {
    double[] photoperiod = new double[DAYS];
    Arrays.fill(photoperiod, lampMol > 0 ? 16 : 12);
    return new HourlyLight(
        FIRST,
        new double[][] {hours(daylightMol, 12)},
        new double[][] {hours(lampMol, 16)},
        photoperiod);
  }

  private static double[] hours(double mol, int from6) {
    double[] ppfd = new double[DAYS * 24];
    for (int h = 0; h < ppfd.length; h++) {
      ppfd[h] = h % 24 >= 6 && h % 24 < 6 + from6 ? mol / (from6 * 3600e-6) : 0;
    }
    return ppfd;
  }

  AirClimate air() {
    return new AirClimate(Collections.nCopies(12, dayC), Collections.nCopies(12, nightC), 55, 450);
  }

  GrowingRoom room(double siteCm2, int skies) {
    AirClimate shelf =
        new AirClimate(
            Collections.nCopies(12, nurseryC), Collections.nCopies(12, nurseryC), 55, 450);
    PlaceDays nursery = RoomDays.atPlace(light(0, 8.64), 0, shelf);
    return new GrowingRoom(
        nursery,
        16,
        49,
        RoomDays.atPlace(light(), 0, air()),
        Skies.over(light(), List.of(0), air(), skies, 7),
        siteCm2,
        air(),
        0.1,
        false);
  }
}
