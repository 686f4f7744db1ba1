package sallet.app.file;

import java.util.List;

/** A YAML document that remembers its lines. Nothing is converted yet: a scalar is its text. */
sealed interface Yaml {
  /** Line in the file, counted from 1. */
  int line();

  /** What it is in words, for messages. */
  String what();

  /**
   * Text, number or nothing.
   *
   * @param plain written without quotes
   */
  record Scalar(int line, String text, boolean plain) implements Yaml {
    /** Whether nothing is written: YAML's null. */
    boolean isNothing() {
      return plain && (text.isEmpty() || text.equals("~") || text.equalsIgnoreCase("null"));
    }

    @Override
    public String what() {
      return isNothing() ? "nothing" : "\"" + Text.shorten(text) + "\"";
    }
  }

  /** A list. */
  record Sequence(int line, List<Yaml> items) implements Yaml {
    public Sequence {
      items = List.copyOf(items);
    }

    @Override
    public String what() {
      return "a list";
    }
  }

  /** Keys with values, each key once. */
  record Mapping(int line, List<Entry> entries) implements Yaml {
    public Mapping {
      entries = List.copyOf(entries);
    }

    @Override
    public String what() {
      return "a group of keys";
    }
  }

  /** One key with its value. */
  record Entry(int line, String key, Yaml value) {}
}
