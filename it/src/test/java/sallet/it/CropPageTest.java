package sallet.it;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Consumer;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sallet.app.file.HouseholdFile;
import sallet.app.file.HouseholdReader;
import sallet.app.report.crop.CropPage;
import sallet.app.report.crop.CropReport;
import sallet.app.use.ForecastCrops;
import sallet.crop.Catalogue;
import sallet.crop.Crop;

/** The crops' pages in a real browser, on a phone and a desk, by day and by night. */
class CropPageTest {
  @TempDir static Path dir;
  private static Chromium chromium;

  @BeforeAll
  static void writePagesAndOpenBrowser() throws IOException {
    Catalogue crops = Catalogue.builtIn();
    HouseholdFile.Good good =
        (HouseholdFile.Good)
            new HouseholdReader(crops).read(Project.folder().resolve("examples/minimal.yaml"));
    write(good, "all", Optional.empty());
    write(good, "one", crops.find("butterhead"));
    write(good, "fruit", crops.find("dwarf tomato"));
    chromium = new Chromium();
  }

  private static void write(HouseholdFile.Good good, String name, Optional<Crop> crop)
      throws IOException {
    Files.writeString(
        dir.resolve(name + ".html"),
        CropPage.of(
            ForecastCrops.of(
                good.household(),
                good.catalogue(),
                LocalDate.of(2026, 11, 28),
                crop.map(CropReport.Asked::of),
                Optional.empty())));
  }

  @AfterAll
  static void closeBrowser() {
    chromium.close();
  }

  @ParameterizedTest
  @CsvSource({
    "all,390,LIGHT",
    "all,390,DARK",
    "all,1280,LIGHT",
    "one,390,LIGHT",
    "one,1280,LIGHT",
    "one,1280,DARK",
    "fruit,390,LIGHT"
  })
  void everybodyCanUseThePage(String name, int width, ColorScheme scheme) {
    open(
        name,
        width,
        scheme,
        page -> Chromium.everybodyCanUse(page, "crop-%s-%d-%s".formatted(name, width, scheme)));
  }

  @Test
  void thePagePrintsOnAFewSheets() throws IOException {
    Path pdf = Path.of("target", "screenshots", "crop.pdf");
    open(
        "one",
        1280,
        ColorScheme.LIGHT,
        page -> page.pdf(new Page.PdfOptions().setPath(pdf).setFormat("A4")));
    String text = Files.readString(pdf, StandardCharsets.ISO_8859_1);
    assertThat(text.split("/Type /Page\\b").length - 1).isBetween(1, 5);
  }

  private static void open(String name, int width, ColorScheme scheme, Consumer<Page> look) {
    chromium.open(dir.resolve(name + ".html"), width, 844, scheme, look);
  }
}
