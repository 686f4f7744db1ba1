package sallet.app.file;

import java.util.List;
import java.util.Optional;

/** What to say about a key that is not in the table. */
final class UnknownKey {
  private UnknownKey() {}

  static String sentence(Keys keys, List<Key> allowed, Yaml.Entry entry) {
    String word = entry.key();
    List<String> names = allowed.stream().map(Key::name).toList();
    if (word.matches("\\d+\\s*\\D{0,12}")
        && entry.value() instanceof Yaml.Scalar scalar
        && scalar.isNothing()) {
      return "is not a key; if it is the end of a number with a comma, use a decimal point";
    }
    Optional<String> near = Text.nearest(word, names);
    if (near.isPresent()) {
      return "is not a known key; did you mean \"" + near.get() + "\"?";
    }
    Optional<String> elsewhere =
        keys.all().stream().filter(key -> key.name().equals(word)).map(Key::parent).findFirst();
    if (elsewhere.isPresent()) {
      String home = elsewhere.get();
      return "is not a known key here; \""
          + word
          + "\" belongs "
          + (home.isEmpty() ? "at the left edge of the file" : "in " + home);
    }
    return "is not a known key; known here are " + String.join(", ", names);
  }
}
