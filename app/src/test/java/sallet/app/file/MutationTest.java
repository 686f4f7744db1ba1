package sallet.app.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import sallet.household.Household;
import sallet.household.PotSites;

/** Whatever happens to a file, reading it gives a household or sentences. */
class MutationTest {
  private static final int MUTATIONS = 2000;
  private static final List<String> SIGNS =
      List.of(
          ":",
          "-",
          " ",
          "\n",
          "\t",
          "[",
          "]",
          "{",
          "}",
          ",",
          "#",
          "&a ",
          "*a ",
          "!!int ",
          "\"",
          "'",
          "|",
          ">",
          "%",
          "@",
          "?",
          "~",
          "null",
          "0",
          "-1",
          "1e9",
          ".nan",
          "m",
          " °C",
          "µ",
          "\u0000",
          "\u001b",
          "\ud83c\udf31",
          "---\n",
          "- - - ",
          "{{",
          "[[[[[[[[[[[[[[[[[[[[");

  private final HouseholdReader reader = Examples.reader();

  @Test
  void twoThousandMutationsOfThePorchGiveAHouseholdOrSentences() throws IOException {
    byte[] porch = Files.readAllBytes(Examples.file("porch.yaml"));
    int households = 0;
    for (int seed = 0; seed < MUTATIONS; seed++) {
      byte[] mutant = mutate(porch, new Random(seed));
      HouseholdFile read = read(mutant, seed);
      if (read instanceof HouseholdFile.Good good) {
        households++;
        sound(good.household(), seed);
      } else if (read instanceof HouseholdFile.Faulty faulty) {
        assertThat(faulty.faults()).as("seed %d", seed).isNotEmpty();
        String which = "seed " + seed;
        faulty.faults().forEach(fault -> assertSentence(fault, which));
      }
    }
    assertThat(households).as("some mutations are harmless").isBetween(50, MUTATIONS - 500);
  }

  @Test
  void hostileFilesEndQuickly() {
    List<String> hostile =
        List.of(
            "[".repeat(900_000),
            "{".repeat(900_000),
            "- ".repeat(450_000),
            "? ".repeat(450_000),
            "a: ".repeat(300_000),
            "a".repeat(900_000),
            "\"" + "\\n".repeat(450_000),
            "crops: {want: [" + "x,".repeat(400_000) + "x]}",
            "x" + "\n x".repeat(300_000),
            "k: v\n".repeat(180_000),
            "crops: {want: [\"" + "lettuce ".repeat(100_000) + "\"]}",
            "%YAML 9.9\n---\na: b\n",
            "\ufeff\ufeff");
    for (String text : hostile) {
      HouseholdFile read =
          Assertions.assertTimeoutPreemptively(
              Duration.ofSeconds(20),
              () -> reader.read(text.getBytes(StandardCharsets.UTF_8)),
              text.substring(0, Math.min(20, text.length())));
      assertThat(read).isInstanceOf(HouseholdFile.Faulty.class);
    }
  }

  private HouseholdFile read(byte[] mutant, int seed) {
    try {
      return reader.read(mutant);
    } catch (RuntimeException | StackOverflowError e) {
      throw new AssertionError("seed " + seed, e);
    }
  }

  private static void sound(Household household, int seed) {
    double tray = household.bench().widthM() * household.bench().depthM() * 10_000;
    double sites = PotSites.siteCm2(household.bench()).stream().mapToDouble(site -> site).sum();
    assertThat(sites / tray).as("seed %d", seed).isBetween(1 - 1e-9, 1 + 1e-9);
    assertThat(household.eaters().bowlGrams()).as("seed %d", seed).isPositive();
    assertThat(household.room().air().dayC()).as("seed %d", seed).doesNotContain(Double.NaN);
    assertThat(household.toString().replace("visibleTransmittance=NaN", ""))
        .as("seed %d: nothing but an unwritten transmittance is left open", seed)
        .doesNotContain("NaN");
  }

  private static void assertSentence(Fault fault, String seed) {
    assertThat(fault.text())
        .as(seed)
        .doesNotContain("Exception", "\n", "org.snakeyaml", "\u001b")
        .hasSizeBetween(10, 400);
  }

  private static byte[] mutate(byte[] original, Random random) {
    byte[] bytes = original;
    int changes = 1 + random.nextInt(4);
    for (int i = 0; i < changes; i++) {
      int at = random.nextInt(bytes.length);
      int end = Math.min(bytes.length, at + 1 + random.nextInt(12));
      bytes =
          switch (random.nextInt(5)) {
            case 0 -> splice(bytes, at, end, new byte[0]);
            case 1 -> splice(bytes, at, at, sign(random));
            case 2 -> splice(bytes, at, at, Arrays.copyOfRange(bytes, at, end));
            case 3 -> splice(bytes, at, at + 1, new byte[] {(byte) random.nextInt(256)});
            default -> splice(bytes, at, end, sign(random));
          };
    }
    return bytes;
  }

  private static byte[] sign(Random random) {
    return SIGNS.get(random.nextInt(SIGNS.size())).getBytes(StandardCharsets.UTF_8);
  }

  private static byte[] splice(byte[] bytes, int from, int to, byte[] middle) {
    byte[] spliced = Arrays.copyOf(bytes, bytes.length - (to - from) + middle.length);
    System.arraycopy(middle, 0, spliced, from, middle.length);
    System.arraycopy(bytes, to, spliced, from + middle.length, bytes.length - to);
    return spliced;
  }
}
