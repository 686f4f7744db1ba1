package sallet.feed.ion;

import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.stream.Collectors;
import sallet.feed.FeedFault;

/**
 * A chemical formula such as {@code Ca(NO3)2.4H2O} or {@code 5Ca(NO3)2.NH4NO3.10H2O}: element
 * symbols with counts, brackets, and parts joined by a dot, each with an optional leading count.
 *
 * @param text as written
 * @param atoms number of atoms of each element in one formula unit
 */
public record Formula(String text, Map<Element, Double> atoms) {
  public Formula {
    atoms = Collections.unmodifiableMap(new EnumMap<>(atoms));
  }

  /**
   * Reads a formula.
   *
   * @throws FeedFault when an element is unknown or a bracket is not closed
   */
  public static Formula parse(String text) {
    String plain = plain(text);
    if (plain.isEmpty()) {
      throw new FeedFault("A formula is empty; write it like MgSO4.7H2O");
    }
    if (plain.length() > 100) {
      throw new FeedFault("A formula is longer than 100 characters");
    }
    EnumMap<Element, Double> atoms = new EnumMap<>(Element.class);
    for (String part : plain.split("\\.", -1)) {
      Parser parser = new Parser(text, part);
      double count = parser.count();
      parser.group(0).forEach((element, n) -> atoms.merge(element, count * n, Double::sum));
    }
    return new Formula(text, atoms);
  }

  /** The atoms without the water of crystallisation, the parts that read H2O. */
  public Map<Element, Double> dry() {
    String parts =
        Arrays.stream(plain(text).split("\\.", -1))
            .filter(part -> !part.matches("\\d*H2O"))
            .collect(Collectors.joining("."));
    return parts.isEmpty() ? Map.of() : parse(parts).atoms;
  }

  private static String plain(String text) {
    return text.replace('·', '.').replace('[', '(').replace(']', ')').strip();
  }

  /** Mass of one mole, g/mol. */
  public double molarMass() {
    return atoms.entrySet().stream().mapToDouble(e -> e.getKey().weight() * e.getValue()).sum();
  }

  /** Mass fraction of an element, 0 to 1. */
  public double massFraction(Element element) {
    return atoms.getOrDefault(element, 0.0) * element.weight() / molarMass();
  }

  /** Recursive descent over one part of a formula. */
  private static final class Parser {
    private final String whole;
    private final String part;
    private int at;

    Parser(String whole, String part) {
      this.whole = whole;
      this.part = part;
    }

    /** Elements up to the end or the closing bracket. */
    EnumMap<Element, Double> group(int depth) {
      EnumMap<Element, Double> atoms = new EnumMap<>(Element.class);
      while (at < part.length() && part.charAt(at) != ')') {
        EnumMap<Element, Double> inner = part.charAt(at) == '(' ? bracket(depth) : element();
        double count = count();
        inner.forEach((element, n) -> atoms.merge(element, count * n, Double::sum));
      }
      if (atoms.isEmpty() || (depth == 0 && at < part.length())) {
        throw fault(at);
      }
      return atoms;
    }

    private EnumMap<Element, Double> bracket(int depth) {
      int open = at++;
      EnumMap<Element, Double> inner = group(depth + 1);
      if (at >= part.length()) {
        throw fault(open);
      }
      at++;
      return inner;
    }

    private EnumMap<Element, Double> element() {
      int end = at + 1;
      while (end < part.length() && Character.isLowerCase(part.charAt(end))) {
        end++;
      }
      String symbol = part.substring(at, end);
      Element element =
          Element.of(symbol)
              .orElseThrow(
                  () ->
                      new FeedFault(
                          "Formula %s: %s is not an element Sallet knows; write it like MgSO4.7H2O"
                              .formatted(whole, symbol)));
      at = end;
      return new EnumMap<>(Map.of(element, 1.0));
    }

    double count() {
      int start = at;
      while (at < part.length() && Character.isDigit(part.charAt(at))) {
        at++;
      }
      return start == at ? 1 : Double.parseDouble(part.substring(start, at));
    }

    private FeedFault fault(int position) {
      return new FeedFault(
          "Formula %s: cannot read \"%s\" from character %d on; write it like Ca(NO3)2.4H2O"
              .formatted(whole, part, position + 1));
    }
  }
}
