package sallet.app.file;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The faults of one file as they are found. */
final class Faults {
  /** More than this and the file is something else; the rest is counted, not listed. */
  private static final int MOST = 50;

  private final List<Fault> found = new ArrayList<>();

  void add(String path, int line, String sentence) {
    found.add(new Fault(path, line, sentence));
  }

  boolean isEmpty() {
    return found.isEmpty();
  }

  /** Whether a fault was found at the path or below it. */
  boolean touch(String path) {
    return found.stream()
        .map(Fault::path)
        .anyMatch(at -> at.equals(path) || at.startsWith(path + ".") || at.startsWith(path + "["));
  }

  /** Whether a section or list around the path is itself no section or list. */
  boolean around(String path) {
    return found.stream()
        .map(Fault::path)
        .anyMatch(at -> !at.isEmpty() && (path.startsWith(at + ".") || path.startsWith(at + "[")));
  }

  /** All faults in the order of the file. */
  List<Fault> inOrder() {
    List<Fault> sorted =
        found.stream()
            .sorted(
                Comparator.comparingInt(
                    fault -> fault.line() == 0 ? Integer.MAX_VALUE : fault.line()))
            .distinct()
            .toList();
    if (sorted.size() <= MOST) {
      return sorted;
    }
    List<Fault> cut = new ArrayList<>(sorted.subList(0, MOST));
    cut.add(new Fault("", 0, "and " + (sorted.size() - MOST) + " more faults after these"));
    return List.copyOf(cut);
  }
}
