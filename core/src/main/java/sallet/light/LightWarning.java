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
   * @param crops what stands there; nothing is warned of for an empty place
   */
  public static List<LightWarning> of(
      double dliMol, double lampUmol, double photoperiodHours, List<LightNeed> crops) {
    List<LightWarning> warnings = new ArrayList<>();
    if (crops.isEmpty()) {
      return warnings;
    }
    tooDark(dliMol, lampUmol, warnings);
    crops.stream()
        .filter(crop -> crop.tipBurns() && dliMol > TIP_BURN_STILL_MOL)
        .findFirst()
        .ifPresent(crop -> warnings.add(tipBurn(crop, dliMol)));
    if (lampUmol > BLEACH_MILD_UMOL) {
      warnings.add(bleaching(lampUmol));
    }
    crops.stream()
        .filter(crop -> crop.longDaysBolt() && photoperiodHours > BOLTING_HOURS)
        .findFirst()
        .ifPresent(crop -> warnings.add(bolting(crop, photoperiodHours)));
    return warnings;
  }

  private static void tooDark(double dliMol, double lampUmol, List<LightWarning> warnings) {
    if (dliMol >= STRETCH_MILD_MOL) {
      return;
    }
    warnings.add(
        new LightWarning(
            Kind.STRETCHING,
            dliMol < STRETCH_STRONG_MOL ? Grade.STRONG : Grade.MILD,
            text("Seedlings may stretch: %.1f mol a day; give them 8 to 14.", dliMol),
            "judgement; 8 to 14 mol: university extension"));
    if (lampUmol > 0 && lampUmol < STRETCH_UMOL) {
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
  }

  private static LightWarning tipBurn(LightNeed crop, double dliMol) {
    return new LightWarning(
        Kind.TIP_BURN,
        dliMol > TIP_BURN_MOL ? Grade.STRONG : Grade.MILD,
        text(
            "%s may burn at the leaf tips: %.1f mol a day; blow air down on the hearts or shorten"
                + " the lamp.",
            capital(crop.crop()), dliMol),
        "17 mol with moving air: Both and others, Cornell; airflow: Frantz and others 2004;"
            + " 14 mol in still air: from memory");
  }

  private static LightWarning bleaching(double lampUmol) {
    return new LightWarning(
        Kind.BLEACHING,
        lampUmol > BLEACH_STRONG_UMOL ? Grade.STRONG : Grade.MILD,
        text(
            "Leaves not used to it may bleach: %.0f µmol/m²/s; raise or dim the lamp, and go up by"
                + " no more than a third every three days.",
            lampUmol),
        "judgement");
  }

  private static LightWarning bolting(LightNeed crop, double photoperiodHours) {
    return new LightWarning(
        Kind.BOLTING,
        Grade.MILD,
        text(
            "%s bolts sooner in days longer than 14 h (%.0f h here); run the lamp for fewer hours"
                + " and stronger, or grow it in the short days.",
            capital(crop.crop()), photoperiodHours),
        "from memory");
  }

  private static String capital(String text) {
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }

  private static String text(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }
}
