package sallet.feed;

/**
 * A dose or recipe outside safe limits: it is refused, and the message says which limit and why.
 */
public final class UnsafeDose extends RuntimeException {
  private static final long serialVersionUID = 1;

  public UnsafeDose(String sentence) {
    super(sentence);
  }
}
