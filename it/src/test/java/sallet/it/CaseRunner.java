package sallet.it;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import sallet.cases.CaseFolder;
import sallet.cases.Outcome;
import sallet.cases.RowCheck;
import sallet.cases.UnreadableCase;

/**
 * Compares Sallet with a folder of check files and says what came of each.
 *
 * <p>Ends with 0 when every row passed, 1 when a row failed, 2 when something could not be read.
 */
final class CaseRunner {
  private static final int FAILURES_SHOWN = 10;

  private final Map<String, RowCheck> checks;
  private final PrintStream out;
  private long passed;
  private long failed;
  private long skipped;
  private int unreadable;

  private CaseRunner(Map<String, RowCheck> checks, PrintStream out) {
    this.checks = checks;
    this.out = out;
  }

  public static void main(String[] arguments) {
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    System.exit(run(Path.of(arguments[0]), AllChecks.byFile(), out));
  }

  /** Runs all files of the folder and gives the exit status. */
  static int run(Path folder, Map<String, RowCheck> checks, PrintStream out) {
    return new CaseRunner(checks, out).runAll(folder);
  }

  private int runAll(Path folder) {
    if (!Files.isDirectory(folder)) {
      out.printf("%s is not a folder.%n", folder);
      return 2;
    }
    try {
      boolean any = false;
      for (String file : CaseFile.in(folder)) {
        any |= !file.endsWith(".md") && runFile(file, new CaseFolder(folder));
      }
      if (!any) {
        out.printf("%s holds no check file that Sallet knows (see docs/cases.md).%n", folder);
        return 2;
      }
    } catch (IOException e) {
      out.printf("%s cannot be read (%s).%n", folder, e.getMessage());
      return 2;
    }
    out.printf(
        "%d rows passed, %d failed, %d skipped; %d files unreadable.%n",
        passed, failed, skipped, unreadable);
    return unreadable > 0 ? 2 : failed > 0 ? 1 : 0;
  }

  /** Whether the file is a known one. */
  private boolean runFile(String file, CaseFolder folder) {
    Optional<CaseFile> known =
        CaseFile.known().stream().filter(candidate -> candidate.matches(file)).findFirst();
    RowCheck check = checks.get(file);
    try {
      if (check != null) {
        print(FileResult.of(file, check, folder));
      } else if (known.isPresent()) {
        String what = known.get().kind() == CaseFile.Kind.DATA ? "data" : "not built yet";
        out.printf("%-46s %s%s%n", file, what, size(file, folder));
      } else {
        out.printf("%-46s not known to Sallet%n", file);
      }
    } catch (UnreadableCase e) {
      unreadable++;
      out.printf("%-46s unreadable: %s%n", file, e.getMessage());
    }
    return check != null || known.isPresent();
  }

  private static String size(String file, CaseFolder folder) {
    if (!file.endsWith(".csv") || file.contains("/weather/")) {
      return "";
    }
    return ", " + folder.rows(file).size() + " rows";
  }

  private void print(FileResult result) {
    passed += result.passed();
    failed += result.failed();
    skipped += result.skipped();
    out.printf("%-46s %d passed, %d failed", result.file(), result.passed(), result.failed());
    result
        .worst()
        .ifPresent(row -> out.print(row.exact() ? "; all exact" : "; worst: " + describe(row)));
    out.println();
    if (result.dataOnly() > 0) {
      out.printf("    %d rows hold nothing to compare%n", result.dataOnly());
    }
    result.rows().stream()
        .filter(RowResult::failed)
        .limit(FAILURES_SHOWN)
        .forEach(row -> out.printf("    failed: %s%n", describe(row)));
    reasons(result.rows())
        .forEach((reason, count) -> out.printf("    %d skipped: %s%n", count, reason));
  }

  private static Map<String, Integer> reasons(List<RowResult> rows) {
    Map<String, Integer> reasons = new TreeMap<>();
    rows.forEach(row -> row.skipped().ifPresent(reason -> reasons.merge(reason, 1, Integer::sum)));
    return reasons;
  }

  private static String describe(RowResult row) {
    Outcome worst = row.worst().orElseThrow();
    return "line %d, %s: %s expected, %s ours, %s"
        .formatted(
            row.row().line(),
            worst.what(),
            worst.expected(),
            worst.ours(),
            CaseText.share(worst) + " of the tolerance");
  }
}
