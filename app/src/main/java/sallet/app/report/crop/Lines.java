package sallet.app.report.crop;

import sallet.app.report.Words;

/** A text for the terminal: lines of at most 80 columns. */
final class Lines {
  private static final int WIDTH = 80;

  private final StringBuilder out = new StringBuilder();

  void title(String text) {
    out.append('\n').append(text).append('\n');
  }

  void line(String text) {
    out.append(text.stripTrailing()).append('\n');
  }

  void wrapped(String text) {
    wrapped("", text);
  }

  /** A text in as many lines as it needs, each behind an indent. */
  void wrapped(String indent, String text) {
    StringBuilder line = new StringBuilder(indent);
    for (String word : text.split(" ", -1)) {
      if (line.length() + word.length() >= WIDTH && line.length() > indent.length()) {
        line(line.toString());
        line = new StringBuilder(indent);
      }
      line.append(word).append(' ');
    }
    line(line.toString());
  }

  @Override
  public String toString() {
    return Words.printable(out.toString());
  }
}
