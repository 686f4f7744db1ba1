package sallet.app.report.water;

import java.util.Locale;
import java.util.regex.Pattern;

/** Headings, lines and wrapped paragraphs for a terminal of 80 columns. */
final class TextLines {
  private static final int WIDTH = 78;

  /** The space between a number and its unit, which must stay on one line. */
  private static final Pattern UNIT =
      Pattern.compile("(?<=\\d) (?=(%|°C|g|mL|L|cm|h|min|mS/cm|points)(\\W|$))");

  private final StringBuilder out = new StringBuilder();

  void heading(String title) {
    out.append('\n').append(title).append('\n');
  }

  void line(String format, Object... values) {
    out.append(String.format(Locale.ROOT, format, values).stripTrailing()).append('\n');
  }

  /** Words on lines of the terminal's width, the first behind a mark. */
  void wrap(String mark, String text) {
    int column = mark.length();
    out.append(mark);
    boolean first = true;
    for (String word : UNIT.matcher(text).replaceAll("\u00a0").split(" ", -1)) {
      if (!first && column + 1 + word.length() > WIDTH) {
        out.append('\n').append(" ".repeat(mark.length()));
        column = mark.length();
        first = true;
      }
      if (!first) {
        out.append(' ');
        column++;
      }
      out.append(word.replace('\u00a0', ' '));
      column += word.length();
      first = false;
    }
    out.append('\n');
  }

  @Override
  public String toString() {
    return out.toString();
  }
}
