package sallet.it;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.options.ColorScheme;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Stream;

/** The machine's own chromium, driven without fetching a browser. */
final class Chromium implements AutoCloseable {
  private final Playwright playwright;
  private final Browser browser;

  Chromium() {
    playwright =
        Playwright.create(
            new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
    browser =
        playwright
            .chromium()
            .launch(
                new BrowserType.LaunchOptions()
                    .setExecutablePath(onPath())
                    .setArgs(
                        List.of(
                            "--no-sandbox",
                            "--disable-gpu",
                            "--disable-quic",
                            "--no-first-run",
                            "--disable-background-networking",
                            "--disable-component-update",
                            "--disable-sync")));
  }

  /** Opens a page; whatever it logs, throws or asks for beside itself fails the test. */
  void open(Path file, int width, int height, ColorScheme scheme, Consumer<Page> look) {
    Browser.NewContextOptions options =
        new Browser.NewContextOptions().setViewportSize(width, height).setColorScheme(scheme);
    try (BrowserContext context = browser.newContext(options)) {
      Page page = context.newPage();
      List<String> faults = new ArrayList<>();
      List<String> requests = new ArrayList<>();
      page.onConsoleMessage(message -> faults.add(message.text()));
      page.onPageError(faults::add);
      page.onRequest(request -> requests.add(request.url()));
      page.navigate(file.toUri().toString());
      look.accept(page);
      assertThat(requests).containsExactly(file.toUri().toString());
      assertThat(faults).isEmpty();
    }
  }

  /** Takes a picture of a whole page; axe must find nothing, and it must not scroll sideways. */
  static void everybodyCanUse(Page page, String picture) {
    page.screenshot(new Page.ScreenshotOptions().setFullPage(true).setPath(picture(picture)));
    page.evaluate("document.querySelectorAll('details').forEach(d => d.open = true)");
    assertThat(new AxeBuilder(page).analyze().getViolations())
        .extracting(rule -> rule.getId() + " " + rule.getNodes().get(0).getTarget())
        .isEmpty();
    assertThat(page.evaluate("document.documentElement.scrollWidth"))
        .isEqualTo(page.evaluate("document.documentElement.clientWidth"));
  }

  /** Where a picture of a page is kept. */
  static Path picture(String name) {
    return Path.of("target", "screenshots", name + ".png");
  }

  private static Path onPath() {
    String path = System.getenv().getOrDefault("PATH", "");
    return Stream.of(path.split(File.pathSeparator))
        .flatMap(dir -> Stream.of(Path.of(dir, "chromium"), Path.of(dir, "chromium-browser")))
        .filter(Files::isExecutable)
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("chromium is not on the PATH; install it"));
  }

  @Override
  public void close() {
    browser.close();
    playwright.close();
  }
}
