package sallet.air;

/**
 * A pane or wall that is colder than the room.
 *
 * @param transmittanceWm2K heat it lets through (U), W/m²/K
 * @param innerResistance between the room's air and it (R_si), m²K/W
 */
public record ColdSurface(double transmittanceWm2K, double innerResistance) {
  /** Inner surface resistance to walls and windows, m²K/W. Building trade's usual value. */
  public static final double USUAL_RESISTANCE = 0.13;

  /** Humidity at the surface from which mould grows when it lasts, %. ISO 13788 (from memory). */
  public static final double MOULD_PERCENT = 80;

  public ColdSurface {
    if (!(transmittanceWm2K > 0
        && innerResistance > 0
        && transmittanceWm2K * innerResistance < 1)) {
      throw new IllegalArgumentException(
          "a surface needs a U above 0 and below 1/R, had U %s W/m²/K and R %s m²K/W"
              .formatted(transmittanceWm2K, innerResistance));
    }
  }

  /**
   * A window of so many panes: 5.0 single, 2.8 double, 1.4 coated double or plain triple, 0.8
   * beyond, W/m²/K; the middles of what is usual (4 to 6, 2 to 4, 1.1 to 2, 0.4 to 2).
   */
  public static ColdSurface window(int panes) {
    double u = panes <= 1 ? 5.0 : panes == 2 ? 2.8 : panes == 3 ? 1.4 : 0.8;
    return new ColdSurface(u, USUAL_RESISTANCE);
  }

  /** Share of the way from outdoors to indoors at which the surface stands: f_Rsi = 1 - U R_si. */
  public double factor() {
    return 1 - transmittanceWm2K * innerResistance;
  }

  /** Temperature of the surface, °C. */
  public double temperatureC(double indoorC, double outdoorC) {
    return indoorC - (1 - factor()) * (indoorC - outdoorC);
  }

  /** Humidity of the room's air at the surface, percent; above 100 it runs wet. */
  public double humidityPercent(MoistAir room, double outdoorC) {
    return 100
        * room.vapourKpa()
        / Vapour.saturationKpa(temperatureC(room.temperatureC(), outdoorC));
  }

  /** Outdoor temperature below which the humidity at the surface is above so many percent, °C. */
  public double outdoorBelowC(MoistAir room, double percent) {
    double surfaceC = Vapour.dewPointC(100 * room.vapourKpa() / percent);
    return room.temperatureC() - (room.temperatureC() - surfaceC) / (1 - factor());
  }
}
