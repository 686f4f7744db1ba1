package sallet.it;

import java.math.BigDecimal;
import java.math.MathContext;
import sallet.cases.Outcome;

/**
 * Numbers and text as the pages show them; rounded, so that noise in the last digits cannot be
 * seen.
 */
final class CaseText {
  private static final MathContext SHOWN = new MathContext(6);
  private static final BigDecimal NOISE = new BigDecimal("1e-14");

  private CaseText() {}

  /** A number with six significant digits; other text as it is. */
  static String rounded(String value) {
    try {
      BigDecimal number = new BigDecimal(value).round(SHOWN).stripTrailingZeros();
      if (number.abs().compareTo(NOISE) < 0) {
        return "0";
      }
      boolean plain = Math.abs(number.scale()) <= 9;
      return plain ? number.toPlainString() : number.toString();
    } catch (NumberFormatException e) {
      return value;
    }
  }

  /** Share of the tolerance that the difference used. */
  static String share(Outcome outcome) {
    int percent = RowResult.percentOfTolerance(outcome);
    if (percent > 100_000) {
      return "beyond all";
    }
    return outcome.deviation() == 0 ? "0 %" : percent == 0 ? "below 1 %" : percent + " %";
  }

  /** Text for a cell of a table. */
  static String cell(String text) {
    return text.replace("|", "\\|").replaceAll("\\s+", " ").strip();
  }
}
