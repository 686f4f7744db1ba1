package sallet.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import sallet.plan.linear.LinearProgramme;

/**
 * The best way to eat what the plants really give: the same rows as the plan's, with the harvest
 * fixed.
 *
 * @param kinds for each bowl the grams of each kind in it, most first
 * @param harvestGrams for each bowl what is picked and lifted
 * @param missingGrams grams missing against the aim, all bowls
 * @param wastedGrams grams picked and not eaten
 * @param excessGrams grams of one kind above its share
 * @param carriedGrams grams eaten a week after the pick
 */
record Served(
    List<List<BowlWeek.Kind>> kinds,
    List<Double> harvestGrams,
    double missingGrams,
    double wastedGrams,
    double excessGrams,
    double carriedGrams) {

  /** Grams of a kind below this are not worth telling. */
  private static final double TRACE_G = 0.05;

  static Served of(Instance instance, List<BlendedLife> lives) {
    double[][] harvest = Eating.inHand(instance);
    for (BlendedLife life : lives) {
      Course c = life.skeleton().course();
      for (int t = 0; t < life.gramsEach().size(); t++) {
        harvest[c.cropIndex][c.bowls[t]] += life.count() * life.gramsEach().get(t);
      }
    }
    try (LinearProgramme programme = instance.solver().programme()) {
      Eating eating = new Eating(instance, programme, harvest);
      if (!programme.solve(LinearProgramme.Change.COLUMNS)) {
        throw new IllegalStateException("the harvest could not be shared out");
      }
      return read(instance, eating, harvest);
    }
  }

  private static Served read(Instance instance, Eating eating, double[][] harvest) {
    List<List<BowlWeek.Kind>> kinds = new ArrayList<>();
    List<Double> picked = new ArrayList<>();
    for (int w = 0; w < instance.calendar().bowls(); w++) {
      List<BowlWeek.Kind> bowl = new ArrayList<>();
      double sum = 0;
      for (int k = 0; k < harvest.length; k++) {
        sum += harvest[k][w] - (w == 0 ? instance.inHandGrams().get(k) : 0);
        double grams = eating.eatenGrams(k, w);
        if (grams >= TRACE_G) {
          bowl.add(new BowlWeek.Kind(instance.crops().get(k).name(), grams));
        }
      }
      bowl.sort(Comparator.comparingDouble(BowlWeek.Kind::grams).reversed());
      kinds.add(bowl);
      picked.add(sum);
    }
    return new Served(
        kinds,
        picked,
        eating.missingGrams(),
        eating.wastedGrams(),
        eating.excessGrams(),
        eating.carriedGrams());
  }
}
