package sallet.feed.solution;

/**
 * Properties of the solvent that the equilibrium model needs.
 *
 * <p>Valid 0 to 60 °C.
 */
final class Water {
  static final double ZERO_CELSIUS_K = 273.15;
  static final double GAS_CONSTANT = 8.314462618;

  private Water() {}

  /** Density, g/mL (Kell 1975, J. Chem. Eng. Data 20:97; coefficients from memory). */
  static double densityGmL(double t) {
    double numerator =
        999.83952
            + t
                * (16.945176
                    + t
                        * (-7.9870401e-3
                            + t * (-46.170461e-6 + t * (105.56302e-9 + t * -280.54253e-12))));
    return numerator / (1 + 16.879850e-3 * t) / 1000;
  }

  /** Relative permittivity; the form of common aqueous models, coefficients from memory. */
  static double permittivity(double temperatureC) {
    double k = temperatureC + ZERO_CELSIUS_K;
    return 2727.586 + 0.6224107 * k - 466.9151 * Math.log(k) - 52000.87 / k;
  }

  /** Debye-Hückel slope in log10 units, (kg/mol)^½: 0.509 at 25 °C. */
  static double debyeHuckelSlope(double temperatureC) {
    double k = temperatureC + ZERO_CELSIUS_K;
    return 1.82483e6
        * Math.sqrt(densityGmL(temperatureC))
        / Math.pow(permittivity(temperatureC) * k, 1.5);
  }

  /** Debye-Hückel size parameter, per 1e-10 m and (kg/mol)^½: 0.3286 at 25 °C. */
  static double debyeHuckelSize(double temperatureC) {
    double k = temperatureC + ZERO_CELSIUS_K;
    return 50.2916 * Math.sqrt(densityGmL(temperatureC) / (permittivity(temperatureC) * k));
  }
}
