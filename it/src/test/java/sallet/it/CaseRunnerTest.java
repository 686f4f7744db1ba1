package sallet.it;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sallet.cases.Outcome;
import sallet.cases.RowCheck;

/** The case runner, with a check of its own: ours is always twice the column x. */
class CaseRunnerTest {
  private static final String FILE = "light/sun_patch.csv";
  private static final Map<String, RowCheck> TWICE =
      Map.of(
          FILE,
          (row, folder) -> {
            if (row.number("x") < 0) {
              throw new RowCheck.Skipped("needs a number that is not negative");
            }
            if (row.number("x") > 100) {
              throw new IllegalArgumentException("x must be 0 to 100, was " + row.number("x"));
            }
            return List.of(
                Outcome.number("twice", row.number("expected"), 2 * row.number("x"), 0.5));
          });

  @TempDir Path folder;
  private final ByteArrayOutputStream printed = new ByteArrayOutputStream();

  @Test
  void allRowsPassing() throws IOException {
    write(FILE, "x,expected\n1,2\n2,4.4\n");
    assertThat(run()).isZero();
    assertThat(text())
        .contains("2 passed, 0 failed; worst: line 3, twice: 4.4 expected, 4.0 ours, 80 % of");
  }

  @Test
  void oneRowFailing() throws IOException {
    write(FILE, "x,expected\n1,2\n2,5\n");
    assertThat(run()).isEqualTo(1);
    assertThat(text()).contains("1 passed, 1 failed").contains("failed: line 3, twice: 5.0");
  }

  @Test
  void refusedRowIsAFailedOne() throws IOException {
    write(FILE, "x,expected\n1,2\n101,202\n");
    assertThat(run()).isEqualTo(1);
    assertThat(text()).contains("1 passed, 1 failed").contains("x must be 0 to 100, was 101.0");
  }

  @Test
  void skippedRowsNeitherPassNorFail() throws IOException {
    write(FILE, "x,expected\n1,2\n-1,2\n-2,2\n");
    assertThat(run()).isZero();
    assertThat(text())
        .contains("1 passed, 0 failed")
        .contains("2 skipped: needs a number that is not negative")
        .contains("1 rows passed, 0 failed, 2 skipped");
  }

  @Test
  void dataAndUnbuiltAndUnknownFilesAreNamed() throws IOException {
    write(FILE, "x,expected\n1,2\n");
    write("feed/salts.csv", "id,name\na,b\n");
    write("plan/plan01.json", "{}");
    write("notes.txt", "mine");
    assertThat(run()).isZero();
    assertThat(text())
        .containsPattern("feed/salts.csv +data, 1 rows")
        .containsPattern("plan/plan01.json +not built yet")
        .containsPattern("notes.txt +not known to Sallet");
  }

  @Test
  void brokenFilesAreUnreadable() throws IOException {
    write(FILE, "x,wrong\n1,2\n");
    assertThat(run()).isEqualTo(2);
    assertThat(text()).contains("unreadable: light/sun_patch.csv line 2 has no column expected.");
  }

  @Test
  void textInPlaceOfANumberIsUnreadable() throws IOException {
    write(FILE, "x,expected\none,2\n");
    assertThat(run()).isEqualTo(2);
    assertThat(text()).contains("x is not a number: one.");
  }

  @Test
  void rowsOfUnequalWidthAreUnreadable() throws IOException {
    write(FILE, "x,expected\n1,2\n1\n");
    assertThat(run()).isEqualTo(2);
    assertThat(text()).contains("is not a table of comma-separated values");
  }

  @Test
  void brokenDataIsUnreadableToo() throws IOException {
    write(FILE, "x,expected\n1,2\n");
    write("feed/salts.csv", "id,name\na,b,c\n");
    assertThat(run()).isEqualTo(2);
  }

  @Test
  void aFileWithoutRowsIsUnreadable() throws IOException {
    write(FILE, "x,expected\n");
    assertThat(run()).isEqualTo(2);
    assertThat(text()).contains("has no rows");
  }

  @Test
  void aMissingOrEmptyFolderIsUnreadable() {
    assertThat(run()).isEqualTo(2);
    assertThat(text()).contains("holds no check file that Sallet knows");
    assertThat(CaseRunner.run(folder.resolve("none"), TWICE, new PrintStream(printed)))
        .isEqualTo(2);
    assertThat(text()).contains("none is not a folder.");
  }

  private int run() {
    return CaseRunner.run(folder, TWICE, new PrintStream(printed, true, StandardCharsets.UTF_8));
  }

  private String text() {
    return printed.toString(StandardCharsets.UTF_8);
  }

  private void write(String file, String text) throws IOException {
    Path path = folder.resolve(file);
    Files.createDirectories(path.getParent());
    Files.writeString(path, text);
  }
}
