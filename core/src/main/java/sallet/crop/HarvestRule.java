package sallet.crop;

/**
 * How a crop is taken and how long it may stand.
 *
 * @param leafPick whether outer leaves may be picked from the standing plant
 * @param liftFromG fresh mass of one plant from which it may be lifted whole, g
 * @param overAgeDays last day on the bench, days after emergence
 * @param ageingFromDays day after emergence from which growth slows
 * @param ageingPerWeek factor on assimilation for each week after that
 * @param fridgeCarryDays days the harvest keeps in the fridge, 0 when it must be eaten at once
 * @param edibleShare edible share of the harvested fresh mass
 * @param plantsPerPot plants that share one pot, raised together as a clump in one cell
 * @param usableShare share of seeds that become a usable transplant
 */
public record HarvestRule(
    boolean leafPick,
    double liftFromG,
    int overAgeDays,
    int ageingFromDays,
    double ageingPerWeek,
    int fridgeCarryDays,
    double edibleShare,
    int plantsPerPot,
    double usableShare) {
  public HarvestRule {
    require(liftFromG > 0, "fresh mass to lift from must be above 0 g", liftFromG);
    require(overAgeDays > 0, "last day on the bench must be above 0 days", overAgeDays);
    require(ageingFromDays >= 0, "ageing must start at 0 days or later", ageingFromDays);
    require(
        ageingPerWeek > 0 && ageingPerWeek <= 1,
        "ageing factor must be above 0 and at most 1",
        ageingPerWeek);
    require(fridgeCarryDays >= 0, "fridge days must be 0 or more", fridgeCarryDays);
    require(
        edibleShare > 0 && edibleShare <= 1,
        "edible share must be above 0 and at most 1",
        edibleShare);
    require(plantsPerPot >= 1, "plants a pot must be 1 or more", plantsPerPot);
    SeedCount.requireShare("usable share", usableShare);
  }

  /** The same rule with a share of usable plants of its own, above 0 and at most 1. */
  public HarvestRule withUsableShare(double share) {
    return new HarvestRule(
        leafPick,
        liftFromG,
        overAgeDays,
        ageingFromDays,
        ageingPerWeek,
        fridgeCarryDays,
        edibleShare,
        plantsPerPot,
        share);
  }

  private static void require(boolean holds, String rule, double was) {
    if (!holds) {
      throw new IllegalArgumentException(rule + ", was " + was);
    }
  }

  /** Days after emergence before the first pick. Common practice. */
  public static final int FIRST_PICK_DAYS = 22;

  /** Fresh mass that must stand in a pot for its leaves to be picked, g. Judgement. */
  public static final double PICK_FROM_G = 12;

  /** Largest share of the leaf area one weekly pick may take. Common practice. */
  public static final double LARGEST_PICK = 0.4;

  /** Fewest leaves a picked plant must keep. From memory, 5 to 6 youngest leaves. */
  public static final int FEWEST_LEAVES = 5;

  /**
   * Largest share a pick may take of a plant with so many standing leaves: {@link #LARGEST_PICK} of
   * its leaf area, and never so much that fewer than {@link #FEWEST_LEAVES} leaves stay. Leaves are
   * counted off in proportion to area; outer leaves are the larger ones, so a few more than that
   * stay in truth.
   *
   * @param standingLeaves leaves on the plant, those picked before taken off
   */
  public static double largestPick(double standingLeaves) {
    return Math.max(0, Math.min(LARGEST_PICK, 1 - FEWEST_LEAVES / standingLeaves));
  }

  /** Factor on assimilation for age, after {@code age} days from emergence. */
  public double ageing(int ageDays) {
    return Math.pow(ageingPerWeek, Math.max(0, ageDays - ageingFromDays) / 7.0);
  }
}
