package sallet.water.reservoir;

import sallet.feed.reservoir.Drift;

/** Salt of a tank that is not topped up, as EC at 25 °C, mS/cm. Mass balance, EC as a stand-in. */
public final class Salinity {
  private Salinity() {}

  /**
   * EC once the tank has fallen: [V0 EC0 - c f (V0 - V)] / V.
   *
   * @param uptakeMsCm what plants drink, as EC
   * @param transpired share of the loss that went through plants; the rest leaves its salt
   */
  public static double after(
      double startMsCm, double startL, double endL, double uptakeMsCm, double transpired) {
    return Drift.notRefilled(startMsCm, uptakeMsCm * transpired, startL - endL, startL);
  }

  /** EC after water or solution is poured in, by volume. */
  public static double mixed(double msCm, double litres, double addedMsCm, double addedL) {
    return (msCm * litres + addedMsCm * addedL) / (litres + addedL);
  }

  /**
   * Highest EC to start with so that it ends at or below a limit: the inverse of {@link #after}.
   */
  public static double highestStart(
      double limitMsCm, double startL, double endL, double uptakeMsCm, double transpired) {
    return (limitMsCm * endL + uptakeMsCm * transpired * (startL - endL)) / startL;
  }

  /**
   * What plants drank between two readings, as EC times the transpired share: (V0 EC0 - V EC) / (V0
   * - V).
   */
  public static double drunkMsCm(double startMsCm, double startL, double endMsCm, double endL) {
    if (!(startL > endL && endL > 0)) {
      throw new IllegalArgumentException(
          "the tank must have fallen between the readings, from %.1f to %.1f L"
              .formatted(startL, endL));
    }
    return (startL * startMsCm - endL * endMsCm) / (startL - endL);
  }
}
