package sallet.it;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The list of outside checks in the tests is true and whole. */
class OutsideCheckTest {
  private static final List<OutsideCheck> CHECKS = OutsideCheck.all(Project.folder());

  /** The comment above a test, if there is one, and the test's name. */
  private static final Pattern TEST =
      Pattern.compile(
          "(?s)(?:/\\*\\*((?:(?!\\*/).)*)\\*/\\s*)?"
              + "@(?:Parameterized)?Test\\b(?:(?!/\\*\\*).)*?\\bvoid (\\w+)\\(");

  /** What a comment says when its test compares with something outside. */
  private static final Pattern OUTSIDE =
      Pattern.compile(
          "[Bb]y hand|[Bb]rute force|[Tt]extbook|[Hh]andbook|[Ii]ndependent|[Cc]losed form"
              + "|[Ww]orked example|[Pp]ublished|[Dd]efinition|[Ll]ibrary|[Ss]ource:|check file"
              + "|Hipparchus|ojAlgo|SciPy|NumPy|FAO|RFC|CFR|USDA"
              + "|[A-Z]\\w+ (and (others|[A-Z]\\w+) )?\\(?(1[89]\\d\\d|20[01]\\d|202[0-5])\\b");

  /** A test: its class and name, and what its comment says. */
  private record Told(String name, String comment) {}

  private final List<Told> tests = new ArrayList<>();

  OutsideCheckTest() throws IOException {
    for (String module : List.of("core", "plan", "app", "it")) {
      try (Stream<Path> files = Files.walk(Project.folder().resolve(module + "/src/test/java"))) {
        for (Path file : files.filter(f -> f.toString().endsWith("Test.java")).toList()) {
          String type = file.getFileName().toString().replace("java", "");
          TEST.matcher(Files.readString(file))
              .results()
              .map(m -> told(type, m))
              .forEach(tests::add);
        }
      }
    }
  }

  private static Told told(String type, MatchResult test) {
    return new Told(type + test.group(2), test.group(1) == null ? "" : test.group(1));
  }

  @Test
  void everyTestOfTheListExists() {
    assertThat(tests).hasSizeGreaterThan(500);
    assertThat(CHECKS)
        .isNotEmpty()
        .extracting(OutsideCheck::test)
        .isSubsetOf(tests.stream().map(Told::name).toList());
  }

  @Test
  void everyTestThatNamesAnOutsideSourceIsInTheList() {
    Set<String> listed = CHECKS.stream().map(OutsideCheck::test).collect(Collectors.toSet());
    assertThat(tests)
        .filteredOn(test -> OUTSIDE.matcher(test.comment()).find())
        .extracting(Told::name)
        .as("tests without a line in it/src/test/resources/outside-checks.csv")
        .isSubsetOf(listed);
  }

  @Test
  void whatIsWrittenAsOursLiesWithinWhatIsAllowed() {
    assertThat(CHECKS).allMatch(OutsideCheck::holds);
    assertThat(check("19; 4; safe").holds()).isTrue();
  }

  @ParameterizedTest
  @ValueSource(strings = {"18.9; 4; safe", "19; 6; safe", "19; 4; unsafe", "19; 4"})
  void aNumberTooFarOffIsSeen(String ours) {
    assertThat(check(ours).holds()).isFalse();
  }

  private static OutsideCheck check(String ours) {
    return new OutsideCheck("a", "b", "c", "20; 3 to 5; safe", ours, "5 %", "d");
  }
}
