package sallet.app.report.crop;

import java.util.LinkedHashMap;
import java.util.Map;

/** The files of what grows in a room: page, text and JSON. */
public final class CropFiles {
  private CropFiles() {}

  /** Contents of {@code crop.html}, {@code crop.txt} and {@code crop.json}. */
  public static Map<String, String> of(CropReport report) {
    Map<String, String> files = new LinkedHashMap<>();
    files.put("crop.html", CropPage.of(report));
    files.put("crop.txt", CropText.of(report));
    files.put("crop.json", CropJson.of(report));
    return files;
  }
}
