package sallet.feed.product;

import java.util.List;
import java.util.Optional;
import sallet.feed.ion.Composition;

/**
 * Something on the shelf that can be added to water.
 *
 * @param id short name
 * @param name as the grower knows it
 * @param measure weighed or measured by volume
 * @param perUnit what one gram or one millilitre brings
 * @param use what it is for
 * @param solubility how much dissolves, when known
 * @param caution what to beware of
 * @param notes how the content was understood
 */
public record Product(
    String id,
    String name,
    Measure measure,
    Composition perUnit,
    Use use,
    Optional<Solubility> solubility,
    String caution,
    List<String> notes) {

  /** How it is taken. */
  public enum Measure {
    GRAM("g"),
    MILLILITRE("mL");

    private final String symbol;

    Measure(String symbol) {
      this.symbol = symbol;
    }

    /** Unit as printed. */
    public String symbol() {
      return symbol;
    }
  }

  public Product {
    notes = List.copyOf(notes);
  }
}
