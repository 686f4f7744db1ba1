package sallet.cases;

/** A check file that is missing, broken or lacks a column; the message is one sentence. */
public final class UnreadableCase extends IllegalArgumentException {
  private static final long serialVersionUID = 1;

  public UnreadableCase(String message) {
    super(message);
  }
}
