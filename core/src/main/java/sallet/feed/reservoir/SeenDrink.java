package sallet.feed.reservoir;

import sallet.feed.FeedFault;

/**
 * What the household saw of its plants' thirst: a reservoir that was kept at its mark, and its EC.
 *
 * @param pouredL all that was poured in since the solution was fresh, L
 * @param strength mean strength of that, 1 being full, 0 water
 * @param readMsCm conductivity read afterwards, mS/cm at 25 °C
 */
public record SeenDrink(double pouredL, double strength, double readMsCm) {
  private static final double STRONGEST = 2;

  public SeenDrink {
    if (!(pouredL > 0 && strength >= 0 && strength <= STRONGEST && readMsCm > 0)) {
      throw new FeedFault(
          "A reservoir is seen after more than 0 L of 0 to 200 %% strength with an EC above 0, was %s L, %.0f %%, %s mS/cm"
              .formatted(pouredL, 100 * strength, readMsCm));
    }
  }
}
