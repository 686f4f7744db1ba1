package sallet.light;

/**
 * What a place is good for by its light of a day. Sources: 12 mol at least for leafy crops (Plants
 * 2024, 13(5):652), 8 to 14 mol for seedlings and 6 to 8 for shade herbs (university extension), 6
 * mol for stretching (judgement).
 */
public enum PlaceUse {
  HEADS(12, "heads and all leafy crops"),
  SEEDLINGS(8, "seedlings and cut leaves"),
  SHADE(6, "shade herbs; seedlings stretch a little"),
  TOO_DARK(0, "nothing (plants stretch)");

  private final double leastMol;
  private final String words;

  PlaceUse(double leastMol, String words) {
    this.leastMol = leastMol;
    this.words = words;
  }

  /** For the light of a day, mol/m². */
  public static PlaceUse of(double dliMol) {
    for (PlaceUse use : values()) {
      if (dliMol >= use.leastMol) {
        return use;
      }
    }
    return TOO_DARK;
  }

  /** In words. */
  public String words() {
    return words;
  }
}
