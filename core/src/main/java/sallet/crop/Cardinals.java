package sallet.crop;

/**
 * Cardinal temperatures of germination or of growth, °C: nothing happens at the coldest and below
 * and at the warmest and above; it is fastest in the best range.
 *
 * @param coldestC base temperature
 * @param bestFromC lower end of the best range
 * @param bestToC upper end of the best range
 * @param warmestC ceiling temperature
 */
public record Cardinals(double coldestC, double bestFromC, double bestToC, double warmestC) {
  public Cardinals {
    if (!rise(coldestC, bestFromC, bestToC, warmestC)) {
      throw new IllegalArgumentException(
          "temperatures must rise from coldest over best to warmest, were %s, %s, %s, %s °C"
              .formatted(coldestC, bestFromC, bestToC, warmestC));
    }
  }

  /** Whether four temperatures rise as cardinal temperatures must. */
  public static boolean rise(double coldestC, double bestFromC, double bestToC, double warmestC) {
    return coldestC < bestFromC && bestFromC <= bestToC && bestToC < warmestC;
  }
}
