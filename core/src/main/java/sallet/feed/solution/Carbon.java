package sallet.feed.solution;

/** What the dissolved carbon dioxide does. */
public sealed interface Carbon {
  /** Outdoor air, log10 of the partial pressure in atmospheres. */
  double OUTDOOR_LOG10_ATM = -3.38;

  /** In equilibrium with outdoor air. */
  Carbon OPEN = new Open(OUTDOOR_LOG10_ATM);

  /** What is dissolved stays: just poured, stoppered, or measured at once. */
  Carbon CLOSED = new Closed();

  /**
   * In equilibrium with air.
   *
   * @param log10Atm log10 of the partial pressure of carbon dioxide, atm; -3.38 outdoors, -3.2 to
   *     -2.9 in a lived-in room
   */
  record Open(double log10Atm) implements Carbon {
    public Open {
      if (!(log10Atm >= -5 && log10Atm <= 0)) {
        throw new IllegalArgumentException(
            "log10 of the carbon dioxide pressure must be -5 to 0 atm, was " + log10Atm);
      }
    }
  }

  /** The carbon of the composition stays in solution. */
  record Closed() implements Carbon {}
}
