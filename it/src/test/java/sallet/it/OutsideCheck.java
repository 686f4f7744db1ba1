package sallet.it;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import sallet.cases.CaseFolder;
import sallet.cases.CaseRow;

/**
 * A test that compares with something outside the project and has no check file.
 *
 * @param subject heading it stands under
 * @param checked what is compared, with its unit
 * @param source whose value it is: author, year and place; a library; or the formula worked by hand
 * @param expected numbers or ranges ("3 to 5") parted by semicolons, or words
 * @param ours what Sallet gives, likewise
 * @param allowed difference from each number, in its unit or in percent; nothing where there is
 *     none
 * @param test class and method
 */
record OutsideCheck(
    String subject,
    String checked,
    String source,
    String expected,
    String ours,
    String allowed,
    String test) {
  private static final Pattern NUMBER = Pattern.compile("-?[0-9.]+(e-?[0-9]+)?");
  private static final Pattern RANGE = Pattern.compile("([-0-9.]+) to ([-0-9.]+)");

  /** Room for the last digit of a number that is written short. */
  private static final double ROUNDING = 1e-12;

  /** All of them, from {@code outside-checks.csv}, in its order. */
  static List<OutsideCheck> all(Path project) {
    return new CaseFolder(project.resolve("it/src/test/resources"))
        .rows("outside-checks.csv").stream().map(OutsideCheck::of).toList();
  }

  private static OutsideCheck of(CaseRow row) {
    return new OutsideCheck(
        row.text("subject"),
        row.text("checked"),
        row.text("source"),
        row.text("expected"),
        row.text("ours"),
        row.text("allowed"),
        row.text("test"));
  }

  /** The section of the validation page: a table for each subject. */
  static String section(List<OutsideCheck> checks) {
    StringBuilder page = new StringBuilder();
    page.append(
        """

        ## Checks in the tests

        %d more comparisons with something outside Sallet stand in tests of their own and run each \
        time `./check` runs. "Allowed" is the largest difference that lets the test pass. Numbers of \
        Sallet's were noted from a run; "the same" stands where both sides are computed anew each \
        time. Where a test goes through many values only some are shown. `memory` marks a value \
        nobody looked up.
        """
            .formatted(checks.size()));
    Map<String, List<OutsideCheck>> bySubject =
        checks.stream()
            .collect(
                Collectors.groupingBy(
                    OutsideCheck::subject, LinkedHashMap::new, Collectors.toList()));
    bySubject.forEach(
        (subject, rows) -> {
          page.append("\n### %s\n\n".formatted(subject));
          page.append("| what | source | expected | Sallet | allowed | test |\n");
          page.append("| --- | --- | ---: | ---: | ---: | --- |\n");
          rows.forEach(row -> page.append(row.line()));
        });
    return page.toString();
  }

  private String line() {
    return "| %s | %s | %s | %s | %s | `%s` |\n"
        .formatted(
            CaseText.cell(checked),
            CaseText.cell(source),
            CaseText.cell(expected),
            CaseText.cell(ours),
            CaseText.cell(allowed),
            test);
  }

  /** Whether what is written as ours lies within what is allowed of what is expected. */
  boolean holds() {
    String[] wanted = expected.split("; ", -1);
    String[] given = ours.split("; ", -1);
    return wanted.length == given.length
        && IntStream.range(0, wanted.length).allMatch(i -> holds(wanted[i], given[i]));
  }

  private boolean holds(String wanted, String given) {
    Matcher range = RANGE.matcher(wanted);
    if (range.matches()) {
      double value = Double.parseDouble(given);
      return value >= Double.parseDouble(range.group(1))
          && value <= Double.parseDouble(range.group(2));
    }
    if (!NUMBER.matcher(wanted).matches()) {
      return wanted.equals(given);
    }
    double value = Double.parseDouble(wanted);
    return Math.abs(Double.parseDouble(given) - value) <= difference(value) + ROUNDING;
  }

  private double difference(double value) {
    return allowed.isEmpty()
        ? 0
        : allowed.endsWith(" %")
            ? Math.abs(value) * Double.parseDouble(allowed.replace(" %", "")) / 100
            : Double.parseDouble(allowed);
  }
}
