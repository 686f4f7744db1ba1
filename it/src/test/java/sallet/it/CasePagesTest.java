package sallet.it;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The generated pages are those that the code of today would write. */
class CasePagesTest {
  @Test
  void pagesAreCurrent() throws IOException {
    for (Map.Entry<String, String> page : CasePages.of(Project.folder()).entrySet()) {
      assertThat(Files.readString(Project.folder().resolve(page.getKey())))
          .as("%s is out of date: run ./check --docs", page.getKey())
          .isEqualTo(page.getValue());
    }
  }

  @Test
  void everyCheckedOrShippedFileIsListed() throws IOException {
    List<CaseFile> known = CaseFile.known();
    assertThat(AllChecks.byFile().keySet()).allMatch(file -> isListed(file, known));
    assertThat(CaseFile.in(Project.folder().resolve("core/src/test/resources/cases")))
        .isNotEmpty()
        .allMatch(file -> isListed(file, known));
  }

  private static boolean isListed(String file, List<CaseFile> known) {
    return known.stream().anyMatch(candidate -> candidate.matches(file));
  }
}
