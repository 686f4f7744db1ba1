package sallet.app.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Escaping and folding by the words and examples of RFC 5545 (2009). */
class ContentLineTest {
  /** Section 3.1: "removing the CRLF and the linear white-space character that follows". */
  private static String unfolded(String folded) {
    return folded.replaceAll("\r\n[ \t]", "");
  }

  @Test
  void unfoldingIsUnderstoodAsInTheExampleOfSection31() {
    assertThat(
            unfolded(
                "DESCRIPTION:This is a lo\r\n ng description\r\n  that exists on a long line."))
        .isEqualTo("DESCRIPTION:This is a long description that exists on a long line.");
  }

  @Test
  void theExampleOfSection3311IsEscapedAsPrintedThere() {
    assertThat(ContentLine.escape("Project XYZ Final Review\nConference Room - 3B\nCome Prepared."))
        .isEqualTo("Project XYZ Final Review\\nConference Room - 3B\\nCome Prepared.");
  }

  @Test
  void theExampleOfSection3817IsEscapedAsPrintedThere() {
    assertThat(ContentLine.ofText("LOCATION", "Conference Room - F123, Bldg. 002"))
        .isEqualTo("LOCATION:Conference Room - F123\\, Bldg. 002\r\n");
  }

  @Test
  void semicolonAndBackslashAreEscapedAndAColonIsNot() {
    assertThat(ContentLine.escape("a;b\\c:d")).isEqualTo("a\\;b\\\\c:d");
  }

  @Test
  void aNameCannotStartAnotherLine() {
    assertThat(ContentLine.ofText("SUMMARY", "A1\r\nEND:VEVENT\u0007"))
        .isEqualTo("SUMMARY:A1\\nEND:VEVENT\r\n");
  }

  @Test
  void seventyFiveOctetsStayOnOneLine() {
    assertThat(ContentLine.fold("x".repeat(75))).isEqualTo("x".repeat(75));
    assertThat(ContentLine.fold("x".repeat(76))).isEqualTo("x".repeat(75) + "\r\n x");
  }

  /** Law of section 3.1, over lines of characters of one to four octets. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 5, 8, 13, 21, 34, 55, 89})
  void linesKeepToSeventyFiveOctetsAndUnfoldToWhatTheyWere(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    int[] alphabet = {'a', ' ', ',', 'é', 'ß', '°', '€', '█', 0x1F957, 0x1F331};
    StringBuilder line = new StringBuilder();
    for (int i = random.nextInt(400); i >= 0; i--) {
      line.appendCodePoint(alphabet[random.nextInt(alphabet.length)]);
    }

    String folded = ContentLine.fold(line.toString());

    assertThat(unfolded(folded)).as("seed %d", seed).isEqualTo(line.toString());
    for (String part : folded.split("\r\n")) {
      byte[] octets = part.getBytes(StandardCharsets.UTF_8);
      assertThat(octets.length).as("seed %d", seed).isLessThanOrEqualTo(75);
      assertThat(new String(octets, StandardCharsets.UTF_8)).as("seed %d", seed).isEqualTo(part);
    }
  }
}
