package sallet.app.file;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Walks a document along the table of keys: every key known, every value of its form and inside its
 * range. What fits is collected by path; what does not becomes a fault.
 */
final class Structure {
  private final Keys keys;
  private final Faults faults;
  private final Map<String, Object> values = new HashMap<>();
  private final Map<String, Integer> lines = new HashMap<>();
  private final Map<String, Integer> counts = new HashMap<>();

  private Structure(Keys keys, Faults faults) {
    this.keys = keys;
    this.faults = faults;
  }

  /** The values of a document; its faults are added to {@code faults}. */
  static Values read(Yaml root, Keys keys, Faults faults) {
    Structure structure = new Structure(keys, faults);
    if (root instanceof Yaml.Mapping mapping) {
      structure.section("", mapping);
    } else {
      faults.add(
          "", root.line(), "the file holds " + root.what() + "; it must hold keys like place:");
    }
    return new Values(keys, faults, structure.values, structure.lines, structure.counts);
  }

  private void section(String path, Yaml.Mapping mapping) {
    List<Key> allowed = keys.inside(path);
    for (Yaml.Entry entry : mapping.entries()) {
      String at = path.isEmpty() ? entry.key() : path + "." + entry.key();
      if (allowed.stream().anyMatch(key -> key.name().equals(entry.key()))) {
        lines.put(at, entry.line());
        value(keys.of(at), at, entry.value(), entry.line());
      } else {
        faults.add(Text.shorten(at), entry.line(), UnknownKey.sentence(keys, allowed, entry));
      }
    }
    for (Key key : allowed) {
      String at = path.isEmpty() ? key.name() : path + "." + key.name();
      if (key.required() && !lines.containsKey(at)) {
        faults.add(at, mapping.line(), "is missing; " + wanted(key));
      }
    }
  }

  private void value(Key key, String path, Yaml value, int line) {
    if (value instanceof Yaml.Scalar scalar && scalar.isNothing()) {
      faults.add(path, line, "has no value; " + wanted(key) + ", or leave the key out");
    } else if (value instanceof Yaml.Mapping mapping && key.form().mayHaveKeys()) {
      section(path, mapping);
    } else if (value instanceof Yaml.Sequence sequence && key.form().mayBeList()) {
      list(key, path, sequence);
    } else if (value instanceof Yaml.Sequence sequence && holdsScalars(key.form())) {
      scalars(key, path, sequence, line);
    } else if (value instanceof Yaml.Scalar scalar && takesScalar(key, scalar)) {
      scalar(key, path, scalar);
    } else {
      faults.add(path, line, "holds " + value.what() + "; " + wanted(key));
    }
  }

  private static boolean holdsScalars(Form form) {
    return form == Form.MONTHLY || form == Form.TWELVE || form == Form.DAYS || form == Form.CROPS;
  }

  private static boolean takesScalar(Key key, Yaml.Scalar scalar) {
    return switch (key.form()) {
      case SECTION, SECTION_OR_LIST, LIST, TWELVE, DAYS, CROPS -> false;
      case SECTION_OR_NONE -> scalar.text().equals("none");
      default -> true;
    };
  }

  private void scalar(Key key, String path, Yaml.Scalar scalar) {
    if (key.form() == Form.SECTION_OR_NONE) {
      values.put(path, scalar.text());
      return;
    }
    try {
      values.put(path, Scalars.read(key, scalar));
    } catch (Scalars.Wrong e) {
      faults.add(path, scalar.line(), e.sentence());
    }
  }

  private void list(Key key, String path, Yaml.Sequence sequence) {
    int looked = Math.min(sequence.items().size(), (int) key.max());
    counts.put(path, looked);
    count(key, path, sequence, key.min(), key.max());
    for (int i = 0; i < looked; i++) {
      String at = path + "[" + i + "]";
      Yaml item = sequence.items().get(i);
      lines.put(at, item.line());
      if (item instanceof Yaml.Mapping mapping) {
        section(at, mapping);
      } else {
        faults.add(at, item.line(), "holds " + item.what() + "; " + keysWanted(path + "[]"));
      }
    }
  }

  private void scalars(Key key, String path, Yaml.Sequence sequence, int line) {
    boolean monthly = key.form() == Form.MONTHLY || key.form() == Form.TWELVE;
    if (monthly && sequence.items().size() != 12) {
      faults.add(
          path, line, "has " + sequence.items().size() + " values; give 12, January to December");
    } else if (!monthly) {
      count(key, path, sequence, key.min(), key.max());
    }
    counts.put(path, sequence.items().size());
    List<Object> good = new ArrayList<>();
    int looked = monthly ? 12 : (int) key.max();
    for (int i = 0; i < Math.min(looked, sequence.items().size()); i++) {
      String at = path + "[" + i + "]";
      Yaml item = sequence.items().get(i);
      lines.put(at, item.line());
      if (!(item instanceof Yaml.Scalar scalar) || scalar.isNothing()) {
        faults.add(at, item.line(), "holds " + item.what() + "; " + wanted(key));
        continue;
      }
      try {
        Object value = Scalars.read(key, scalar);
        values.put(at, value);
        good.add(value);
      } catch (Scalars.Wrong e) {
        faults.add(at, item.line(), e.sentence());
      }
    }
    values.put(path, List.copyOf(good));
  }

  private void count(Key key, String path, Yaml.Sequence sequence, double min, double max) {
    int size = sequence.items().size();
    if (size < min || size > max) {
      faults.add(
          path,
          lines.getOrDefault(path, sequence.line()),
          "has "
              + size
              + " entries, allowed are "
              + (int) min
              + " to "
              + (int) max
              + "; "
              + wanted(key));
    }
  }

  private String wanted(Key key) {
    return switch (key.form()) {
      case SECTION -> keysWanted(key.path());
      case SECTION_OR_NONE -> keysWanted(key.path()) + ", or the word none";
      case SECTION_OR_LIST ->
          keysWanted(key.path()) + ", or a list of groups with " + names(key.path() + "[]");
      case LIST -> "write a list of groups with " + names(key.path() + "[]");
      default -> Wanted.example(key);
    };
  }

  private String keysWanted(String path) {
    return "write keys such as " + names(path);
  }

  private String names(String path) {
    return String.join(", ", keys.inside(path).stream().map(Key::name).limit(4).toList());
  }
}
