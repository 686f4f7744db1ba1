package sallet.air;

/**
 * Air with the water vapour in it. Average vapour pressures, never relative humidities: half damp
 * and half dry air mix by the water they hold.
 *
 * @param temperatureC temperature, °C
 * @param vapourKpa vapour pressure, kPa, at most that of saturated air
 */
public record MoistAir(double temperatureC, double vapourKpa) {
  public MoistAir {
    if (!(vapourKpa >= 0)) {
      throw new IllegalArgumentException(
          "vapour pressure must be 0 kPa or more, was " + vapourKpa + " kPa");
    }
    vapourKpa = Math.min(vapourKpa, Vapour.saturationKpa(temperatureC));
  }

  /** Air of a relative humidity, 0 to 100 %. */
  public static MoistAir of(double temperatureC, double humidityPercent) {
    if (!(humidityPercent >= 0 && humidityPercent <= 100)) {
      throw new IllegalArgumentException(
          "relative humidity must be 0 to 100 %, was " + humidityPercent + " %");
    }
    return new MoistAir(temperatureC, Vapour.saturationKpa(temperatureC) * humidityPercent / 100);
  }

  /** Air that holds so much water, g/m³. */
  public static MoistAir holding(double temperatureC, double gM3) {
    return new MoistAir(temperatureC, Vapour.kpaOfConcentration(gM3, temperatureC));
  }

  /** Relative humidity, percent. */
  public double humidityPercent() {
    return 100 * vapourKpa / Vapour.saturationKpa(temperatureC);
  }

  /** What it lacks to saturation, kPa (the VPD of the air). */
  public double deficitKpa() {
    return Vapour.saturationKpa(temperatureC) - vapourKpa;
  }

  /** What it lacks against the air inside a leaf, kPa (the VPD of the leaf); not below 0. */
  public double deficitToLeafKpa(double leafC) {
    return Math.max(0, Vapour.saturationKpa(leafC) - vapourKpa);
  }

  /** Water it holds, g/m³. */
  public double waterGM3() {
    return Vapour.concentrationGM3(vapourKpa, temperatureC);
  }

  /** Water it lacks to saturation, g/m³. */
  public double deficitGM3() {
    return Vapour.concentrationGM3(deficitKpa(), temperatureC);
  }

  /** Temperature at which dew settles, °C. */
  public double dewPointC() {
    return Vapour.dewPointC(vapourKpa);
  }

  /** The same air warmed or cooled, the water it holds unchanged until dew settles. */
  public MoistAir at(double otherC) {
    return new MoistAir(otherC, vapourKpa);
  }

  /** The same air with another humidity by so many points, kept within 1 to 100 %. */
  public MoistAir damper(double points) {
    return of(temperatureC, Math.max(1, Math.min(100, humidityPercent() + points)));
  }
}
