package sallet.feed.product;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import sallet.feed.FeedFault;
import sallet.feed.ion.Composition;
import sallet.feed.ion.Ion;
import sallet.feed.ion.Nutrient;

/**
 * A fertiliser as its label declares it: percent of oxides or elements by mass, or grams per 100
 * mL.
 *
 * <p>Whether a label means oxide or element is never guessed: {@code P2O5} and {@code P} are
 * different words. Charge the label leaves open is carried by unnamed ions, so that the product
 * neither makes nor eats alkalinity.
 *
 * @param name as the grower knows it
 * @param basis what the percentages are of
 * @param percents declared contents by symbol: N, NO3-N, NH4-N, urea-N, P2O5, K2O, CaO, Mg, Fe ...
 * @param chelate what holds the iron: EDTA, DTPA, EDDHA, or empty when none is declared
 */
public record Label(
    String name, Basis basis, Map<String, Double> percents, Optional<String> chelate) {
  private static final String ADDITION =
      "\\s*\\+\\s*([\\d.]+)\\s*([A-Za-z0-9-]+)(?:\\s+(EDTA|DTPA|EDDHA))?";
  private static final Pattern EXTRA = Pattern.compile(ADDITION);
  private static final Pattern GRADE =
      Pattern.compile("([\\d.]+)-([\\d.]+)-([\\d.]+)((?:" + ADDITION + ")*)\\s*(w/w|w/v)?");
  private static final double SPLIT_TOLERANCE = 0.2;

  /** What the percentages are of. */
  public enum Basis {
    /** Grams in 100 g. */
    BY_MASS,
    /** Grams in 100 mL. */
    BY_VOLUME
  }

  public Label {
    percents = Collections.unmodifiableMap(new TreeMap<>(percents));
  }

  /**
   * Reads a grade such as {@code 15.5-0-0 +14.4 NO3-N +1.1 NH4-N +19 Ca}, {@code 0-0-0 +6 Fe EDDHA}
   * or {@code 4-2-6 w/v}: N, P2O5 and K2O, then additions with what holds the iron; percent by mass
   * unless w/v says grams in 100 mL.
   */
  public static Label grade(String name, String grade) {
    Matcher m = GRADE.matcher(grade.strip());
    if (!m.matches()) {
      throw new FeedFault(
          "%s: cannot read the grade \"%s\"; write it like 13-0-46, 15.5-0-0 +14.4 NO3-N +19 Ca, 0-0-0 +6 Fe EDDHA or 4-2-6 w/v"
              .formatted(name, grade));
    }
    Map<String, Double> percents = new TreeMap<>();
    percents.put("N", number(m.group(1)));
    percents.put("P2O5", number(m.group(2)));
    percents.put("K2O", number(m.group(3)));
    Optional<String> chelate = Optional.empty();
    Matcher extra = EXTRA.matcher(m.group(4));
    while (extra.find()) {
      if (percents.put(extra.group(2), number(extra.group(1))) != null) {
        throw new FeedFault("%s: %s is declared twice".formatted(name, extra.group(2)));
      }
      chelate = chelate.or(() -> Optional.ofNullable(extra.group(3)));
    }
    Basis basis = "w/v".equals(m.group(8)) ? Basis.BY_VOLUME : Basis.BY_MASS;
    return new Label(name, basis, percents, chelate);
  }

  /** Whether it declares trace nutrients alone. */
  public boolean isTrace() {
    return percents.entrySet().stream()
        .filter(e -> e.getValue() > 0)
        .allMatch(e -> Nutrient.of(e.getKey()).filter(Nutrient::isTrace).isPresent());
  }

  private static double number(String text) {
    try {
      return Double.parseDouble(text);
    } catch (NumberFormatException e) {
      throw new FeedFault("\"" + text + "\" is not a number");
    }
  }

  /**
   * The product behind the label.
   *
   * @throws FeedFault naming every impossible figure
   */
  public Product product(Use use) {
    List<String> notes = new ArrayList<>();
    Map<Nutrient, Double> elements = elements();
    splitNitrogen(elements, notes);
    EnumMap<Ion, Double> mmol = new EnumMap<>(Ion.class);
    elements.forEach(
        (nutrient, percent) -> {
          Ion ion = carrier(nutrient, notes);
          double atoms = nutrient == Nutrient.UREA_NITROGEN ? 2 : 1;
          mmol.merge(ion, percent * 10 / nutrient.element().weight() / atoms, Double::sum);
        });
    Composition open = new Composition(mmol);
    Composition closed = close(open);
    if (Math.abs(open.alkalinityMeq()) > 0.05 * (open.cationsMeq() + open.anionsMeq())) {
      notes.add(
          "The label leaves %.1f meq of charge per unit open; unnamed ions carry it"
              .formatted(Math.abs(open.alkalinityMeq())));
    }
    Product.Measure measure =
        basis == Basis.BY_MASS ? Product.Measure.GRAM : Product.Measure.MILLILITRE;
    return new Product(
        name, name, measure, closed, use, Optional.empty(), "Follow the label.", notes);
  }

  private Map<Nutrient, Double> elements() {
    List<String> faults = new ArrayList<>();
    EnumMap<Nutrient, Double> elements = new EnumMap<>(Nutrient.class);
    double sum = 0;
    for (Map.Entry<String, Double> entry : percents.entrySet()) {
      double percent = entry.getValue();
      Optional<Oxide> oxide = Oxide.of(entry.getKey());
      Optional<Nutrient> nutrient =
          oxide.map(Oxide::nutrient).or(() -> Nutrient.of(entry.getKey()));
      if (nutrient.isEmpty()) {
        faults.add(
            "%s: %s is not a nutrient or oxide a label states".formatted(name, entry.getKey()));
      } else if (!(percent >= 0 && percent <= 100)) {
        faults.add(
            "%s: %s must be 0 to 100 %%, was %s %%".formatted(name, entry.getKey(), percent));
      } else {
        double factor = oxide.map(Oxide::toElement).orElse(1.0);
        elements.merge(nutrient.get(), percent * factor, Double::sum);
        sum += isPartOfNitrogen(nutrient.get()) && percents.containsKey("N") ? 0 : percent;
      }
    }
    if (sum > 100 && basis == Basis.BY_MASS) {
      faults.add("%s: the declared parts add up to %.1f %%, more than 100 %%".formatted(name, sum));
    }
    if (sum == 0 && faults.isEmpty()) {
      faults.add("%s: the label declares nothing".formatted(name));
    }
    if (!faults.isEmpty()) {
      throw new FeedFault(faults);
    }
    return elements;
  }

  private static boolean isPartOfNitrogen(Nutrient nutrient) {
    return nutrient == Nutrient.NITRATE_NITROGEN
        || nutrient == Nutrient.AMMONIUM_NITROGEN
        || nutrient == Nutrient.UREA_NITROGEN;
  }

  /** Replaces total nitrogen by its declared forms; undeclared nitrogen counts as nitrate. */
  private void splitNitrogen(Map<Nutrient, Double> elements, List<String> notes) {
    double forms =
        elements.getOrDefault(Nutrient.NITRATE_NITROGEN, 0.0)
            + elements.getOrDefault(Nutrient.AMMONIUM_NITROGEN, 0.0)
            + elements.getOrDefault(Nutrient.UREA_NITROGEN, 0.0);
    Double total = elements.remove(Nutrient.NITROGEN);
    if (total == null || total == 0) {
      return;
    }
    if (forms > total + SPLIT_TOLERANCE) {
      throw new FeedFault(
          "%s: the forms of nitrogen add up to %.2f %%, more than the total of %.2f %%"
              .formatted(name, forms, total));
    }
    if (total - forms > SPLIT_TOLERANCE) {
      notes.add("Nitrogen whose form the label does not tell is taken as nitrate");
      elements.merge(Nutrient.NITRATE_NITROGEN, total - forms, Double::sum);
    }
  }

  private Ion carrier(Nutrient nutrient, List<String> notes) {
    if (nutrient != Nutrient.IRON) {
      return nutrient.ions().get(0);
    }
    return switch (chelate.orElse("").toUpperCase(java.util.Locale.ROOT)) {
      case "EDTA" -> Ion.IRON_EDTA;
      case "DTPA" -> Ion.IRON_DTPA;
      case "EDDHA" -> Ion.IRON_EDDHA;
      case "" -> {
        notes.add("No chelate is declared: free iron falls out in the reservoir within days");
        yield Ion.IRON;
      }
      default ->
          throw new FeedFault(
              "%s: the chelate must be EDTA, DTPA or EDDHA, was %s"
                  .formatted(name, chelate.orElse("")));
    };
  }

  private static Composition close(Composition open) {
    double charge = open.alkalinityMeq();
    return charge > 0 ? open.with(Ion.OTHER_ANION, charge) : open.with(Ion.OTHER_CATION, -charge);
  }
}
