package sallet.app.report.water;

import java.util.LinkedHashMap;
import java.util.Map;

/** The files of the sheet of water: a page and JSON. */
public final class WaterFiles {
  private WaterFiles() {}

  /** Contents of {@code water.html} and {@code water.json}. */
  public static Map<String, String> of(WaterReport report) {
    Map<String, String> files = new LinkedHashMap<>();
    files.put("water.html", WaterPage.of(report));
    files.put("water.json", WaterJson.of(report));
    return files;
  }
}
