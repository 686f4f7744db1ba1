package sallet.app.report.feed;

import java.util.LinkedHashMap;
import java.util.Map;

/** The files of a feed sheet: a page to print and JSON. */
public final class FeedFiles {
  private FeedFiles() {}

  /** Contents of {@code feed.html} and {@code feed.json}. */
  public static Map<String, String> of(FeedReport report) {
    Map<String, String> files = new LinkedHashMap<>();
    files.put("feed.html", FeedPage.of(report.sheet()));
    files.put("feed.json", FeedJson.of(report));
    return files;
  }
}
