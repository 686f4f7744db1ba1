package sallet.plan.rehearse;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.hipparchus.distribution.continuous.BetaDistribution;
import sallet.crop.Crop;
import sallet.crop.Emergence;
import sallet.plan.rehearse.Plant.Fate;

/** Draws what becomes of crops, lots of seed and single plants in one season. */
final class Fates {
  /** A plant that dies does so on one of these days after emergence, all alike. Judgement. */
  private static final int FIRST_DEATH_DAY = 5;

  private static final int LAST_DEATH_DAY = 65;

  private final Hidden hidden;
  private final SplittableRandom dice;
  private final Map<String, Double> growth = new HashMap<>();
  private final Map<String, Double> usableShare = new HashMap<>();

  /** Every crop's luck is drawn in the catalogue's order, whether it will be sown or not. */
  Fates(Scene scene, SplittableRandom dice) {
    this.hidden = scene.hidden();
    this.dice = dice;
    for (Crop crop : scene.catalogue().all()) {
      double z = dice.nextGaussian();
      double u = dice.nextDouble();
      if (crop.plannable()) {
        double share = crop.usableShare();
        growth.put(
            crop.name(), scene.growthMedian(crop) * Math.exp(scene.growthSpread(crop) * z));
        usableShare.put(
            crop.name(),
            new BetaDistribution(
                    hidden.seedStrength() * share, hidden.seedStrength() * (1 - share) + 1e-9)
                .inverseCumulativeProbability(u));
      }
    }
  }

  /** Standard deviation of the logarithm of a log-normal quantity with this variation. */
  static double ofLogarithm(double cv) {
    return Math.sqrt(Math.log1p(cv * cv));
  }

  /** The plants that come of some cells; all of a batch come up on one day. */
  List<Fate> sow(String batch, Crop crop, int cells, LocalDate day, double cellMeanC) {
    List<Fate> fates = new ArrayList<>();
    OptionalDouble median = crop.germination().daysAt(cellMeanC);
    double pace = Math.exp(Emergence.SPREAD * dice.nextGaussian());
    for (int i = 0; i < cells; i++) {
      boolean comes = dice.nextDouble() < share(crop);
      double own = Math.exp(ofLogarithm(hidden.plantCv()) * dice.nextGaussian());
      boolean dies = dice.nextDouble() < hidden.deathShare();
      int deathDay = dice.nextInt(FIRST_DEATH_DAY, LAST_DEATH_DAY + 1);
      if (comes && median.isPresent()) {
        LocalDate up = day.plusDays((long) Math.max(1, Math.ceil(median.getAsDouble() * pace)));
        fates.add(
            new Fate(
                batch,
                crop,
                day,
                up,
                dies ? up.plusDays(deathDay) : LocalDate.MAX,
                growthOf(crop) * own,
                hidden.regrowth()));
      }
    }
    return fates;
  }

  /** A plant that stands already when the season begins, of a vigour believed so far. */
  Fate standing(String batch, Crop crop, LocalDate sown, LocalDate up, LocalDate today) {
    double own = Math.exp(ofLogarithm(hidden.plantCv()) * dice.nextGaussian());
    boolean dies = dice.nextDouble() < hidden.deathShare();
    LocalDate death = up.plusDays(dice.nextInt(FIRST_DEATH_DAY, LAST_DEATH_DAY + 1));
    return new Fate(
        batch,
        crop,
        sown,
        up,
        dies && death.isAfter(today) ? death : LocalDate.MAX,
        growthOf(crop) * own,
        hidden.regrowth());
  }

  private double share(Crop crop) {
    return usableShare.getOrDefault(crop.name(), 0.0);
  }

  private double growthOf(Crop crop) {
    return growth.getOrDefault(crop.name(), hidden.growthMedian());
  }
}
