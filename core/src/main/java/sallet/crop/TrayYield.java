package sallet.crop;

import java.util.OptionalDouble;

/**
 * What a tray crop or baby leaf, sown by area and cut once, yields by 100 cm² of tray. Common
 * practice.
 *
 * @param lowG at the least useful light, g
 * @param typicalG at the light to aim at, g
 * @param highG at the greatest useful light, g
 */
public record TrayYield(double lowG, double typicalG, double highG) {
  /**
   * Baby leaf of any leafy crop, 1 to 2.5 kg by m². Common practice. The growth model of single
   * plants is not used here: for a dense stand it gives two to three times as much.
   */
  public static final TrayYield BABY_LEAF = new TrayYield(10, 17, 25);

  public TrayYield {
    if (!(lowG > 0 && lowG <= typicalG && typicalG <= highG)) {
      throw new IllegalArgumentException(
          "yields of a tray must rise from above 0 g, were %s, %s, %s g"
              .formatted(lowG, typicalG, highG));
    }
  }

  /**
   * Grams by 100 cm² at a daily light, straight between the three points (judgement); empty in less
   * than the least useful light.
   */
  public OptionalDouble gramsAt(double dliMol, CropGuide guide) {
    double least = guide.growDliMol().low();
    double target = guide.targetDliMol();
    if (dliMol < least) {
      return OptionalDouble.empty();
    }
    if (dliMol <= target) {
      return OptionalDouble.of(lowG + (typicalG - lowG) * (dliMol - least) / (target - least));
    }
    double part = Math.min(1, (dliMol - target) / (guide.growDliMol().high() - target));
    return OptionalDouble.of(typicalG + (highG - typicalG) * part);
  }
}
