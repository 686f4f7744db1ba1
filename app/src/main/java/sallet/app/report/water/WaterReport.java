package sallet.app.report.water;

import java.util.List;
import java.util.Optional;
import sallet.units.Step;
import sallet.water.home.WaterSheet;

/**
 * The sheet of water and, when asked for, how one of its numbers comes about.
 *
 * @param sheet the sheet
 * @param explained the number asked for
 */
public record WaterReport(WaterSheet sheet, Optional<Explained> explained) {

  /**
   * How a number comes about.
   *
   * @param path its path in the JSON
   * @param steps the steps in the order of reckoning
   */
  public record Explained(String path, List<Step> steps) {
    public Explained {
      steps = List.copyOf(steps);
    }
  }
}
