package sallet.feed.product;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sallet.feed.EmbeddedTable;
import sallet.feed.FeedFault;
import sallet.feed.ion.Composition;
import sallet.feed.ion.Formula;
import sallet.feed.ion.Ion;

/**
 * A pure chemical of the catalogue.
 *
 * @param id short name
 * @param name trade name of the chemical
 * @param formula with its water of crystallisation
 * @param use what it is for
 * @param offered whether it is suggested to a household unasked
 * @param ionsPerMole what one mole brings, mol
 * @param solubility how much dissolves, when known
 * @param caution what to beware of
 */
public record Salt(
    String id,
    String name,
    Formula formula,
    Use use,
    boolean offered,
    Composition ionsPerMole,
    Optional<Solubility> solubility,
    String caution) {

  private static final List<Salt> CATALOGUE =
      EmbeddedTable.rows("salts.csv").stream().map(Salt::of).toList();

  /** All salts Sallet knows, in catalogue order. */
  public static List<Salt> catalogue() {
    return CATALOGUE;
  }

  /** The salt of an id, a name or a formula, without regard to case. */
  public static Optional<Salt> find(String text) {
    String wanted = text.strip();
    return CATALOGUE.stream()
        .filter(
            s ->
                s.id.equalsIgnoreCase(wanted)
                    || s.name.equalsIgnoreCase(wanted)
                    || s.formula.text().equalsIgnoreCase(wanted))
        .findFirst();
  }

  /**
   * A salt of the catalogue with as much water of crystallisation as a formula says, such as
   * MgSO4.H2O. What dissolves is reckoned by the dry part.
   *
   * @throws FeedFault when the formula cannot be read
   */
  public static Optional<Salt> withWaterOf(String formula) {
    Formula wanted = Formula.parse(formula);
    return CATALOGUE.stream()
        .filter(s -> s.formula.dry().equals(wanted.dry()))
        .findFirst()
        .map(s -> s.as(wanted));
  }

  private Salt as(Formula wanted) {
    double factor = wanted.molarMass() / formula.molarMass();
    return new Salt(
        wanted.text(),
        name + " as " + wanted.text(),
        wanted,
        use,
        offered,
        ionsPerMole,
        solubility.map(s -> s.times(factor)),
        caution);
  }

  /**
   * The bag on the shelf.
   *
   * @param purity mass share of the chemical, above 0 to 1; technical grades 0.98 to 0.99
   */
  public Product product(double purity) {
    if (!(purity > 0 && purity <= 1)) {
      throw new FeedFault(
          "%s: purity must be above 0 to 100 %%, was %s %%".formatted(name, 100 * purity));
    }
    Composition perGram = ionsPerMole.times(1000 * purity / formula.molarMass());
    return new Product(
        id, name, Product.Measure.GRAM, perGram, use, solubility, caution, List.of());
  }

  private static Salt of(Map<String, String> row) {
    return new Salt(
        EmbeddedTable.text(row, "id"),
        EmbeddedTable.text(row, "name"),
        Formula.parse(EmbeddedTable.text(row, "formula")),
        Use.valueOf(EmbeddedTable.text(row, "use")),
        EmbeddedTable.text(row, "offered").equals("yes"),
        ions(EmbeddedTable.text(row, "ions")),
        solubility(row),
        EmbeddedTable.text(row, "caution"));
  }

  private static Composition ions(String text) {
    EnumMap<Ion, Double> ions = new EnumMap<>(Ion.class);
    Arrays.stream(text.split(";", -1))
        .map(part -> part.split(":", -1))
        .forEach(pair -> ions.put(Ion.valueOf(pair[0]), Double.valueOf(pair[1])));
    return new Composition(ions);
  }

  private static Optional<Solubility> solubility(Map<String, String> row) {
    if (EmbeddedTable.text(row, "solubility20").isEmpty()) {
      return Optional.empty();
    }
    double at20 = EmbeddedTable.number(row, "solubility20");
    return Optional.of(
        new Solubility(orElse(row, "solubility10", at20), at20, orElse(row, "solubility30", at20)));
  }

  private static double orElse(Map<String, String> row, String column, double otherwise) {
    return EmbeddedTable.text(row, column).isEmpty()
        ? otherwise
        : EmbeddedTable.number(row, column);
  }
}
