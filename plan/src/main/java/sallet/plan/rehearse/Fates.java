package sallet.plan.rehearse;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import sallet.crop.Crop;
import sallet.crop.Emergence;
import sallet.plan.Present;
import sallet.plan.rehearse.Plant.Fate;

/** Draws what becomes of crops, lots of seed and single plants in one season. */
final class Fates {
  /** A plant that dies does so on one of these days after emergence, all alike. Judgement. */
  private static final int FIRST_DEATH_DAY = 5;

  private static final int LAST_DEATH_DAY = 65;

  /** How well the size of a standing plant is known, of its logarithm. Judgement. */
  private static final double SIZE_SPREAD = 0.1;

  private final Hidden hidden;
  private final SplittableRandom dice;
  private final Map<String, Double> growth = new HashMap<>();
  private final Map<String, Double> luck = new HashMap<>();
  private final Map<String, Double> usableShare = new HashMap<>();

  /** Every crop's luck is drawn in the catalogue's order, whether it will be sown or not. */
  Fates(Scene scene, SplittableRandom dice) {
    this.hidden = scene.hidden();
    this.dice = dice;
    for (Crop crop : scene.catalogue().all()) {
      double z = dice.nextGaussian();
      double u = dice.nextDouble();
      Prospect prospect = scene.prospects().get(crop.name());
      if (prospect != null) {
        luck.put(crop.name(), Math.exp(prospect.growthSpread() * z));
        growth.put(crop.name(), prospect.growthMedian());
        usableShare.put(crop.name(), prospect.lot().quantile(u));
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

  /** Plants that stand already when the season begins, or are about to come up. */
  List<Fate> standing(Present.Plants group, Crop crop, LocalDate today) {
    List<Fate> fates = new ArrayList<>();
    boolean up = !group.emergence().isAfter(today);
    int places = up ? group.count() : Math.max(group.count(), group.cells());
    for (int i = 0; i < places; i++) {
      boolean comes = up || dice.nextDouble() * places < group.count();
      double own = Math.exp(ofLogarithm(hidden.plantCv()) * dice.nextGaussian());
      boolean dies = dice.nextDouble() < hidden.deathShare();
      LocalDate death = group.emergence().plusDays(dice.nextInt(FIRST_DEATH_DAY, LAST_DEATH_DAY));
      if (comes) {
        fates.add(
            new Fate(
                group.batch(),
                crop,
                group.sown(),
                group.emergence(),
                dies && death.isAfter(today) ? death : LocalDate.MAX,
                group.vigour() * luckOf(crop) * own,
                hidden.regrowth()));
      }
    }
    return fates;
  }

  /** Factor between how large a plant is thought to be and how large it is. */
  double size() {
    return Math.exp(SIZE_SPREAD * dice.nextGaussian());
  }

  /** Factor of a crop's growth in this season on its median. */
  double luckOf(Crop crop) {
    return luck.getOrDefault(crop.name(), 1.0);
  }

  private double share(Crop crop) {
    return usableShare.getOrDefault(crop.name(), 0.0);
  }

  private double growthOf(Crop crop) {
    return growth.getOrDefault(crop.name(), hidden.growthMedian()) * luckOf(crop);
  }
}
