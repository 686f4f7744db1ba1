package sallet.it;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.Media;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Consumer;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import sallet.app.report.PlanAnswer;
import sallet.app.report.PlanPage;
import sallet.app.report.PorchPlan;

/** The plan's page in a real browser, on a phone and a desk, by day and by night. */
class PlanPageTest {
  private static final String HOSTILE = "<script>throw 1</script><img src=x onerror=throw(2)>";

  @TempDir static Path dir;
  private static Chromium chromium;

  @BeforeAll
  static void writePagesAndOpenBrowser() throws IOException {
    write("plain", "A6");
    write("hostile", HOSTILE);
    chromium = new Chromium();
  }

  private static void write(String name, String pot) throws IOException {
    Files.createDirectories(dir.resolve(name));
    Files.writeString(
        dir.resolve(name).resolve("plan.html"),
        PlanPage.of(
            PlanAnswer.of(PorchPlan.plan(pot)),
            PorchPlan.household(pot),
            PorchPlan.catalogue(),
            PorchPlan.light(pot)));
  }

  @AfterAll
  static void closeBrowser() {
    chromium.close();
  }

  @ParameterizedTest
  @CsvSource({"390,844,LIGHT", "390,844,DARK", "1280,900,LIGHT", "1280,900,DARK"})
  void everybodyCanUseThePage(int width, int height, ColorScheme scheme) {
    open(
        "plain",
        width,
        height,
        scheme,
        page -> Chromium.everybodyCanUse(page, "plan-%d-%s".formatted(width, scheme)));
  }

  @ParameterizedTest
  @ValueSource(ints = {320, 390, 1280})
  void thePageNeverScrollsSideways(int width) {
    open(
        "plain",
        width,
        844,
        ColorScheme.LIGHT,
        page -> {
          openTables(page);
          assertThat(page.evaluate("document.documentElement.scrollWidth"))
              .isEqualTo(page.evaluate("document.documentElement.clientWidth"));
          // the charts do scroll, each in its own box
          assertThat(page.evaluate("document.querySelectorAll('.scroll > svg').length"))
              .isEqualTo(8);
        });
  }

  @Test
  void namesFromTheHouseholdFileStayText() {
    open(
        "hostile",
        390,
        844,
        ColorScheme.LIGHT,
        page -> {
          assertThat(page.locator("script, img").count()).isZero();
          assertThat(page.locator("#bench svg title").allTextContents())
              .anyMatch(title -> title.startsWith(HOSTILE + ":"));
        });
  }

  @Test
  void aTaskCanBeTickedWithAThumb() {
    open(
        "plain",
        390,
        844,
        ColorScheme.LIGHT,
        page -> {
          Locator first = page.locator(".checklist label").first();
          assertThat(first.boundingBox().height).isGreaterThanOrEqualTo(44);
          first.click();
          assertThat(first.locator("input").isChecked()).isTrue();
        });
  }

  @Test
  void thePagePrintsOnAFewSheets() throws IOException {
    Path pdf = Path.of("target", "screenshots", "plan.pdf");
    open(
        "plain",
        1280,
        900,
        ColorScheme.DARK,
        page -> {
          page.pdf(new Page.PdfOptions().setPath(pdf).setFormat("A4"));
          page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
          assertThat(page.locator("#tasks tbody tr").last().isVisible()).isTrue();
          assertThat(page.locator("#bowls tbody tr").last().isVisible()).isFalse();
        });
    String text = Files.readString(pdf, StandardCharsets.ISO_8859_1);
    int sheets = text.split("/Type /Page\\b").length - 1;
    assertThat(sheets).isBetween(2, 12);
  }

  private static void open(
      String name, int width, int height, ColorScheme scheme, Consumer<Page> look) {
    chromium.open(dir.resolve(name).resolve("plan.html"), width, height, scheme, look);
  }

  private static void openTables(Page page) {
    page.evaluate("document.querySelectorAll('details').forEach(d => d.open = true)");
  }
}
