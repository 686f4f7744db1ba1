package sallet.it;

import com.microsoft.playwright.options.ColorScheme;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sallet.app.file.HouseholdFile;
import sallet.app.file.HouseholdReader;
import sallet.app.report.water.AwayPage;
import sallet.app.report.water.WaterPage;
import sallet.app.use.TellWater;
import sallet.crop.Catalogue;
import sallet.household.Absence;

/** The pages of water and of days away in a real browser, on a phone and a desk. */
class WaterPageTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 11, 28);

  @TempDir static Path dir;
  private static Chromium chromium;

  @BeforeAll
  static void writePagesAndOpenBrowser() throws IOException {
    Catalogue crops = Catalogue.builtIn();
    HouseholdFile.Good good =
        (HouseholdFile.Good)
            new HouseholdReader(crops).read(Project.folder().resolve("examples/minimal.yaml"));
    TellWater.Wish wish =
        new TellWater.Wish(TODAY, TODAY.minusWeeks(12), Optional.empty(), Optional.empty(), 1, 1);
    Files.writeString(
        dir.resolve("water.html"),
        WaterPage.of(
            TellWater.water(
                good.household(),
                good.catalogue(),
                wish,
                Optional.empty(),
                step -> {},
                () -> false)));
    Files.writeString(
        dir.resolve("away.html"),
        AwayPage.of(
            TellWater.away(
                good.household(),
                good.catalogue(),
                wish,
                new Absence(TODAY.plusDays(9), TODAY.plusDays(60), 2),
                Optional.empty(),
                step -> {},
                () -> false)));
    chromium = new Chromium();
  }

  @AfterAll
  static void closeBrowser() {
    chromium.close();
  }

  /** Whatever the page logs, throws or asks for beside itself fails, and so does what axe finds. */
  @ParameterizedTest
  @CsvSource({
    "water,390,LIGHT",
    "water,390,DARK",
    "water,1280,LIGHT",
    "away,390,LIGHT",
    "away,1280,DARK"
  })
  void everybodyCanUseThePage(String name, int width, ColorScheme scheme) {
    chromium.open(
        dir.resolve(name + ".html"),
        width,
        844,
        scheme,
        page -> Chromium.everybodyCanUse(page, "%s-%d-%s".formatted(name, width, scheme)));
  }
}
