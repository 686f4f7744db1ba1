package sallet.crop;

import java.util.Optional;

/** How many days picked leaf keeps good, by temperature. Quality, not safety. */
public final class FridgeLife {
  /**
   * Days lettuce keeps less by each degree. Source: Lin and Hall, Acta Horticulturae 628:129-134,
   * greenhouse lettuce (1.34 when grown under much lamp light), abstract.
   */
  private static final double LETTUCE_DAYS_PER_C = 0.86;

  /** Temperature of the handbook's days, °C. */
  private static final double HANDBOOK_C = 4;

  /** How far the handbook's days may be taken for another crop, °C. Judgement. */
  private static final double NEAR_C = 1.5;

  private FridgeLife() {}

  /**
   * Days a crop keeps at a temperature of 0 to 10 °C: the handbook's at about 4 °C, for lettuce
   * shifted by 0.86 days a degree; empty where nothing is known (basil suffers in a fridge).
   */
  public static Optional<Span> daysAt(Crop crop, double temperatureC) {
    if (!(temperatureC >= 0 && temperatureC <= 10)) {
      return Optional.empty();
    }
    double warmer = temperatureC - HANDBOOK_C;
    if (crop.species().equals("Lactuca sativa")) {
      double shift = LETTUCE_DAYS_PER_C * warmer;
      return crop.guide()
          .fridgeDays()
          .map(d -> new Span(Math.max(0, d.low() - shift), Math.max(0, d.high() - shift)));
    }
    return crop.guide().fridgeDays().filter(d -> Math.abs(warmer) <= NEAR_C);
  }
}
