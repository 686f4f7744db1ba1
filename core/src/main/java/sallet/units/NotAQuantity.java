package sallet.units;

/** A text is no quantity; the message completes a sentence that begins with the text. */
public final class NotAQuantity extends IllegalArgumentException {
  private static final long serialVersionUID = 1;

  NotAQuantity(String message) {
    super(message);
  }
}
