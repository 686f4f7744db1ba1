package sallet.it;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sallet.app.report.BenchLight;
import sallet.app.report.PlanAnswer;
import sallet.app.report.PlanPage;
import sallet.app.report.PorchPlan;
import sallet.app.report.light.LightPage;
import sallet.household.Bench;
import sallet.household.Household;
import sallet.household.Pot;
import sallet.light.LightTarget;
import sallet.light.LightYear;

/** A bench of 3 m by 0.5 m with three rows of eighteen pots, on the pages that draw it. */
class WideBenchTest {
  @TempDir static Path dir;
  private static Chromium chromium;

  @BeforeAll
  static void writePagesAndOpenBrowser() throws IOException {
    Household household = PorchPlan.household(bench());
    Map<String, Double> dli = new LinkedHashMap<>();
    household.bench().pots().forEach(pot -> dli.put(pot.name(), 4 + 6 * pot.xM()));
    BenchLight light =
        new BenchLight(
            List.of(new BenchLight.Period(PorchPlan.FROM, PorchPlan.FROM.plusWeeks(30), dli)));
    Files.writeString(
        dir.resolve("plan.html"),
        PlanPage.of(PlanAnswer.of(PorchPlan.plan()), household, PorchPlan.catalogue(), light));
    Files.writeString(
        dir.resolve("light.html"),
        LightPage.of(LightYear.of(household, PorchPlan.FROM, LightTarget.LEAFY)));
    chromium = new Chromium();
  }

  private static Bench bench() {
    List<Pot> pots = new ArrayList<>();
    for (int row = 0; row < 3; row++) {
      for (int column = 0; column < 18; column++) {
        pots.add(
            new Pot(
                (char) ('A' + row) + Integer.toString(column + 1),
                (column + 0.5) / 6,
                (row + 0.5) / 6));
      }
    }
    return new Bench(0, 1.6, 3, 0.5, 0.7, pots, 0.12, 1.2, "coir");
  }

  @AfterAll
  static void closeBrowser() {
    chromium.close();
  }

  @ParameterizedTest
  @CsvSource({"plan, 1280", "plan, 390", "light, 1280", "light, 390"})
  void theMapIsWholeAndLegible(String name, int width) {
    chromium.open(
        dir.resolve(name + ".html"),
        width,
        844,
        ColorScheme.LIGHT,
        page -> {
          page.locator("#bench")
              .screenshot(
                  new Locator.ScreenshotOptions()
                      .setPath(Chromium.picture("wide-%s-%d".formatted(name, width))));
          assertThat(all(page, LEAST_LETTERS)).as("smallest letters, px").isGreaterThan(9);
          assertThat(all(page, COVERED)).as("texts on top of each other").isZero();
          assertThat(all(page, CUT)).as("px of the drawing that cannot be reached").isZero();
          if (width == 1280) {
            assertThat(all(page, HIDDEN)).as("px to slide on a desk").isZero();
          } else {
            assertThat(page.locator("#bench").textContent()).contains("slide a drawing sideways");
          }
        });
  }

  private static final String LEAST_LETTERS =
      "Math.min(...[...m.querySelectorAll('text')].map(t => parseFloat(getComputedStyle(t).fontSize)"
          + " * m.getBoundingClientRect().width / m.viewBox.baseVal.width))";

  /** Pairs of texts whose letters meet: a box is two px taller than its letters on both sides. */
  private static final String COVERED =
      "(b => b.flatMap((p, i) => b.slice(i + 1).filter(q => p.left < q.right && q.left < p.right"
          + " && p.top + 2 < q.bottom - 2 && q.top + 2 < p.bottom - 2)).length)"
          + "([...m.querySelectorAll('text')].map(t => t.getBoundingClientRect()))";

  private static final String CUT =
      "Math.max(0, Math.round(m.getBoundingClientRect().width - m.parentElement.scrollWidth))";

  private static final String HIDDEN = "m.parentElement.scrollWidth - m.parentElement.clientWidth";

  /** The largest of what each map says; of letters the smallest map speaks. */
  private static double all(Page page, String ofMap) {
    Object value =
        page.evaluate(
            "Math.%s(...[...document.querySelectorAll('.maps svg')].map(m => %s))"
                .formatted(ofMap.equals(LEAST_LETTERS) ? "min" : "max", ofMap));
    return ((Number) value).doubleValue();
  }
}
