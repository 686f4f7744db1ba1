package sallet.feed.caution;

/**
 * Safety texts that stand where the advice is given. Local codes, product labels and safety data
 * sheets come first.
 */
public enum Caution {
  ACID(
      "Acid and base: goggles and gloves, good light, water at hand. Pour acid into water, never water into acid. Keep from children; never in drink bottles."),
  CHLORINE(
      "Never mix acid or ammonium salts with bleach or other hypochlorite: poisonous gas. Ammonium salts give off ammonia with strong base."),
  NITRATE("Nitrates: dry, closed, away from fuel, wood dust and heat; buy what a season needs."),
  TRACE(
      "Trace salts: lock away from children and pets, no dust, gloves; boron compounds may harm fertility and the unborn child. Label every bottle with content, strength and date."),
  NOT_TO_DRINK(
      "The solution is not for drinking: it holds about ten times the nitrate allowed in drinking water. Wash leaves as usual."),
  WASTE(
      "Spent solution: thin it and water garden or pot plants; not into ponds, streams or storm drains; follow local rules.");

  private final String text;

  Caution(String text) {
    this.text = text;
  }

  /** The text. */
  public String text() {
    return text;
  }
}
