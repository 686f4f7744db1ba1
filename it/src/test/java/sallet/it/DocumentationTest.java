package sallet.it;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** What the documents promise. */
class DocumentationTest {
  private static final Path PROJECT = Project.folder();

  @TempDir Path folder;

  @TestFactory
  Stream<DynamicTest> everyLinkLeadsSomewhere() throws IOException {
    return pages().stream()
        .map(
            page ->
                DynamicTest.dynamicTest(
                    PROJECT.relativize(page).toString(),
                    () ->
                        assertThat(links(page))
                            .allMatch(link -> Files.exists(page.resolveSibling(link)))));
  }

  @TestFactory
  Stream<DynamicTest> everyCommandOfTheReadmeRuns() throws IOException {
    return commands("./sallet ").stream()
        .map(command -> DynamicTest.dynamicTest(command, () -> runSallet(command)));
  }

  /** The run itself is one of the README's. */
  @Test
  void theCommandOfAShownOutputStandsInTheReadme() throws IOException {
    assertThat(shownOutputs()).isNotEmpty();
    assertThat(commands("./sallet ")).containsAll(shownOutputs().keySet());
  }

  @Test
  void theJournalShownIsTheExamples() throws IOException {
    String page = Files.readString(PROJECT.resolve("docs/journal.md"));
    String rows = Files.readString(PROJECT.resolve("examples/porch-journal.csv"));
    assertThat(matches(page, "(?s)## The example\\s+```csv\\n(.*?)```"))
        .singleElement()
        .matches(rows::startsWith);
  }

  @Test
  void everyCheckOptionInTheReadmeExists() throws Exception {
    Run help = Run.of(PROJECT, "./check", "--help");
    assertThat(help.status()).isZero();
    assertThat(matches(Files.readString(PROJECT.resolve("README.md")), "`\\./check (--\\w+)[^`]*`"))
        .isNotEmpty()
        .allMatch(option -> help.out().contains("./check " + option));
  }

  @Test
  void scriptsAreSoundAndRefuseWhatTheyDoNotKnow() throws Exception {
    for (String script : List.of("sallet", "check", ".ci/run", "scripts/setup.sh")) {
      assertThat(Run.of(PROJECT, "bash", "-n", script).status()).as(script).isZero();
    }
    assertThat(Run.of(PROJECT, "./check", "--nonsense").status()).isEqualTo(2);
    assertThat(Run.of(PROJECT, "./check", "--cases").status()).isEqualTo(2);
  }

  @Test
  void everyDependencyIsExplained() throws IOException {
    String reasons = Files.readString(PROJECT.resolve("docs/dependencies.md"));
    String pom = Files.readString(PROJECT.resolve("pom.xml"));
    String managed = pom.substring(0, pom.indexOf("</dependencyManagement>"));
    assertThat(
            matches(
                managed.replaceAll("(?s)<exclusions>.*?</exclusions>", ""),
                "<dependency>\\s*<groupId>[^<]*</groupId>\\s*<artifactId>([^<]*)<"))
        .hasSizeGreaterThan(10)
        .allMatch(name -> reasons.contains("`" + name + "`"));
  }

  @Test
  void everyBundledDataFileIsInTheNotice() throws IOException {
    String notice = Files.readString(PROJECT.resolve("NOTICE"));
    try (Stream<Path> files = Files.walk(PROJECT.resolve("core/src/main/resources"))) {
      assertThat(files.map(file -> file.getFileName().toString()).filter(x -> x.endsWith(".csv")))
          .isNotEmpty()
          .allMatch(notice::contains);
    }
  }

  private void runSallet(String command) throws Exception {
    copyExamples();
    List<String> words = new ArrayList<>(List.of(command.split(" ")));
    words.remove(0);
    if (List.of("plan", "water", "away").contains(words.get(0))) {
      words.addAll(List.of("--seconds", "1"));
    }
    List<String> call = new ArrayList<>(List.of(java(), "-Xmx768m", "-cp", classPath()));
    call.add("sallet.app.cli.Main");
    call.addAll(words);
    Run run = Run.of(folder, call.toArray(String[]::new));
    assertThat(run.status()).as(run.err()).isZero();
    assertThat(run.out()).isNotBlank();
    assertThat(run.err()).doesNotContain("Exception", "WARNING", ".cc:");
    if (shownOutputs().containsKey(command)) {
      assertThat(run.out()).isEqualTo(shownOutputs().get(command));
    }
  }

  /**
   * What pages show commands to print: the text of a page that is headed like a report, by the
   * command the page begins with.
   */
  private static Map<String, String> shownOutputs() throws IOException {
    Map<String, String> shown = new HashMap<>();
    for (Path page : pages()) {
      String text = Files.readString(page);
      List<String> calls = matches(text, "```text\\n(\\./sallet .*)\\n```");
      List<String> reports = matches(text, "(?s)```text\\n([A-Z]{2}.*?)```");
      if (calls.size() == 1 && reports.size() == 1) {
        shown.put(calls.get(0), reports.get(0));
      }
    }
    return shown;
  }

  private void copyExamples() throws IOException {
    Path examples = Files.createDirectories(folder.resolve("examples"));
    try (Stream<Path> files = Files.list(PROJECT.resolve("examples"))) {
      for (Path file : files.toList()) {
        Path copy = examples.resolve(file.getFileName());
        if (!Files.exists(copy)) {
          Files.copy(file, copy);
        }
      }
    }
  }

  private static String java() {
    return Path.of(System.getProperty("java.home"), "bin", "java").toString();
  }

  private static String classPath() {
    return System.getProperty("java.class.path");
  }

  /** The pages of the project itself, at the top and below docs. */
  private static List<Path> pages() throws IOException {
    try (Stream<Path> top = Files.list(PROJECT);
        Stream<Path> docs = Files.walk(PROJECT.resolve("docs"))) {
      return Stream.concat(top, docs).filter(page -> page.toString().endsWith(".md")).toList();
    }
  }

  private static List<String> links(Path page) throws IOException {
    return matches(Files.readString(page), "\\]\\(([^)#:]+)(?:#[^)]*)?\\)");
  }

  private static List<String> commands(String start) throws IOException {
    return matches(Files.readString(PROJECT.resolve("README.md")), "(?s)```sh\\n(.*?)```").stream()
        .flatMap(String::lines)
        .filter(line -> line.startsWith(start))
        .distinct()
        .toList();
  }

  private static List<String> matches(String text, String pattern) {
    return Pattern.compile(pattern)
        .matcher(text)
        .results()
        .map((MatchResult match) -> match.group(1))
        .toList();
  }
}
