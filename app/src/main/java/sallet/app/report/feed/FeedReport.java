package sallet.app.report.feed;

import java.util.List;
import java.util.Optional;
import sallet.feed.home.FeedSheet;
import sallet.units.Step;

/**
 * The sheet for the sink and, when asked for, how one of its numbers comes about.
 *
 * @param sheet the sheet
 * @param explained the number asked for
 */
public record FeedReport(FeedSheet sheet, Optional<Explained> explained) {

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
