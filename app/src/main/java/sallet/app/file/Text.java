package sallet.app.file;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** Words in messages: cut to a readable length, and the nearest known word to a misspelt one. */
final class Text {
  private static final int LONGEST = 60;

  private Text() {}

  /** A text from the file on one line, without control characters, cut when long. */
  static String shorten(String text) {
    String line = text.replaceAll("[\\p{Cntrl}\\p{Cf}\\p{Cs}]+", " ").strip();
    return line.codePointCount(0, line.length()) <= LONGEST
        ? line
        : line.substring(0, line.offsetByCodePoints(0, LONGEST)) + "…";
  }

  /** " (did you mean X?)" for the nearest known word, or nothing when none is near. */
  static String didYouMean(String word, Collection<String> known) {
    return nearest(word, known).map(near -> " (did you mean \"" + near + "\"?)").orElse("");
  }

  /** The known word that takes the fewest typing slips to reach, if they are few. */
  static Optional<String> nearest(String word, Collection<String> known) {
    if (word.length() > LONGEST) {
      return Optional.empty();
    }
    String wanted = word.toLowerCase(Locale.ROOT);
    Optional<String> best = Optional.empty();
    int fewest = Math.max(1, wanted.length() / 3) + 1;
    for (String candidate : known) {
      int slips = slips(wanted, candidate.toLowerCase(Locale.ROOT));
      if (slips < fewest) {
        fewest = slips;
        best = Optional.of(candidate);
      }
    }
    return best;
  }

  /** Letters to put in, leave out, change or swap with a neighbour (Damerau 1964). */
  static int slips(String a, String b) {
    int[][] d = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        d[i][j] = i == 0 ? j : j == 0 ? i : step(d, a, b, i, j);
      }
    }
    return d[a.length()][b.length()];
  }

  private static int step(int[][] d, String a, String b, int i, int j) {
    int change = d[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
    int least = Math.min(change, Math.min(d[i - 1][j], d[i][j - 1]) + 1);
    boolean swapped =
        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
    return swapped ? Math.min(least, d[i - 2][j - 2] + 1) : least;
  }
}
