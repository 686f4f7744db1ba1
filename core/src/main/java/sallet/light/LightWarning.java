package sallet.light;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A sign that light may harm, never a certainty.
 *
 * @param kind what may happen
 * @param grade how likely
 * @param text what may happen, from which number, and what to do
 * @param source of the threshold
 */
public record LightWarning(Kind kind, Grade grade, String text, String source) {
  /** How likely harm is. */
  public enum Grade {
    MILD,
    STRONG
  }

  /** What may happen. */
  public enum Kind {
    STRETCHING,
    WEAK_LAMP,
    TIP_BURN,
    BLEACHING,
    BOLTING
  }

  private static final double STRETCH_STRONG_MOL = 6;
  private static final double STRETCH_MILD_MOL = 8;
  private static final double STRETCH_UMOL = 100;
  private static final double TIP_BURN_STILL_MOL = 14;
  private static final double TIP_BURN_MOL = 17;
  private static final double BLEACH_MILD_UMOL = 600;
  private static final double BLEACH_STRONG_UMOL = 1000;
  private static final double BOLTING_HOURS = 14;

  /** The PPFD no leaf should get from a lamp, µmol/m²/s: the mild threshold of bleaching. */
  public static final double MOST_UMOL = BLEACH_MILD_UMOL;

  /**
   * For one place.
   *
   * @param dliMol light of a day, mol/m²
   * @param lampUmol lamp light while it is on, 0 without a lamp, µmol/m²/s
   * @param photoperiodHours length of the day, h
   */
  public static List<LightWarning> of(double dliMol, double lampUmol, double photoperiodHours) {
    List<LightWarning> warnings = new ArrayList<>();
    if (dliMol < STRETCH_MILD_MOL) {
      warnings.add(
          new LightWarning(
              Kind.STRETCHING,
              dliMol < STRETCH_STRONG_MOL ? Grade.STRONG : Grade.MILD,
              text("Seedlings may stretch: %.1f mol a day; give them 8 to 14.", dliMol),
              "judgement; 8 to 14 mol: university extension"));
    }
    if (lampUmol > 0 && lampUmol < STRETCH_UMOL && dliMol < STRETCH_MILD_MOL) {
      warnings.add(
          new LightWarning(
              Kind.WEAK_LAMP,
              Grade.STRONG,
              text(
                  "Seedlings under a lamp of %.0f µmol/m²/s stretch; lower the lamp or take a"
                      + " stronger one.",
                  lampUmol),
              "judgement"));
    }
    if (dliMol > TIP_BURN_STILL_MOL) {
      warnings.add(
          new LightWarning(
              Kind.TIP_BURN,
              dliMol > TIP_BURN_MOL ? Grade.STRONG : Grade.MILD,
              text(
                  "Heading lettuce may burn at the leaf tips: %.1f mol a day; blow air down on the"
                      + " hearts or shorten the lamp. Loose-leaf crops bear more.",
                  dliMol),
              "17 mol with moving air: Both and others, Cornell; airflow: Frantz and others 2004;"
                  + " 14 mol in still air: from memory"));
    }
    if (lampUmol > BLEACH_MILD_UMOL) {
      warnings.add(
          new LightWarning(
              Kind.BLEACHING,
              lampUmol > BLEACH_STRONG_UMOL ? Grade.STRONG : Grade.MILD,
              text(
                  "Leaves not used to it may bleach: %.0f µmol/m²/s; raise or dim the lamp, and go"
                      + " up by no more than a third every three days.",
                  lampUmol),
              "judgement"));
    }
    if (photoperiodHours > BOLTING_HOURS) {
      warnings.add(
          new LightWarning(
              Kind.BOLTING,
              Grade.MILD,
              text(
                  "Spinach, rocket and coriander bolt sooner in days longer than 14 h (%.0f h"
                      + " here).",
                  photoperiodHours),
              "from memory"));
    }
    return warnings;
  }

  private static String text(String format, double value) {
    return String.format(Locale.ROOT, format, value);
  }
}
