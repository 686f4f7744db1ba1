package sallet.light;

import java.time.LocalDate;

/**
 * Light at a list of places on consecutive days, as the mean PPFD of each hour. Hours run in the
 * standard time of the place's zone (a lamp timer is not touched when the clocks change).
 */
public final class HourlyLight {
  private final LocalDate from;
  private final int days;
  private final double[][] daylightUmol;
  private final double[][] lampUmol;
  private final double[] photoperiodHours;

  /**
   * @param from first day
   * @param daylightUmol PPFD of daylight for each place, {@code days x 24} values, µmol/m²/s
   * @param lampUmol the same of lamp light
   * @param photoperiodHours hours of each day with any light, sun or lamp
   */
  public HourlyLight(
      LocalDate from, double[][] daylightUmol, double[][] lampUmol, double[] photoperiodHours) {
    this.from = from;
    this.days = photoperiodHours.length;
    this.daylightUmol = daylightUmol;
    this.lampUmol = lampUmol;
    this.photoperiodHours = photoperiodHours;
  }

  /** First day. */
  public LocalDate from() {
    return from;
  }

  /** Number of days. */
  public int days() {
    return days;
  }

  /** Number of places. */
  public int places() {
    return daylightUmol.length;
  }

  /** Mean PPFD of the hour at a place, daylight and lamp together, µmol/m²/s. */
  public double ppfdUmol(int place, int day, int hour) {
    return daylightUmol[place][day * 24 + hour] + lampUmol[place][day * 24 + hour];
  }

  /** Mean lamp light of the hour at a place, µmol/m²/s. */
  public double lampUmol(int place, int day, int hour) {
    return lampUmol[place][day * 24 + hour];
  }

  /** Mean PPFD of the hour at a place from daylight alone, µmol/m²/s. */
  public double daylightUmol(int place, int day, int hour) {
    return daylightUmol[place][day * 24 + hour];
  }

  /** Daily light integral of a place, mol/m²/d. */
  public double dliMol(int place, int day) {
    return daylightDliMol(place, day) + lampDliMol(place, day);
  }

  /** Daily light integral of daylight alone, mol/m²/d. */
  public double daylightDliMol(int place, int day) {
    return dayMol(daylightUmol[place], day);
  }

  /** Daily light integral of lamp light alone, mol/m²/d. */
  public double lampDliMol(int place, int day) {
    return dayMol(lampUmol[place], day);
  }

  /** Hours of the day with any light, sun above the horizon (if a window sees out) or lamp. */
  public double photoperiodHours(int day) {
    return photoperiodHours[day];
  }

  private static double dayMol(double[] umol, int day) {
    double sum = 0;
    for (int h = 0; h < 24; h++) {
      sum += umol[day * 24 + h];
    }
    return sum * 3600e-6;
  }
}
