package sallet.water.caution;

/** What a full reservoir weighs on a floor. */
public final class FloorLoad {
  /** Load that dwellings are usually designed for, kN/m² (1.5 in the UK, 1.92 in the US). */
  public static final double USUAL_KN_M2 = 1.5;

  private static final double STANDARD_GRAVITY = 9.80665;

  private FloorLoad() {}

  /** Of water alone, kN/m²: a kilogram a litre. */
  public static double kNPerM2(double litres, double footprintM2) {
    return STANDARD_GRAVITY * litres / 1000 / footprintM2;
  }
}
