package sallet.light;

/**
 * What the plants of a bench are to get.
 *
 * @param dliMol light of a day, mol/m²
 * @param mostHours longest day, sun and lamp together, h
 */
public record LightTarget(double dliMol, double mostHours) {
  /**
   * Leafy crops: 12 to 17 mol, at most 18 h. Sources: Plants 2024, 13(5):652 (12 mol at least);
   * Cornell handbook of lettuce (17 mol); 18 h as in most of the work they cite.
   */
  public static final LightTarget LEAFY = new LightTarget(14, 18);
}
