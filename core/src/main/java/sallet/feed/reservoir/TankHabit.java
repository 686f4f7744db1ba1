package sallet.feed.reservoir;

import java.util.Arrays;
import sallet.feed.FeedFault;
import sallet.feed.dose.Bottle;

/**
 * How a reservoir is run between fresh solutions.
 *
 * @param plants what drinks
 * @param drunkLPerDay water the plants drink, L a day
 * @param evaporatedLPerDay water lost to the air, L a day
 * @param topUp what is poured in
 * @param acid what lowers pH
 */
public record TankHabit(
    UptakePrior plants, double drunkLPerDay, double evaporatedLPerDay, TopUp topUp, Bottle acid) {

  /** The same with other plants. */
  public TankHabit with(UptakePrior others) {
    return new TankHabit(others, drunkLPerDay, evaporatedLPerDay, topUp, acid);
  }

  /** What is poured in. */
  public enum TopUp {
    /** Solution of the strength that brings EC back. */
    HOLD_EC("hold EC"),
    /** Solution of full strength. */
    SOLUTION("solution"),
    /** Water alone. */
    WATER("water");

    private final String words;

    TopUp(String words) {
      this.words = words;
    }

    /** As written in a household file. */
    public String words() {
      return words;
    }

    /** The one of some words. */
    public static TopUp of(String words) {
      return Arrays.stream(values())
          .filter(t -> t.words.equalsIgnoreCase(words.strip()))
          .findFirst()
          .orElseThrow(
              () ->
                  new FeedFault(
                      "Top up with \"hold EC\", \"solution\" or \"water\", not " + words));
    }
  }

  public TankHabit {
    if (!(drunkLPerDay >= 0 && evaporatedLPerDay >= 0 && drunkLPerDay + evaporatedLPerDay > 0)) {
      throw new FeedFault(
          "The plants must drink or the air must take some water, was %s and %s L a day"
              .formatted(drunkLPerDay, evaporatedLPerDay));
    }
  }
}
