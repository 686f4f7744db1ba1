package sallet.plan;

/** The question has no answer; the message says what would have to change. */
public final class NoPlan extends RuntimeException {
  private static final long serialVersionUID = 1;

  /**
   * @param message one sentence: what is missing and what to change
   */
  public NoPlan(String message) {
    super(message);
  }
}
