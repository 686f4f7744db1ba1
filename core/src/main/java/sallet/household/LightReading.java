package sallet.household;

import java.time.LocalDateTime;
import java.util.OptionalDouble;

/**
 * A reading of a light meter held level at a pot's leaves.
 *
 * @param pot name of the pot
 * @param at when, standard time
 * @param sky what shone
 * @param meter what was read
 * @param value of the meter: µmol/m²/s or lux
 * @param outdoors the same meter held level under the open sky; empty when none was taken
 */
public record LightReading(
    String pot, LocalDateTime at, Sky sky, Meter meter, double value, OptionalDouble outdoors) {

  /** What shone. */
  public enum Sky {
    /** Sun out, lamp off. */
    SUN,
    /** Overcast, lamp off. */
    OVERCAST,
    /** Dark outside or curtains drawn, all lamps on. */
    LAMP
  }

  /** What the meter shows. */
  public enum Meter {
    PPFD,
    LUX
  }
}
