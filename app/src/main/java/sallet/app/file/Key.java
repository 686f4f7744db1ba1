package sallet.app.file;

import java.util.List;
import java.util.Optional;
import sallet.units.Dimension;

/**
 * One key of the household file.
 *
 * @param path where it stands; "[]" marks the items of a list
 * @param form what may stand behind it
 * @param dimension what a quantity measures
 * @param choices the allowed words of a choice
 * @param min least value in the base unit, or fewest items, or shortest text
 * @param max largest value, most items or longest text
 * @param standard the default as it would be written; "required" when there is none; in brackets
 *     when it is worked out from other keys
 * @param meaning what it is
 * @param origin where the default comes from
 */
record Key(
    String path,
    Form form,
    Optional<Dimension> dimension,
    List<String> choices,
    double min,
    double max,
    String standard,
    String meaning,
    String origin) {
  Key {
    choices = List.copyOf(choices);
  }

  boolean required() {
    return standard.equals("required");
  }

  /** The last word of the path. */
  String name() {
    return path.substring(path.lastIndexOf('.') + 1);
  }

  /** The section it stands in; empty for the outermost keys. */
  String parent() {
    int dot = path.lastIndexOf('.');
    return dot < 0 ? "" : path.substring(0, dot);
  }

  Dimension measures() {
    return dimension.orElseThrow(() -> new IllegalStateException(path + " has no unit"));
  }
}
