package sallet.app.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** How drawings tell crops apart: two letters, a pattern and a colour each. */
final class CropMarks {
  /** Colours and patterns of the page's style; the nth crop takes the nth of each. */
  static final int COLOURS = 8;

  private final Map<String, Mark> marks = new LinkedHashMap<>();

  /**
   * The mark of a crop.
   *
   * @param crop catalogue name
   * @param letters unique in the plan
   * @param number from 0, in order of first sowing
   */
  record Mark(String crop, String letters, int number) {
    /** Reference to the pattern that fills shapes of this crop. */
    String fill() {
      return "url(#crop" + number + ")";
    }
  }

  /**
   * @param crops catalogue names, each once
   */
  CropMarks(List<String> crops) {
    Set<String> taken = new LinkedHashSet<>();
    for (String crop : crops) {
      String letters = candidates(crop).filter(c -> !taken.contains(c)).findFirst().orElseThrow();
      taken.add(letters);
      marks.put(crop, new Mark(crop, letters, marks.size()));
    }
  }

  /** All marks in order. */
  List<Mark> all() {
    return List.copyOf(marks.values());
  }

  /** The mark of a crop of the plan. */
  Mark of(String crop) {
    Mark mark = marks.get(crop);
    if (mark == null) {
      throw new IllegalArgumentException("not a crop of this plan: " + crop);
    }
    return mark;
  }

  /** Initials of the first and last word, else the first letter with a later one, else a number. */
  private static Stream<String> candidates(String crop) {
    List<String> words = new ArrayList<>();
    for (String word : crop.split("[^\\p{L}]+")) {
      if (!word.isEmpty()) {
        words.add(word);
      }
    }
    String letters = words.isEmpty() ? "?" : String.join("", words);
    String first = letters.substring(0, 1).toUpperCase(Locale.ROOT);
    Stream<String> initials =
        words.size() < 2
            ? Stream.of()
            : Stream.of(
                first + words.get(words.size() - 1).substring(0, 1).toUpperCase(Locale.ROOT));
    Stream<String> pairs =
        letters.substring(1).toLowerCase(Locale.ROOT).chars().mapToObj(c -> first + (char) c);
    Stream<String> numbered = Stream.iterate(1, n -> n + 1).map(n -> first + n);
    return Stream.concat(Stream.concat(initials, pairs), numbered);
  }
}
