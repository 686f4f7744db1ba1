package sallet.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Where the native library, or all of its library, is missing, plans are made in plain Java. */
class NoNativeLibraryTest {

  @ParameterizedTest
  @ValueSource(strings = {"ortools-(linux|darwin|win32).*", "ortools-.*"})
  void aPlanIsStillMadeAndSaysSo(String missing) throws IOException, InterruptedException {
    List<String> lines = outputWithout(missing);

    assertThat(lines).hasSize(2);
    assertThat(lines.get(0))
        .startsWith("NATIVE: ")
        .contains("faults []", "the slower one in plain Java")
        .doesNotContain(" 0 sowings");
    assertThat(lines.get(1))
        .startsWith("JAVA: ")
        .contains("faults []")
        .doesNotContain(" 0 sowings", "the slower one in plain Java");
  }

  private static List<String> outputWithout(String jars) throws IOException, InterruptedException {
    String classPath =
        Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator))
            .filter(entry -> !Path.of(entry).getFileName().toString().matches(jars))
            .collect(Collectors.joining(File.pathSeparator));
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                classPath,
                PlansWithoutNativeLibrary.class.getName())
            .redirectErrorStream(true)
            .start();
    String text = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor()).as(text).isZero();
    return text.lines().toList();
  }
}
