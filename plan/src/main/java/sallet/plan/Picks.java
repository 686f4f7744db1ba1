package sallet.plan;

import java.util.Arrays;

/** The choices of one life, one a bowl from the first it can serve to its end. */
final class Picks {
  /** The whole plant is lifted and eaten. */
  static final byte LIFT = 10;

  /** The plant is cleared away. */
  static final byte CLEAR = 11;

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

  /**
   * Share of the plant a choice takes, 0 to 1.
   *
   * @param largestPick largest share the plant may lose and stand on
   */
  static double share(byte choice, double largestPick) {
    return switch (choice) {
      case LIFT -> 1;
      case CLEAR -> 0;
      default -> Math.min(LifeGraph.SHARES[choice], largestPick);
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
