package sallet.light;

/**
 * What one kind of plant wants of light.
 *
 * @param crop its name
 * @param heads whether it is grown whole to a head, not cut leaf by leaf
 * @param seedlingMol light of a day a seedling is to get, mol/m²
 * @param leastMol light of a day below which it hardly grows on the bench, mol/m²
 * @param targetMol light of a day to aim at on the bench, mol/m²
 * @param tipBurns whether its leaf margins burn readily in strong light
 * @param longDaysBolt whether long days make it run to seed
 */
public record LightNeed(
    String crop,
    boolean heads,
    double seedlingMol,
    double leastMol,
    double targetMol,
    boolean tipBurns,
    boolean longDaysBolt) {
  /** Seedlings: 8 to 14 mol (university extension; its middle here is judgement). */
  private static final double SEEDLING_MOL = 10;

  /** Below it plants stretch (judgement). */
  private static final double LEAST_MOL = 6;

  public LightNeed {
    if (!(leastMol >= 0 && targetMol >= leastMol)) {
      throw new IllegalArgumentException(
          crop + " wants at least " + leastMol + " and aims at " + targetMol + " mol/m²/d");
    }
  }

  /** Of leaves of no certain kind that are to get so much, mol/m² a day. */
  public static LightNeed leafy(double targetMol) {
    return new LightNeed(
        "leafy crops",
        false,
        Math.min(SEEDLING_MOL, targetMol),
        Math.min(LEAST_MOL, targetMol),
        targetMol,
        true,
        true);
  }
}
