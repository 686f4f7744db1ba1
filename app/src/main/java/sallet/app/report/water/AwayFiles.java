package sallet.app.report.water;

import java.util.LinkedHashMap;
import java.util.Map;

/** The files of the sheet of an absence: a page with the note to print, and JSON. */
public final class AwayFiles {
  private AwayFiles() {}

  /** Contents of {@code away.html} and {@code away.json}. */
  public static Map<String, String> of(AwayReport report) {
    Map<String, String> files = new LinkedHashMap<>();
    files.put("away.html", AwayPage.of(report));
    files.put("away.json", AwayJson.of(report));
    return files;
  }
}
