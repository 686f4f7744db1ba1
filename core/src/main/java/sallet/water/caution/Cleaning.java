package sallet.water.caution;

import java.util.OptionalDouble;

/**
 * Bleach to clean tray and reservoir with once they are empty and scrubbed.
 *
 * @param litres plain water that the pump needs to flood the tray once without pots, L
 * @param bleachPercent chlorine on the label, % w/v
 * @param told whether the grower told it
 */
public record Cleaning(double litres, double bleachPercent, boolean told) {
  /** Household bleach as it is often sold, % w/v. Common practice: 3 to 8. */
  private static final double USUAL_PERCENT = 5;

  /** For a flood of so many litres with the bleach at hand, else one of 5 %. */
  public static Cleaning of(double litres, OptionalDouble bleachPercent) {
    return new Cleaning(litres, bleachPercent.orElse(USUAL_PERCENT), bleachPercent.isPresent());
  }

  /** Bleach for 100 mg/L of chlorine, mL. */
  public double leastMl() {
    return CleaningDose.bleachMl(CleaningDose.LEAST_MG_L, litres, bleachPercent);
  }

  /** Bleach for 200 mg/L of chlorine, mL. */
  public double mostMl() {
    return CleaningDose.bleachMl(CleaningDose.MOST_MG_L, litres, bleachPercent);
  }
}
