package sallet.crop;

/**
 * State of one plant at the end of a day.
 *
 * @param shootG structural dry mass of the shoot, g
 * @param rootG structural dry mass of the root, g
 * @param reserveG reserve carbohydrate, g
 * @param leafCm2 leaf area, cm²
 * @param leaves number of leaves that have appeared; after {@link #pickedLeaves} those that stand
 */
public record PlantState(
    double shootG, double rootG, double reserveG, double leafCm2, double leaves) {

  /** Reserve of a seedling by its dry mass. Judgement. */
  private static final double START_RESERVE = 0.1;

  private static final int SEED_LEAVES = 2;

  /** A seedling on the day it emerges. */
  public static PlantState atEmergence(PlantParameters p) {
    return new PlantState(
        (1 - p.rootShare()) * p.startDryG(),
        p.rootShare() * p.startDryG(),
        START_RESERVE * p.startDryG(),
        p.startLeafCm2(),
        SEED_LEAVES);
  }

  /** Fresh mass of the shoot, g. */
  public double freshG(double dryMatterShare) {
    return (shootG + reserveG) / dryMatterShare;
  }

  /** The plant after a share of its leaf area was picked, 0 to 1. Roots stay. */
  public PlantState picked(double share) {
    if (!(share >= 0 && share <= 1)) {
      throw new IllegalArgumentException("a pick takes 0 to 100 %, was " + 100 * share + " %");
    }
    double keep = 1 - share;
    return new PlantState(shootG * keep, rootG, reserveG * keep, leafCm2 * keep, leaves);
  }

  /** The plant after a share of its leaf area was picked, the leaves counted off along with it. */
  public PlantState pickedLeaves(double share) {
    PlantState rest = picked(share);
    return new PlantState(
        rest.shootG(), rest.rootG(), rest.reserveG(), rest.leafCm2(), leaves * (1 - share));
  }
}
