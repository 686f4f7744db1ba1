package sallet.it;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sallet.cases.CaseFolder;
import sallet.cases.Outcome;
import sallet.cases.RowCheck;

/** The two generated pages: what is checked against what, and which files can be checked. */
final class CasePages {
  private static final int ROWS_SHOWN = 5;
  private static final int SOURCES_SHOWN = 4;

  private CasePages() {}

  /** Writes both pages below the project's folder. */
  public static void main(String[] arguments) throws IOException {
    Path project = Path.of(arguments[0]);
    for (Map.Entry<String, String> page : of(project).entrySet()) {
      Path file = project.resolve(page.getKey());
      Files.createDirectories(file.resolveSibling("."));
      Files.writeString(file, page.getValue());
    }
  }

  /** Text of each page by its path in the project. */
  static Map<String, String> of(Path project) throws IOException {
    List<CaseFolder> shipped = new ArrayList<>();
    for (String module : List.of("core", "plan")) {
      Path cases = project.resolve(module).resolve("src/test/resources/cases");
      if (Files.isDirectory(cases)) {
        shipped.add(new CaseFolder(cases));
      }
    }
    Map<String, RowCheck> checks = AllChecks.byFile();
    YieldPage yields = new YieldPage(shipped.get(0));
    return Map.of(
        "docs/validation.md",
        validation(checks, shipped)
            + OutsideCheck.section(OutsideCheck.all(project))
            + yields.section(),
        "docs/cases.md",
        cases(checks.keySet()),
        YieldPage.FIGURE,
        yields.figure());
  }

  private static String cases(Set<String> checked) {
    StringBuilder page = new StringBuilder();
    page.append(
        """
        # Check files

        `./check --cases DIR` compares Sallet with every file below `DIR` that has one of the names \
        and the columns listed here. Each row says what to compute, what is expected, within which \
        tolerance and from which source. For each file the run prints how many rows passed and \
        failed and which row came closest to its tolerance; it ends with 0 when all rows passed, \
        1 when one failed and 2 when something could not be read. It needs no network once Sallet \
        is built, and it changes no file.

        * **checked**: every row is computed and compared.
        * **data**: catalogues, parameters and companions of other files; read for their shape only.
        * **not built yet**: Sallet does not compute this so far; the file is named and left alone.

        This page is written by `./check --docs`.

        | file | state | holds |
        | --- | --- | --- |
        """);
    for (CaseFile file : CaseFile.known()) {
      String state =
          checked.stream().anyMatch(file::matches)
              ? "checked"
              : file.kind() == CaseFile.Kind.DATA ? "data" : "not built yet";
      page.append("| `%s` | %s | %s |\n".formatted(file.path(), state, file.holds()));
    }
    return page.toString();
  }

  private static String validation(Map<String, RowCheck> checks, List<CaseFolder> shipped) {
    StringBuilder page = new StringBuilder();
    page.append(
        """
        # Validation

        What Sallet computes, beside what others published or computed. Every row of the files \
        below is compared each time `./check` runs; this page shows the first rows of each file \
        and the one that came closest to its tolerance (marked *). "Tolerance used" is the \
        difference as a share of the tolerance that the file itself states: above 100 % the check \
        fails. Numbers are rounded to six digits here, not in the comparison.

        This page is written by `./check --docs`; a test fails when it is out of date.
        """);
    for (Map.Entry<String, RowCheck> check : checks.entrySet()) {
      for (CaseFolder folder : shipped) {
        if (folder.has(check.getKey())) {
          section(page, FileResult.of(check.getKey(), check.getValue(), folder));
        }
      }
    }
    return page.toString();
  }

  private static void section(StringBuilder page, FileResult result) {
    page.append("\n## %s\n\n".formatted(result.file()));
    about(result.file()).ifPresent(holds -> page.append("%s. ".formatted(capital(holds))));
    page.append("%d rows: %d passed".formatted(result.rows().size(), result.passed()));
    append(page, result.failed(), "failed");
    append(page, result.skipped(), "skipped");
    append(page, result.dataOnly(), "with nothing to compare");
    page.append(".\n");
    provenance(page, result.rows());
    page.append("\n| line | quantity | expected | Sallet | tolerance used |\n");
    page.append("| ---: | --- | ---: | ---: | ---: |\n");
    Optional<RowResult> worst = result.worst();
    Stream.concat(
            result.rows().stream().filter(row -> !row.outcomes().isEmpty()).limit(ROWS_SHOWN),
            worst.stream())
        .distinct()
        .forEach(
            row ->
                row.outcomes()
                    .forEach(
                        outcome -> page.append(line(row, outcome, isWorst(worst, row, outcome)))));
  }

  private static void append(StringBuilder page, long count, String what) {
    if (count > 0) {
      page.append(", %d %s".formatted(count, what));
    }
  }

  private static boolean isWorst(Optional<RowResult> worst, RowResult row, Outcome outcome) {
    return RowResult.percentOfTolerance(outcome) > 0
        && worst.filter(row::equals).flatMap(RowResult::worst).filter(outcome::equals).isPresent();
  }

  private static String line(RowResult row, Outcome outcome, boolean worst) {
    return "| %d%s | %s | %s | %s | %s |\n"
        .formatted(
            row.row().line(),
            worst ? "*" : "",
            CaseText.cell(outcome.what()),
            CaseText.cell(CaseText.rounded(outcome.expected())),
            CaseText.cell(CaseText.rounded(outcome.ours())),
            CaseText.share(outcome));
  }

  /** The sources that the rows themselves name, and how their values are known. */
  private static void provenance(StringBuilder page, List<RowResult> rows) {
    List<String> sources =
        Stream.of("source", "source_ref", "paper")
            .flatMap(column -> rows.stream().filter(row -> row.row().has(column)).map(text(column)))
            .distinct()
            .toList();
    sources.stream()
        .limit(SOURCES_SHOWN)
        .forEach(source -> page.append("\n* Source: %s".formatted(CaseText.cell(source))));
    if (sources.size() > SOURCES_SHOWN) {
      page.append("\n* and %d more, in the file".formatted(sources.size() - SOURCES_SHOWN));
    }
    Map<String, Long> known =
        rows.stream()
            .filter(row -> row.row().has("known_as"))
            .map(text("known_as"))
            .collect(Collectors.groupingBy(x -> x, LinkedHashMap::new, Collectors.counting()));
    if (!known.isEmpty()) {
      page.append(
          known.entrySet().stream()
              .map(entry -> "%d %s".formatted(entry.getValue(), CaseText.cell(entry.getKey())))
              .collect(Collectors.joining(", ", "\n* Known as: ".formatted(), "")));
    }
    page.append("\n");
  }

  private static java.util.function.Function<RowResult, String> text(String column) {
    return row -> row.row().text(column);
  }

  private static Optional<String> about(String file) {
    return CaseFile.known().stream()
        .filter(known -> known.matches(file))
        .map(CaseFile::holds)
        .findFirst();
  }

  private static String capital(String text) {
    return Character.toUpperCase(text.charAt(0)) + text.substring(1);
  }
}
