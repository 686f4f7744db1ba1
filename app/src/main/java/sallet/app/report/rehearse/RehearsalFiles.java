package sallet.app.report.rehearse;

import java.util.LinkedHashMap;
import java.util.Map;

/** The files of a rehearsal: page and JSON. */
public final class RehearsalFiles {
  private RehearsalFiles() {}

  /** Contents of {@code rehearsal.html} and {@code rehearsal.json}. */
  public static Map<String, String> of(RehearsalReport report) {
    Map<String, String> files = new LinkedHashMap<>();
    files.put("rehearsal.html", RehearsalPage.of(report));
    files.put("rehearsal.json", RehearsalJson.of(report));
    return files;
  }
}
