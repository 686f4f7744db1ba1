package sallet.light;

/** Photons from energy and time. Exact by definition of the units. */
final class Photons {
  /** N_A h c for a wavelength in nm and photons in µmol: 119.627 J nm / µmol. CODATA 2018. */
  private static final double JOULE_NM_PER_UMOL = 119.62656;

  private Photons() {}

  /** Photons for each joule of light of one wavelength, µmol/J. */
  static double umolPerJ(double wavelengthNm) {
    return wavelengthNm / JOULE_NM_PER_UMOL;
  }

  /** Light of a day from a steady PPFD, mol/m². */
  static double mol(double ppfdUmol, double hours) {
    return ppfdUmol * hours * 3600e-6;
  }

  /** Light of a day from global irradiation, mol/m². */
  static double molOfMegaJoules(double megaJoules, double umolPerJ) {
    return megaJoules * umolPerJ;
  }
}
