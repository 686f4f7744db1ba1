package sallet.crop;

/** A range of a handbook value, in the unit its owner names. */
public record Span(double low, double high) {
  public Span {
    if (!(low <= high)) {
      throw new IllegalArgumentException("a range must not fall, was " + low + " to " + high);
    }
  }
}
