package sallet.app.report;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * HTML and SVG, written element by element. Every text and attribute value is escaped and every
 * element closed, so what comes out is well formed whatever the texts hold.
 */
public final class Markup {
  /** The space between a number and its unit. */
  private static final Pattern UNIT =
      Pattern.compile("(?<=\\d) (?=%|°C|(g|kg|min|mol|mA|cm|m|L|s)\\b)");

  private final StringBuilder out = new StringBuilder();
  private final Deque<String> open = new ArrayDeque<>();

  /**
   * Opens an element.
   *
   * @param attributes names and values in turn
   */
  public Markup open(String name, Object... attributes) {
    start(name, attributes);
    out.append('>');
    open.push(name);
    return this;
  }

  /** Closes the element opened last. */
  public Markup close() {
    out.append("</").append(open.pop()).append(">");
    return this;
  }

  /** Closes the element opened last and ends the line. */
  public Markup closeLine() {
    close();
    out.append('\n');
    return this;
  }

  /** An element without content. */
  public Markup empty(String name, Object... attributes) {
    start(name, attributes);
    out.append("/>");
    return this;
  }

  /** An element with a text. */
  public Markup element(String name, String text, Object... attributes) {
    return open(name, attributes).text(text).closeLine();
  }

  /** A text; a number stays on one line with its unit. */
  public Markup text(String text) {
    out.append(escape(UNIT.matcher(text).replaceAll("\u00a0")));
    return this;
  }

  /** Markup made before. */
  public Markup add(Markup part) {
    out.append(part);
    return this;
  }

  /** Our own style sheet: text that is markup already and holds nothing from outside. */
  public Markup style(String css) {
    out.append("<style>\n").append(css).append("</style>\n");
    return this;
  }

  private void start(String name, Object... attributes) {
    out.append('<').append(name);
    for (int i = 0; i < attributes.length; i += 2) {
      out.append(' ').append(attributes[i]).append("=\"");
      out.append(escape(value(attributes[i + 1]))).append('"');
    }
  }

  private static String value(Object value) {
    return value instanceof Double number ? number(number) : value.toString();
  }

  /** At most two decimals, with a point, such as "12.5". */
  public static String number(double value) {
    String text = String.format(Locale.ROOT, "%.2f", value);
    return text.replaceAll("\\.?0+$", "").replaceAll("^-0$", "0");
  }

  private static String escape(String text) {
    return Words.printable(text)
        .replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;")
        .replace("'", "&#39;");
  }

  @Override
  public String toString() {
    if (!open.isEmpty()) {
      throw new IllegalStateException("still open: " + open);
    }
    return out.toString();
  }
}
