package sallet.cases;

/**
 * One compared value.
 *
 * @param what the quantity, with its unit
 * @param expected published or independently computed
 * @param ours what Sallet gives
 * @param deviation difference as a multiple of the tolerance; at most 1 passes
 */
public record Outcome(String what, String expected, String ours, double deviation) {

  /** A number with an absolute tolerance. */
  public static Outcome number(String what, double expected, double ours, double tolerance) {
    double difference = Math.abs(expected - ours);
    double deviation =
        Double.isNaN(ours)
            ? Double.POSITIVE_INFINITY
            : difference <= 1e-12 * Math.abs(expected) ? 0 : difference / tolerance;
    return new Outcome(what, Double.toString(expected), Double.toString(ours), deviation);
  }

  /** A number with a tolerance relative to the expected value. */
  public static Outcome relative(String what, double expected, double ours, double tolerance) {
    return number(what, expected, ours, tolerance * Math.abs(expected));
  }

  /** A word or count that must be the same. */
  public static Outcome same(String what, String expected, String ours) {
    return new Outcome(what, expected, ours, expected.equals(ours) ? 0 : Double.POSITIVE_INFINITY);
  }

  /** Whether the value lies within its tolerance. */
  public boolean passed() {
    return deviation <= 1;
  }
}
