package sallet.app.report;

import java.util.LinkedHashMap;
import java.util.Map;
import sallet.feed.home.FeedSheet;

/** The files of a feed sheet: a page to print and JSON. */
public final class FeedFiles {
  private FeedFiles() {}

  /** Contents of {@code feed.html} and {@code feed.json}. */
  public static Map<String, String> of(FeedSheet sheet) {
    Map<String, String> files = new LinkedHashMap<>();
    files.put("feed.html", FeedPage.of(sheet));
    files.put("feed.json", FeedJson.of(sheet));
    return files;
  }
}
