package sallet.plan;

import java.util.Arrays;
import sallet.crop.HarvestRule;

/** The choices of one life, one a bowl from the first it can serve to its end. */
final class Picks {
  /** The whole plant is lifted and eaten. */
  static final byte LIFT = 10;

  /** The largest pick is taken and the rest cleared away. */
  static final byte PICK_AND_CLEAR = 11;

  /** The plant is cleared away. */
  static final byte CLEAR = 12;

  private final byte[] choices;

  Picks(byte[] choices) {
    this.choices = choices;
  }

  int length() {
    return choices.length;
  }

  byte at(int t) {
    return choices[t];
  }

  /** Whether the life ends by lifting. */
  boolean lifted() {
    return choices[choices.length - 1] == LIFT;
  }

  /** Share of the plant taken at a bowl, 0 to 1. */
  double share(int t) {
    return shareOf(choices[t]);
  }

  /** Share of the plant a choice takes, 0 to 1. */
  static double shareOf(byte choice) {
    return switch (choice) {
      case LIFT -> 1;
      case PICK_AND_CLEAR -> HarvestRule.LARGEST_PICK;
      case CLEAR -> 0;
      default -> LifeGraph.SHARES[choice];
    };
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Picks p && Arrays.equals(choices, p.choices);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(choices);
  }
}
