package sallet.light;

import sallet.household.Bench;
import sallet.household.Household;
import sallet.household.Lamp;
import sallet.household.Pot;
import sallet.weather.DaySpans;

/** Light of the lamp above the bench. */
final class LampLight {
  private LampLight() {}

  /**
   * PPFD at a pot's canopy while the lamp is on, µmol/m²/s: near-field of the whole shining face.
   *
   * @throws IllegalArgumentException when the lamp hangs no higher than the canopy
   */
  static double ppfdUmol(Lamp lamp, Bench bench, Pot pot) {
    double above = bench.heightM() + lamp.heightAboveBenchM() - bench.canopyHeightM();
    if (above <= 0) {
      throw new IllegalArgumentException(
          String.format(
              "the lamp hangs %.2f m above the tray, but the canopy reaches %.2f m",
              lamp.heightAboveBenchM(), bench.canopyHeightM() - bench.heightM()));
    }
    double factor =
        Panel.rectangle(
            lamp.lengthM(),
            lamp.widthM(),
            bench.xM() + pot.xM() - lamp.xM(),
            bench.yM() + pot.yM() - lamp.yM(),
            above);
    return lamp.ppfUmolPerS() / (lamp.lengthM() * lamp.widthM()) * factor;
  }

  /** When the lamp of a household shines. */
  static DaySpans on(Household household) {
    return household
        .lamp()
        .filter(lamp -> lamp.ppfUmolPerS() > 0)
        .map(lamp -> DaySpans.daily(lamp.on().toNanoOfDay() / 3.6e12, lamp.hours()))
        .orElse(DaySpans.NONE);
  }
}
