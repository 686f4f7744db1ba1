package sallet.household;

import java.util.Locale;

/**
 * What a lamp's light is made of, for turning lux into photons. Sources: Thimijan and Heins 1983,
 * HortScience 18:818; white and white with red LEDs computed from model spectra (7 % and 20 %).
 */
public enum LampColour {
  WHITE(70, 0.07),
  WHITE_AND_RED(55, 0.20),
  RED_AND_BLUE(Double.NaN, Double.NaN),
  FLUORESCENT(74, 0.05),
  SODIUM(82, 0.05),
  METAL_HALIDE(71, 0.05);

  private final double luxPerUmol;
  private final double spread;

  LampColour(double luxPerUmol, double spread) {
    this.luxPerUmol = luxPerUmol;
    this.spread = spread;
  }

  /** Lux for each µmol/m²/s; NaN for light a lux meter hardly sees. */
  public double luxPerUmol() {
    return luxPerUmol;
  }

  /** How far that may be off, as a share. */
  public double spread() {
    return spread;
  }

  /** Whether a lux meter can tell this light's photons. */
  public boolean shownByLux() {
    return !Double.isNaN(luxPerUmol);
  }

  /** As written in a household file: "white and red". */
  public String words() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
