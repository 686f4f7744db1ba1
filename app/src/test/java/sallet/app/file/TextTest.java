package sallet.app.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TextTest {

  /** Textbook examples of the edit distance (Wagner and Fischer 1974; Damerau 1964 for swaps). */
  @ParameterizedTest
  @CsvSource({
    "kitten, sitting, 3",
    "saturday, sunday, 3",
    "ca, abc, 3",
    "widht, width, 1",
    "a, a, 0",
    "'', abc, 3"
  })
  void slipsAreCounted(String a, String b, int slips) {
    assertThat(Text.slips(a, b)).isEqualTo(slips);
    assertThat(Text.slips(b, a)).isEqualTo(slips);
  }

  @Test
  void onlyANearWordIsSuggested() {
    assertThat(Text.nearest("heigth", List.of("width", "height"))).isEqualTo(Optional.of("height"));
    assertThat(Text.nearest("xylophone", List.of("width", "height"))).isEmpty();
  }

  @Test
  void textOfTheFileIsShownOnOneShortLine() {
    assertThat(Text.shorten("a\nb\u001b[31mc\u202e")).isEqualTo("a b [31mc");
    assertThat(Text.shorten("é".repeat(100))).isEqualTo("é".repeat(60) + "…");
  }
}
