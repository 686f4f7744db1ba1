package sallet.app.report.water;

import java.util.LinkedHashMap;
import java.util.Map;
import sallet.water.absence.AwaySheet;

/** The files of the sheet of an absence: a page with the note to print, and JSON. */
public final class AwayFiles {
  private AwayFiles() {}

  /** Contents of {@code away.html} and {@code away.json}. */
  public static Map<String, String> of(AwaySheet sheet) {
    Map<String, String> files = new LinkedHashMap<>();
    files.put("away.html", AwayPage.of(sheet));
    files.put("away.json", AwayJson.of(sheet));
    return files;
  }
}
