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

  /** A recipe off by no more on the mean is as good as water and bags are known (judgement). */
  private static final double FINE = 0.05;

  /**
   * One share.
   *
   * @param share of the second water, 0 to 1
   * @param objective how well the recipe fits: Σ (weight × miss)²
   * @param miss how far off it is on the weighted mean, as a share
   * @param alkalinityMeqL of the blend, meq/L
   * @param acidMl acid for the whole volume, mL
   * @param bags number of bags
   */
  public record Trial(
      double share,
      double objective,
      double miss,
      double alkalinityMeqL,
      double acidMl,
      int bags) {}

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
              mixture.main().meanMiss(),
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

  /**
   * The least of the second water with which the recipe is off by no more than {@link #FINE} on the
   * mean, or fits as well as the best share.
   */
  private static double best(List<Trial> trials) {
    double least = trials.stream().mapToDouble(Trial::objective).min().orElse(0);
    return trials.stream()
        .filter(t -> t.miss <= FINE || RecipeFinder.isAsGood(t.objective, least))
        .mapToDouble(Trial::share)
        .min()
        .orElse(0);
  }

  /** The least share that needs no acid against alkalinity; empty when every share needs it. */
  public Optional<Double> shareWithoutAcid() {
    return trials.stream().filter(t -> t.acidMl == 0).map(Trial::share).findFirst();
  }
}
