package sallet.app.report.water;

import java.util.List;
import java.util.Optional;
import sallet.water.home.WaterSheet;

/**
 * The sheet of water and, when asked for, how one of its numbers comes about.
 *
 * @param sheet the sheet
 * @param basis what it rests on, in sentences
 * @param explained the number asked for
 */
public record WaterReport(WaterSheet sheet, List<String> basis, Optional<Explained> explained) {
  public WaterReport {
    basis = List.copyOf(basis);
  }
}
