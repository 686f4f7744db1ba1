package sallet.crop;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;

/** What a place offers a plant on consecutive days, reduced from hours to one row a day. */
public final class PlaceDays {
  private final LocalDate from;
  private final double[] assimilateG;
  private final double[] dliMol;
  private final double[] meanC;
  private final double[] photoperiodHours;
  private final double[] boltingHeatCd;

  /**
   * @param from first day
   * @param assimilateG carbohydrate a unit of light-catching leaf gains, g CH2O per m² and day, at
   *     assimilation factor 1 (see {@link Assimilation})
   * @param dliMol daily light integral, mol/m²/d
   * @param meanC mean temperature of the 24 hours, °C
   * @param photoperiodHours hours with any light
   * @param boltingHeatCd degree days above 5 °C, each hour capped at 30 °C, °C d
   */
  public PlaceDays(
      LocalDate from,
      double[] assimilateG,
      double[] dliMol,
      double[] meanC,
      double[] photoperiodHours,
      double[] boltingHeatCd) {
    for (double[] values : List.of(assimilateG, meanC, photoperiodHours, boltingHeatCd)) {
      if (values.length != dliMol.length) {
        throw new IllegalArgumentException(
            "every row needs " + dliMol.length + " days, one has " + values.length);
      }
    }
    this.from = from;
    this.assimilateG = assimilateG.clone();
    this.dliMol = dliMol.clone();
    this.meanC = meanC.clone();
    this.photoperiodHours = photoperiodHours.clone();
    this.boltingHeatCd = boltingHeatCd.clone();
  }

  /** First day. */
  public LocalDate from() {
    return from;
  }

  /** Number of days. */
  public int days() {
    return dliMol.length;
  }

  /** Index of a date, which may lie outside the days held. */
  public int index(LocalDate day) {
    return (int) ChronoUnit.DAYS.between(from, day);
  }

  /** Whether the date is one of the days held. */
  public boolean holds(LocalDate day) {
    int index = index(day);
    return index >= 0 && index < days();
  }

  /** Index of a date that must be one of the days held. */
  int heldIndex(LocalDate day) {
    if (!holds(day)) {
      throw new IllegalArgumentException(
          "the place is known from " + from + " for " + days() + " days, not on " + day);
    }
    return index(day);
  }

  /** Carbohydrate gained by light-catching leaf at assimilation factor 1, g CH2O/m²/d. */
  public double assimilateG(int day) {
    return assimilateG[day];
  }

  /** Daily light integral, mol/m²/d. */
  public double dliMol(int day) {
    return dliMol[day];
  }

  /** Mean temperature of the 24 hours, °C. */
  public double meanC(int day) {
    return meanC[day];
  }

  /** Hours with any light. */
  public double photoperiodHours(int day) {
    return photoperiodHours[day];
  }

  /** Degree days above 5 °C with each hour capped at 30 °C, °C d. */
  public double boltingHeatCd(int day) {
    return boltingHeatCd[day];
  }
}
