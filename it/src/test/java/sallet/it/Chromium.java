package sallet.it;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Playwright;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
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

  Browser browser() {
    return browser;
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
