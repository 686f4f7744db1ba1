package sallet.crop.risk;

import java.util.List;
import sallet.crop.Concern;

/**
 * One thing that may go wrong, with what drives it.
 *
 * @param kind which thing
 * @param concern how grave
 * @param says what to expect, one sentence
 * @param drivers what it was judged by
 * @param mend what to do about it; empty when there is nothing to do
 * @param source where the judgement comes from
 */
public record Risk(
    Kind kind, Concern concern, String says, List<Driver> drivers, String mend, String source) {
  public Risk {
    drivers = List.copyOf(drivers);
  }

  /** The things that may go wrong. */
  public enum Kind {
    STRETCH("stretched seedlings"),
    TIP_BURN("burnt margins of young leaves"),
    BOLTING("running to seed"),
    CHILLING("chilling"),
    HEAT("heat"),
    BITTERNESS("bitter leaves"),
    SLOW_DRYING("leaves that dry slowly"),
    NITRATE("nitrate in the leaf");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    /** The kind in words. */
    public String words() {
      return words;
    }
  }

  /**
   * A quantity a risk was judged by.
   *
   * @param name what it is
   * @param value how much
   * @param unit its unit, empty for an index
   * @param watchFrom value from which it is worth watching
   */
  public record Driver(String name, double value, String unit, double watchFrom) {}
}
