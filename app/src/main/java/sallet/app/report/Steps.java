package sallet.app.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Locale;
import sallet.units.Step;

/** The steps of a reckoning, as text and as JSON. */
public final class Steps {
  private static final MathContext DIGITS = new MathContext(6);

  private static final int WIDTH = 78;
  private static final String INDENT = "    ";

  private Steps() {}

  /** Two lines a step: the number, and how it comes about with its source. */
  public static String text(List<Step> steps) {
    StringBuilder out = new StringBuilder();
    for (Step step : steps) {
      out.append(
          String.format(Locale.ROOT, "%-36s %10.3f %s", step.name(), step.value(), step.unit())
              .stripTrailing());
      out.append('\n');
      String why = step.source().isEmpty() ? step.how() : step.how() + " [" + step.source() + "]";
      indent(out, why);
    }
    return out.toString();
  }

  /** Words on lines of the terminal's width, set in. */
  private static void indent(StringBuilder out, String text) {
    int column = 0;
    for (String word : text.split(" ", -1)) {
      if (column > 0 && column + 1 + word.length() > WIDTH) {
        out.append('\n');
        column = 0;
      }
      String before = column == 0 ? INDENT : " ";
      out.append(before).append(word);
      column += before.length() + word.length();
    }
    out.append('\n');
  }

  /** An object a step. */
  public static ArrayNode json(List<Step> steps) {
    ArrayNode array = JsonNodeFactory.instance.arrayNode();
    for (Step step : steps) {
      array
          .addObject()
          .put("name", step.name())
          .put("value", rounded(step.value()))
          .put("unit", step.unit())
          .put("how", step.how())
          .put("source", step.source());
    }
    return array;
  }

  /** To six significant digits. */
  public static double rounded(double value) {
    return new BigDecimal(value).round(DIGITS).stripTrailingZeros().doubleValue();
  }
}
