package sallet.plan.check;

/** How near two computed numbers must be to count as the same. */
final class Close {
  private Close() {}

  /** Relative tolerance of everything that is computed twice. */
  static final double RELATIVE = 1e-6;

  /** Below this nothing can be weighed, g; room for sums over many numbers. */
  static final double GRAMS = 1e-6;

  /** Whether two numbers of grams are the same within {@link #RELATIVE}. */
  static boolean same(double expected, double found) {
    return Math.abs(expected - found) <= RELATIVE * Math.abs(expected) + GRAMS * RELATIVE;
  }

  /** Whether two sums of grams are the same within {@link #RELATIVE} or {@link #GRAMS}. */
  static boolean sameSum(double expected, double found) {
    return Math.abs(expected - found) <= Math.max(GRAMS, RELATIVE * Math.abs(expected));
  }
}
