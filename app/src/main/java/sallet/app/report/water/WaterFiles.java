package sallet.app.report.water;

import java.util.LinkedHashMap;
import java.util.Map;
import sallet.water.home.WaterSheet;

/** The files of the sheet of water: a page and JSON. */
public final class WaterFiles {
  private WaterFiles() {}

  /** Contents of {@code water.html} and {@code water.json}. */
  public static Map<String, String> of(WaterSheet sheet) {
    Map<String, String> files = new LinkedHashMap<>();
    files.put("water.html", WaterPage.of(sheet));
    files.put("water.json", WaterJson.of(sheet));
    return files;
  }
}
