package sallet.it;

import java.util.Map;
import java.util.ServiceLoader;
import java.util.TreeMap;
import sallet.cases.Checks;
import sallet.cases.RowCheck;

/** The checks of every subject; each subject names its own in META-INF/services. */
final class AllChecks {
  private AllChecks() {}

  /** How each file is checked, by its path below the folder of cases. */
  static Map<String, RowCheck> byFile() {
    Map<String, RowCheck> byFile = new TreeMap<>();
    for (Checks checks : ServiceLoader.load(Checks.class)) {
      checks
          .byFile()
          .forEach(
              (file, check) -> {
                if (byFile.put(file, check) != null) {
                  throw new IllegalStateException("two subjects check " + file);
                }
              });
    }
    return byFile;
  }
}
