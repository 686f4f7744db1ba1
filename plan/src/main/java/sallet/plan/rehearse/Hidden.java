package sallet.plan.rehearse;

/**
 * What the planner does not know of a season. All are judgement unless a source is named in
 * docs/models/rehearsal.md.
 *
 * @param growthMedian median of a crop's factor on assimilation in this household and season
 * @param growthCv its coefficient of variation, one draw for each crop and season
 * @param plantCv the same between plants
 * @param seedStrength a lot's usable share is Beta distributed about the catalogue's with this
 *     strength a + b, one lot for each crop and season
 * @param sunSpread standard deviation of a day's factor on daylight, whose mean is 1
 * @param sunPersistence correlation of that factor with the day before
 * @param deathShare share of plants that die young or on the bench
 * @param regrowth factor on assimilation for each pick a plant has had; the planner believes 1
 * @param readingSd standard deviation of the logarithm of a weighing of standing plants
 */
public record Hidden(
    double growthMedian,
    double growthCv,
    double plantCv,
    double seedStrength,
    double sunSpread,
    double sunPersistence,
    double deathShare,
    double regrowth,
    double readingSd) {

  /** Seasons as they come. */
  public static final Hidden USUAL = new Hidden(0.85, 0.2, 0.15, 20, 0.4, 0.7, 0.05, 1, 0.1);

  /** Crops and plants that differ more, twice the deaths and a poor eye. */
  public static final Hidden HARD = new Hidden(0.85, 0.35, 0.25, 20, 0.4, 0.7, 0.1, 1, 0.25);

  public Hidden {
    require(growthMedian > 0, "the median factor on growth must be above 0", growthMedian);
    require(growthCv >= 0, "the variation of growth must be 0 or more", growthCv);
    require(plantCv >= 0, "the variation between plants must be 0 or more", plantCv);
    require(seedStrength > 0, "the strength of seed lots must be above 0", seedStrength);
    require(sunSpread >= 0, "the spread of daylight must be 0 or more", sunSpread);
    require(
        sunPersistence >= 0 && sunPersistence < 1,
        "the persistence of daylight must be 0 or more and below 1",
        sunPersistence);
    require(deathShare >= 0 && deathShare <= 1, "the share of deaths must be 0 to 1", deathShare);
    require(regrowth > 0 && regrowth <= 1, "regrowth must be above 0 and at most 1", regrowth);
    require(readingSd >= 0, "the spread of readings must be 0 or more", readingSd);
  }

  /** The same with another factor for each pick a plant has had. */
  public Hidden withRegrowth(double factor) {
    return new Hidden(
        growthMedian,
        growthCv,
        plantCv,
        seedStrength,
        sunSpread,
        sunPersistence,
        deathShare,
        factor,
        readingSd);
  }

  private static void require(boolean holds, String rule, double was) {
    if (!holds) {
      throw new IllegalArgumentException(rule + ", was " + was);
    }
  }
}
