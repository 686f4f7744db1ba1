package sallet.learn;

/** How far a plant has come, and so which place it takes. */
public enum Stage {
  /** In a sowing cell, not yet up. */
  GERMINATING("germinating"),
  /** Up, still in its sowing cell. */
  IN_CELL("in its cell"),
  /** In a nursery place. */
  NURSERY("nursery"),
  /** In a pot on the bench. */
  BENCH("bench");

  private final String words;

  Stage(String words) {
    this.words = words;
  }

  /** The stage in words. */
  public String words() {
    return words;
  }

  /** Whether it takes a sowing cell. */
  public boolean takesCell() {
    return this == GERMINATING || this == IN_CELL;
  }
}
