package sallet.app.report;

import java.nio.charset.StandardCharsets;

/** Content lines of an iCalendar file. RFC 5545 (Desruisseaux, 2009), sections 3.1 and 3.3.11. */
final class ContentLine {
  private static final int LONGEST_OCTETS = 75;

  private ContentLine() {}

  /** A property with a value that needs no escaping, folded, with its line break. */
  static String of(String name, String value) {
    return fold(name + ":" + value) + "\r\n";
  }

  /** A property with a text value, escaped and folded, with its line break. */
  static String ofText(String name, String text) {
    return of(name, escape(text));
  }

  /**
   * Section 3.3.11: backslash, semicolon, comma and line feed are escaped; controls are dropped.
   */
  static String escape(String text) {
    StringBuilder out = new StringBuilder(text.length() + 16);
    text.codePoints()
        .forEach(
            c -> {
              if (c == '\n') {
                out.append("\\n");
              } else if (c == '\\' || c == ';' || c == ',') {
                out.append('\\').appendCodePoint(c);
              } else if (!Character.isISOControl(c) || c == '\t') {
                out.appendCodePoint(c);
              }
            });
    return out.toString();
  }

  /**
   * Section 3.1: no line holds more than 75 octets without its break; a longer one goes on after a
   * line break and one space. Characters of several octets stay whole.
   */
  static String fold(String line) {
    StringBuilder out = new StringBuilder(line.length() + 32);
    int octets = 0;
    for (int i = 0; i < line.length(); ) {
      String character = Character.toString(line.codePointAt(i));
      int size = character.getBytes(StandardCharsets.UTF_8).length;
      if (octets + size > LONGEST_OCTETS) {
        out.append("\r\n ");
        octets = 1;
      }
      out.append(character);
      octets += size;
      i += character.length();
    }
    return out.toString();
  }
}
