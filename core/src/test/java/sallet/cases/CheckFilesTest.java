package sallet.cases;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicNode;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Every check file shipped in the test resources, row by row, at its stated tolerance. */
public abstract class CheckFilesTest {
  private final Checks checks;

  protected CheckFilesTest(Checks checks) {
    this.checks = checks;
  }

  /** The folder of cases shipped in the test resources. */
  public static CaseFolder shipped() throws URISyntaxException {
    URL url = Objects.requireNonNull(CheckFilesTest.class.getResource("/cases"));
    return new CaseFolder(Path.of(url.toURI()));
  }

  @TestFactory
  Stream<DynamicNode> files() throws URISyntaxException {
    CaseFolder folder = shipped();
    return checks.byFile().keySet().stream()
        .sorted()
        .map(
            file -> {
              List<CaseRow> rows = folder.rows(file);
              assertThat(rows).as(file).isNotEmpty();
              return DynamicContainer.dynamicContainer(
                  file,
                  rows.stream()
                      .map(
                          row ->
                              DynamicTest.dynamicTest(
                                  "line " + row.line(), () -> run(row, folder))));
            });
  }

  private void run(CaseRow row, CaseFolder folder) {
    RowCheck check = Objects.requireNonNull(checks.byFile().get(row.file()));
    try {
      for (Outcome outcome : check.check(row, folder)) {
        assertThat(outcome.passed()).as("%s line %d: %s", row.file(), row.line(), outcome).isTrue();
      }
    } catch (RowCheck.Skipped missing) {
      Assumptions.abort(String.valueOf(missing.getMessage()));
    }
  }
}
