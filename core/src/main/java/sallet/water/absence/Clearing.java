package sallet.water.absence;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import sallet.crop.HarvestRule;
import sallet.household.Pot;
import sallet.water.transpiration.StandingPlant;

/**
 * How many whole plants to lift before leaving, thirstiest first: tried out, from the fewest that
 * make the absence safe alone down to one, for with other steps fewer may do.
 */
final class Clearing {
  /** Trouble of giving up one plant. Judgement. */
  private static final int TROUBLE = 2;

  private final Scene start;
  private final LocalDate from;
  private final List<StandingPlant> thirsty;

  /**
   * @param useMl water of a pot over the absence, mL
   */
  Clearing(Scene start, LocalDate from, List<Double> useMl) {
    this.start = start;
    this.from = from;
    this.thirsty =
        start.plants().stream()
            .filter(p -> p.stands(from.minusDays(1)) && p.stands(from))
            .sorted(Comparator.comparingDouble((StandingPlant p) -> -useMl.get(p.pot())))
            .toList();
  }

  /**
   * The choices, none of which go together.
   *
   * @param safe whether a scene with the reservoir filled is safe
   */
  List<Lever> choices(Predicate<Scene> safe) {
    int fewest = fewest(safe);
    List<Lever> choices = new ArrayList<>();
    for (int n = fewest; n >= 1; n /= 2) {
      choices.add(0, lever(n));
    }
    return choices;
  }

  /** Fewest plants whose lifting alone is enough; 0 when not even all are. */
  private int fewest(Predicate<Scene> safe) {
    if (thirsty.isEmpty() || !safe.test(cleared(start, thirsty.size()))) {
      return 0;
    }
    int tooFew = 0;
    int enough = thirsty.size();
    while (enough - tooFew > 1) {
      int middle = (tooFew + enough) / 2;
      if (safe.test(cleared(start, middle))) {
        enough = middle;
      } else {
        tooFew = middle;
      }
    }
    return enough;
  }

  private Scene cleared(Scene scene, int plants) {
    List<Integer> pots = thirsty.subList(0, plants).stream().map(StandingPlant::pot).toList();
    return scene.withPlants(
        scene.plants().stream()
            .map(p -> pots.contains(p.pot()) && p.stands(from) ? p.standingUntil(from) : p)
            .toList());
  }

  private Lever lever(int plants) {
    List<Pot> pots = start.household().bench().pots();
    double grams =
        thirsty.subList(0, plants).stream()
            .mapToDouble(
                p ->
                    p.freshG(from.minusDays(1))
                        * p.crop().harvest().map(HarvestRule::edibleShare).orElse(0.0))
            .sum();
    String names =
        String.join(
            ", ",
            IntStream.range(0, plants)
                .mapToObj(i -> pots.get(thirsty.get(i).pot()).name())
                .toList());
    return new Lever(
        Step.Kind.CLEAR,
        String.format(
            Locale.ROOT,
            "Lift and eat or give away what stands in %s, the thirstiest: about %.0f g of leaf.",
            names,
            grams),
        1 + TROUBLE * plants,
        scene -> cleared(scene, plants));
  }
}
