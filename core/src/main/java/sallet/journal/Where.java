package sallet.journal;

import java.util.List;

/** What the place column of a row names. */
public sealed interface Where {
  /** Nothing was named. */
  record Anywhere() implements Where {}

  /** So many sowing cells. */
  record Cells(int count) implements Where {}

  /** The nursery shelf. */
  record Nursery() implements Where {}

  /** Pots, by name, each once. */
  record Pots(List<String> names) implements Where {
    public Pots {
      names = List.copyOf(names);
    }
  }

  /** Another place of the household, such as the reservoir. */
  record Elsewhere(String name) implements Where {}

  /** The pots named, none for every other place. */
  default List<String> pots() {
    return this instanceof Pots pots ? pots.names() : List.of();
  }

  /** The place as the journal writes it, pots joined by {@code +}. */
  default String text() {
    if (this instanceof Cells cells) {
      return Integer.toString(cells.count());
    }
    if (this instanceof Nursery) {
      return "nursery";
    }
    return this instanceof Elsewhere other ? other.name() : String.join("+", pots());
  }
}
