package sallet.water.transpiration;

import sallet.air.MoistAir;
import sallet.air.Vapour;

/**
 * Heat balance of leaves: how warm they are and how much they transpire. Source: Graamans, van den
 * Dobbelsteen, Meinen and Stanghellini (2017), Agricultural Systems 153:138-147, equations 4 to 8;
 * seen at 15 to 25 °C, deficits of 0.05 to 0.85 kPa and 140 to 600 µmol/m²/s, with an error of 15.9
 * g/m²/h. Long-wave exchange with the room is an addition of this project.
 *
 * @param leafMinusAirC how much warmer than the air the leaves are, °C
 * @param waterGM2H water transpired by a square metre of ground, g/h
 */
public record LeafBalance(double leafMinusAirC, double waterGM2H) {
  /** Heat that a cubic metre of air stores, J/m³/K: 1.2 kg/m³ at 1005 J/kg/K. */
  static final double AIR_J_M3K = 1.2 * 1005;

  /** Pressure for which the source's constants hold, kPa. */
  private static final double PRESSURE_KPA = 101.3;

  private static final int STEPS = 60;

  /** With vapour in the leaf made linear in its warmth (equation 7). */
  public static LeafBalance linear(Canopy c, MoistAir air) {
    PenmanMonteith balance = linearised(c, air);
    return new LeafBalance(
        balance.surfaceMinusAirK(),
        3600 * balance.latentWm2() / Vapour.latentJPerG(air.temperatureC()));
  }

  private static PenmanMonteith linearised(Canopy c, MoistAir air) {
    double lai = c.leafAreaIndex();
    double way = c.stomataSM() + c.boundarySM();
    double latent = Vapour.latentJPerG(air.temperatureC());
    double epsilon =
        Vapour.slopeKpaPerC(air.temperatureC()) / Vapour.psychrometricKpaPerC(PRESSURE_KPA);
    return new PenmanMonteith(
        c.absorbedWm2(),
        lai * AIR_J_M3K / c.boundarySM() + c.longwaveWm2K(),
        lai * latent * air.deficitGM3() / way,
        lai * AIR_J_M3K * epsilon / way);
  }

  /**
   * With the leaf's own saturation: what is left over falls steadily with leaf warmth, so there is
   * one root; found by Newton's steps from the linear answer.
   */
  public static LeafBalance exact(Canopy c, MoistAir air) {
    double lai = c.leafAreaIndex();
    double latentJPerG = Vapour.latentJPerG(air.temperatureC());
    double vapour = lai * latentJPerG / (c.stomataSM() + c.boundarySM());
    double warmth = lai * AIR_J_M3K / c.boundarySM() + c.longwaveWm2K();
    double warmer = linearised(c, air).surfaceMinusAirK();
    double latentWm2 = 0;
    double step = 1;
    for (int i = 0; i < STEPS && Math.abs(step) > 1e-9; i++) {
      double leafC = air.temperatureC() + warmer;
      double inside = Vapour.concentrationGM3(Vapour.saturationKpa(leafC), leafC);
      latentWm2 = vapour * (inside - air.waterGM3());
      double slope = warmth + vapour * Vapour.concentrationGM3(Vapour.slopeKpaPerC(leafC), leafC);
      step = (c.absorbedWm2() - warmth * warmer - latentWm2) / slope;
      warmer += step;
    }
    return new LeafBalance(warmer, 3600 * latentWm2 / latentJPerG);
  }
}
