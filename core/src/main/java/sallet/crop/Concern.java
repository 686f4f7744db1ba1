package sallet.crop;

/** How much something should worry the grower: a grade, not a probability. */
public enum Concern {
  /** Nothing to do. */
  NONE,
  /** Keep an eye on it. */
  WATCH,
  /** Change something. */
  ACT;

  /** The graver of two grades. */
  public Concern or(Concern other) {
    return compareTo(other) >= 0 ? this : other;
  }

  /**
   * The grade of a value that worries more the higher it is.
   *
   * @param watchAbove grade WATCH above this
   * @param actAbove grade ACT above this
   */
  public static Concern rising(double value, double watchAbove, double actAbove) {
    return value > actAbove ? ACT : value > watchAbove ? WATCH : NONE;
  }
}
