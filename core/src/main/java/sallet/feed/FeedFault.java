package sallet.feed;

import java.util.List;

/** Wrong input: nothing was computed. One plain sentence a fault, for the grower to read. */
public final class FeedFault extends IllegalArgumentException {
  private static final long serialVersionUID = 1;

  private final List<String> sentences;

  /** Several faults found in one go. */
  public FeedFault(List<String> sentences) {
    super(String.join("\n", sentences));
    this.sentences = List.copyOf(sentences);
  }

  /** One fault. */
  public FeedFault(String sentence) {
    this(List.of(sentence));
  }

  /** One sentence a fault. */
  public List<String> sentences() {
    return sentences;
  }
}
