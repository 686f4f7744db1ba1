package sallet.app.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;

/** What all pages share: head with our own style, no script, and the sign of the house. */
public final class PageFrame {
  private PageFrame() {}

  /** The head of a page. */
  public static Markup head(String title) {
    Markup page = new Markup();
    page.open("head");
    page.empty("meta", "charset", "utf-8");
    page.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
    page.empty("meta", "name", "color-scheme", "content", "light dark");
    page.element("title", title);
    page.style(styleSheet());
    return page.closeLine();
  }

  private static String styleSheet() {
    try (InputStream in = PageFrame.class.getResourceAsStream("plan-page.css")) {
      return new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A leaf with its veins. */
  public static Markup leaf() {
    Markup svg = new Markup();
    svg.open("svg", "viewBox", "0 0 32 32", "width", 32, "height", 32, "aria-hidden", "true");
    svg.empty("path", "d", "M4 28C2 12 12 3 29 3c1 17-8 26-22 24");
    svg.empty("path", "d", "M4 29C9 22 15 15 22 10M11 20v-7M15 16h8M9 22h8");
    return svg.close();
  }
}
