package sallet.feed.home;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sallet.feed.dose.PhDose;
import sallet.feed.recipe.RecipeFinder;
import sallet.feed.water.SourceWater;
import sallet.household.FeedShelf;

/**
 * Two waters blended in every share, in steps of 5 %, and the share taken.
 *
 * @param first the source water
 * @param second what it is blended with
 * @param trials from none of the second water to nothing else
 * @param share share of the second water in the recipe, 0 to 1
 * @param asked whether the household set that share
 */
public record WaterBlend(
    String first, String second, List<Trial> trials, double share, boolean asked) {
  private static final int STEPS = 20;

  /**
   * One share.
   *
   * @param share of the second water, 0 to 1
   * @param objective how well the recipe fits: Σ (weight × miss)²
   * @param alkalinityMeqL of the blend, meq/L
   * @param acidMl acid for the whole volume, mL
   * @param bags number of bags
   */
  public record Trial(
      double share, double objective, double alkalinityMeqL, double acidMl, int bags) {}

  public WaterBlend {
    trials = List.copyOf(trials);
  }

  /** Tries all shares with the household's salts. */
  static WaterBlend of(
      FeedShelf shelf,
      SourceWater first,
      SourceWater second,
      Optional<Double> share,
      double litres) {
    List<Trial> trials = new ArrayList<>();
    for (int step = 0; step <= STEPS; step++) {
      double part = (double) step / STEPS;
      SourceWater blend = first.blendedWith(second, part);
      Mixture mixture = Mixture.of(shelf, blend, litres);
      trials.add(
          new Trial(
              part,
              mixture.main().objective(),
              blend.alkalinityMeq(),
              mixture.acid().map(PhDose::millilitres).orElse(0.0),
              mixture.main().doses().size()));
    }
    return new WaterBlend(
        first.name(),
        second.name(),
        trials,
        share.orElseGet(() -> best(trials)),
        share.isPresent());
  }

  /** The least of the second water that fits as well as the best share. */
  private static double best(List<Trial> trials) {
    double least = trials.stream().mapToDouble(Trial::objective).min().orElse(0);
    return trials.stream()
        .filter(t -> RecipeFinder.isAsGood(t.objective(), least))
        .mapToDouble(Trial::share)
        .min()
        .orElse(0);
  }
}
