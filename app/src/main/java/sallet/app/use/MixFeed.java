package sallet.app.use;

import java.util.Optional;
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
   */
  public record Wish(
      Optional<Double> litres,
      Optional<Integer> stockFactor,
      Optional<String> reading,
      Optional<String> correct) {}

  /**
   * The sheet for the sink.
   *
   * @throws sallet.feed.FeedFault when something written cannot be read
   * @throws sallet.feed.UnsafeDose when the answer would leave safe limits
   */
  public static FeedSheet of(Household household, Wish wish) {
    double litres = wish.litres().orElse(household.reservoir().volumeL());
    return HomeFeed.sheet(
        household.feed(), new FeedWish(litres, wish.stockFactor(), wish.reading(), wish.correct()));
  }
}
