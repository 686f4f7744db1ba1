package sallet.crop;

/**
 * Daily growth of one plant from seedling to full size: light-catching crown limited by its site,
 * reserve pool, growth cap by temperature, shoot to root balance, leaf area by specific leaf area.
 *
 * <p>Maintenance, growth yield and assimilation after Van Henten (1994) Agricultural Systems
 * 45:55-72; the crown, site and dry-matter parts are this project's calibration, see
 * docs/models/growth.md.
 */
public final class PlantModel {
  /** Largest share of its structure a starving plant burns in a day. Judgement. */
  private static final double LARGEST_LOSS = 0.05;

  private PlantModel() {}

  /** The plant one day later. */
  public static PlantState step(PlantState s, PlantParameters p, PlantDay day) {
    double w = s.shootG() + s.rootG();
    double upkeep =
        (p.shootUpkeepPerDay() * s.shootG() + p.rootUpkeepPerDay() * s.rootG())
            * day.upkeepFactor();
    double crown = crownCm2(s.leafCm2(), p.crownC(), day.siteCm2());
    double reserve = s.reserveG() + day.assimilateGPerCm2() * crown - upkeep;
    double leaves = s.leaves() + day.leavesAdded();
    if (reserve < 0) {
      double keep = 1 - Math.min(-reserve, LARGEST_LOSS * w) / w;
      return new PlantState(s.shootG() * keep, s.rootG() * keep, 0, s.leafCm2(), leaves);
    }
    double grown = Math.min(w * day.growthFactor(), p.growthYield() * reserve);
    double left =
        Math.max(0, Math.min(reserve - grown / p.growthYield(), p.reserveCap() * (w + grown)));
    double shootPart = s.rootG() > p.rootShare() * (w + grown) ? 1 : 1 - p.rootShare();
    return new PlantState(
        s.shootG() + shootPart * grown,
        s.rootG() + (1 - shootPart) * grown,
        left,
        s.leafCm2() + day.slaCm2PerG() * p.leafShare() * shootPart * grown,
        leaves);
  }

  /** Light-catching area of a crown on its site, cm². */
  public static double crownCm2(double leafCm2, double c, double siteCm2) {
    double free = leafCm2 / (1 + c * Math.sqrt(leafCm2));
    double ratio = free / siteCm2;
    double ratio2 = ratio * ratio;
    return free / Math.sqrt(Math.sqrt(1 + ratio2 * ratio2));
  }
}
