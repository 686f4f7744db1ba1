package sallet.units;

import java.util.List;

/**
 * A unit and how it converts: base value = (written value - zero) x factor.
 *
 * @param symbol how Sallet writes it
 * @param factor size in the base unit of its dimension
 * @param zero written value that is zero in the base unit; not 0 for temperatures only
 * @param spellings other ways to write it, in {@linkplain Spelling plain form}
 */
public record Unit(String symbol, double factor, double zero, List<String> spellings) {
  public Unit {
    spellings = List.copyOf(spellings);
  }

  static Unit of(String symbol, double factor, String... spellings) {
    return new Unit(symbol, factor, 0, List.of(spellings));
  }

  static Unit scale(String symbol, double factor, double zero, String... spellings) {
    return new Unit(symbol, factor, zero, List.of(spellings));
  }

  /** The value in the base unit of the dimension. */
  public double toBase(double written) {
    return (written - zero) * factor;
  }

  /** The value in this unit of a value in the base unit. */
  public double fromBase(double base) {
    return base / factor + zero;
  }

  boolean isWritten(String spelling) {
    return Spelling.plain(symbol).equals(spelling) || spellings.contains(spelling);
  }
}
