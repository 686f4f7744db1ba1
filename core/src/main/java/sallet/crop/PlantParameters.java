package sallet.crop;

/**
 * Parameters of the per-plant daily growth model for one kind of plant. Names follow the equations
 * of {@link PlantModel}.
 *
 * @param crownC c of the free crown area A = LA / (1 + c sqrt(LA)), 1/cm
 * @param growthCapPerDay mu, highest relative growth rate, 1/d
 * @param baseC temperature below which nothing grows, °C
 * @param optimumLowC lower end of the best temperature range, °C
 * @param optimumHighC upper end of the best temperature range, °C
 * @param ceilingC temperature above which nothing grows, °C
 * @param startDryG W0, dry mass at emergence, g
 * @param startLeafCm2 LA0, leaf area at emergence, cm²
 * @param rootShare tau, share of dry mass kept in the root
 * @param leafShare lambda, share of shoot growth that becomes leaf
 * @param slaCm2PerG SLA0, specific leaf area at the reference light, cm²/g
 * @param slaLightPower sD, power of light in the specific leaf area
 * @param referenceDliMol Dref, reference light, mol/m²/d
 * @param dryMatterShare DMC0, dry share of fresh mass at the reference light and 20 °C
 * @param dryMatterLightPower dD, power of light in the dry share
 * @param dryMatterPerC dT, relative change of the dry share per °C, 1/°C
 * @param growthYield Y, structural mass per reserve spent
 * @param reserveCap rmax, largest reserve per structural mass
 * @param assimilationFactor q, factor on assimilation
 * @param layerFactor gsc, factor on the canopy's conductance to carbon dioxide
 * @param shootUpkeepPerDay ms, maintenance of shoot at 25 °C, 1/d
 * @param rootUpkeepPerDay mr, maintenance of root at 25 °C, 1/d
 * @param leafBaseC Tph, base temperature of leaf appearance, °C
 * @param phyllochronCd phyl, degree days per leaf, °C d
 */
public record PlantParameters(
    double crownC,
    double growthCapPerDay,
    double baseC,
    double optimumLowC,
    double optimumHighC,
    double ceilingC,
    double startDryG,
    double startLeafCm2,
    double rootShare,
    double leafShare,
    double slaCm2PerG,
    double slaLightPower,
    double referenceDliMol,
    double dryMatterShare,
    double dryMatterLightPower,
    double dryMatterPerC,
    double growthYield,
    double reserveCap,
    double assimilationFactor,
    double layerFactor,
    double shootUpkeepPerDay,
    double rootUpkeepPerDay,
    double leafBaseC,
    double phyllochronCd) {

  /**
   * Layer factor gsc of all crops of the catalogue: about three lit leaf layers. Fitted to measured
   * yields, see docs/models/growth.md.
   */
  public static final double LAYER_FACTOR = 3;

  public PlantParameters {
    if (!Cardinals.rise(baseC, optimumLowC, optimumHighC, ceilingC)) {
      throw new IllegalArgumentException(
          "growth temperatures must rise from base over optimum to ceiling, were %s, %s, %s, %s °C"
              .formatted(baseC, optimumLowC, optimumHighC, ceilingC));
    }
    requireAbove0("start dry mass", startDryG, "g");
    requireAbove0("start leaf area", startLeafCm2, "cm²");
    requireAbove0("growth cap", growthCapPerDay, "1/d");
    requireAbove0("specific leaf area", slaCm2PerG, "cm²/g");
    requireAbove0("reference light", referenceDliMol, "mol/m²/d");
    requireAbove0("phyllochron", phyllochronCd, "°C d");
    requireAbove0("factor on assimilation", assimilationFactor, "");
    requireShare("root share", rootShare);
    requireShare("leaf share", leafShare);
    requireShare("dry-matter share", dryMatterShare);
    requireShare("growth yield", growthYield);
    if (!(crownC >= 0)) {
      throw new IllegalArgumentException("crown factor must be 0 or more, was " + crownC);
    }
  }

  /** Cardinal temperatures of growth. */
  public Cardinals temperatures() {
    return new Cardinals(baseC, optimumLowC, optimumHighC, ceilingC);
  }

  /** The same plant with other cardinal temperatures of growth. */
  public PlantParameters withTemperatures(Cardinals temperatures) {
    return with(temperatures, dryMatterShare, assimilationFactor);
  }

  /** The same plant with another dry share of fresh mass. */
  public PlantParameters withDryMatterShare(double share) {
    return with(temperatures(), share, assimilationFactor);
  }

  /** The same plant with another factor on assimilation. */
  public PlantParameters withAssimilationFactor(double factor) {
    return with(temperatures(), dryMatterShare, factor);
  }

  private PlantParameters with(Cardinals temperatures, double share, double factor) {
    return new PlantParameters(
        crownC,
        growthCapPerDay,
        temperatures.coldestC(),
        temperatures.bestFromC(),
        temperatures.bestToC(),
        temperatures.warmestC(),
        startDryG,
        startLeafCm2,
        rootShare,
        leafShare,
        slaCm2PerG,
        slaLightPower,
        referenceDliMol,
        share,
        dryMatterLightPower,
        dryMatterPerC,
        growthYield,
        reserveCap,
        factor,
        layerFactor,
        shootUpkeepPerDay,
        rootUpkeepPerDay,
        leafBaseC,
        phyllochronCd);
  }

  private static void requireAbove0(String what, double value, String unit) {
    if (!(value > 0)) {
      throw new IllegalArgumentException(
          (what + " must be above 0 " + unit).strip() + ", was " + (value + " " + unit).strip());
    }
  }

  private static void requireShare(String what, double value) {
    if (!(value > 0 && value <= 1)) {
      throw new IllegalArgumentException(what + " must be above 0 and at most 1, was " + value);
    }
  }
}
