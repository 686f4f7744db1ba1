package sallet.household;

/**
 * Reflecting sheets that stand along the edges of the tray from its surface up to the lamp. Shares
 * of light they throw back like a mirror, 0 to 1; 0 where none stands.
 */
public record Sides(double north, double east, double south, double west) {
  /** No sheet at any side. */
  public static final Sides NONE = new Sides(0, 0, 0, 0);
}
