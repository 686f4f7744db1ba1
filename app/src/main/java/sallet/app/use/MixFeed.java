package sallet.app.use;

import java.util.Optional;
import sallet.app.report.feed.FeedReport;
import sallet.feed.home.FeedExplanation;
import sallet.feed.home.FeedSheet;
import sallet.feed.home.FeedWish;
import sallet.feed.home.HomeFeed;
import sallet.household.Household;

/** What do I weigh so that the solution is right? */
public final class MixFeed {
  private MixFeed() {}

  /**
   * How to mix.
   *
   * @param litres volume; empty for the whole reservoir
   * @param stockFactor strength of concentrates, when wanted
   * @param reading a meter's reading to explain
   * @param correct a measured value to mend
   * @param weeks weeks to follow the reservoir, 0 for none
   * @param explain path of a number to explain
   */
  public record Wish(
      Optional<Double> litres,
      Optional<Integer> stockFactor,
      Optional<String> reading,
      Optional<String> correct,
      int weeks,
      Optional<String> explain) {}

  /**
   * The sheet for the sink.
   *
   * @throws sallet.feed.FeedFault when something written cannot be read
   * @throws sallet.feed.UnsafeDose when the answer would leave safe limits
   */
  public static FeedReport of(Household household, Wish wish) {
    double litres = wish.litres().orElse(household.reservoir().volumeL());
    double trayM2 = household.bench().widthM() * household.bench().depthM();
    FeedSheet sheet =
        HomeFeed.sheet(
            household.feed(),
            new FeedWish(
                litres, wish.stockFactor(), wish.reading(), wish.correct(), wish.weeks(), trayM2));
    return new FeedReport(
        sheet, wish.explain().map(p -> new FeedReport.Explained(p, FeedExplanation.of(sheet, p))));
  }
}
