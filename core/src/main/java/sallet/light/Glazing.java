package sallet.light;

import sallet.household.Window;

/**
 * Light let through by plane panes at every angle.
 *
 * <p>Source: Fresnel's equations and Bouguer's law for each polarisation, panes added one by one,
 * as in Duffie and Beckman, "Solar Engineering of Thermal Processes", chapter 5. The panes are
 * clear 4 mm glass; a visible transmittance given by the maker scales the whole curve.
 */
public final class Glazing {
  /** Refractive index of window glass (Duffie and Beckman). */
  private static final double INDEX = 1.526;

  /** Extinction of clear glass of low iron content, 1/m (Duffie and Beckman). */
  private static final double EXTINCTION_PER_M = 4;

  /** Thickness of a pane, m (common practice). */
  private static final double THICKNESS_M = 0.004;

  private static final int STEPS = 500;

  private final double[] byCosine;
  private final double diffuse;

  private Glazing(double[] byCosine) {
    this.byCosine = byCosine;
    this.diffuse = hemisphere(byCosine);
  }

  /** The glass of a window. */
  public static Glazing of(Window window) {
    return of(window.panes(), window.visibleTransmittance());
  }

  /**
   * Panes of 4 mm, scaled to what the maker tells.
   *
   * @param visibleTransmittance straight on, NaN for clear glass
   */
  static Glazing of(int panes, double visibleTransmittance) {
    Glazing clear = clear(panes);
    if (Double.isNaN(visibleTransmittance)) {
      return clear;
    }
    double scale = visibleTransmittance / clear.at(1);
    double[] scaled = clear.byCosine.clone();
    for (int i = 0; i <= STEPS; i++) {
      scaled[i] *= scale;
    }
    return new Glazing(scaled);
  }

  /** Clear panes of 4 mm. */
  public static Glazing clear(int panes) {
    return panes(panes, INDEX, EXTINCTION_PER_M, THICKNESS_M);
  }

  /** No glass at all. */
  public static Glazing none() {
    return panes(0, INDEX, EXTINCTION_PER_M, THICKNESS_M);
  }

  static Glazing panes(int panes, double index, double extinctionPerM, double thicknessM) {
    double[] byCosine = new double[STEPS + 1];
    for (int i = 0; i <= STEPS; i++) {
      double angle = Math.acos((double) i / STEPS);
      byCosine[i] = transmittance(panes, index, extinctionPerM, thicknessM, angle);
    }
    return new Glazing(byCosine);
  }

  /** Share let through of light that meets the pane at an angle of the given cosine, 0 to 1. */
  public double at(double cosIncidence) {
    double place = Math.max(0, Math.min(1, cosIncidence)) * STEPS;
    int i = Math.min(STEPS - 1, (int) place);
    return byCosine[i] + (place - i) * (byCosine[i + 1] - byCosine[i]);
  }

  /** Share let through of light that comes evenly from the whole half-space before the pane. */
  public double diffuse() {
    return diffuse;
  }

  /** Unpolarised transmittance of a stack of equal panes, exact. */
  static double transmittance(
      int panes, double index, double extinctionPerM, double thicknessM, double angleRad) {
    if (panes == 0) {
      return 1;
    }
    if (angleRad >= Math.PI / 2 - 1e-9) {
      return 0;
    }
    double inside = Math.asin(Math.sin(angleRad) / index);
    double absorption = Math.exp(-extinctionPerM * thicknessM / Math.cos(inside));
    double across = Math.sin(inside - angleRad) / Math.sin(inside + angleRad);
    double along = Math.tan(inside - angleRad) / Math.tan(inside + angleRad);
    if (angleRad < 1e-6) {
      across = (index - 1) / (index + 1);
      along = across;
    }
    return (stack(panes, across * across, absorption) + stack(panes, along * along, absorption))
        / 2;
  }

  /** Transmittance of a stack for one polarisation: r of a face, a of a pass through a pane. */
  private static double stack(int panes, double r, double a) {
    double tau = a * (1 - r) * (1 - r) / (1 - r * r * a * a);
    double rho = r * (1 + a * tau);
    double through = tau;
    double back = rho;
    for (int i = 1; i < panes; i++) {
      double between = 1 - back * rho;
      back = rho + tau * tau * back / between;
      through = through * tau / between;
    }
    return through;
  }

  /** Integral of tau(θ) sin 2θ over 0 to 90 degrees, by Simpson's rule in the cosine. */
  private static double hemisphere(double[] byCosine) {
    double sum = 0;
    for (int i = 0; i <= STEPS; i++) {
      int weight = i == 0 || i == STEPS ? 1 : i % 2 == 1 ? 4 : 2;
      sum += weight * byCosine[i] * i / STEPS;
    }
    return 2 * sum / (3 * STEPS);
  }
}
