package sallet.learn;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import sallet.crop.Catalogue;
import sallet.crop.Crop;

/** Bands against hidden truths: eight in ten must hold it, no more and no fewer. */
class CalibrationTest {
  private static final Catalogue CATALOGUE = Catalogue.builtIn();
  private static final List<Crop> CROPS =
      HiddenTruth.crops().stream().map(name -> CATALOGUE.find(name).orElseThrow()).toList();
  private static final int HOUSEHOLDS = 200;

  private static Standing standing(HiddenTruth truth) {
    return Standing.of(truth.journal(), CATALOGUE, SteadyPlaces.places(), HiddenTruth.today());
  }

  @Test
  void eightInTenBandsHoldTheHiddenFactorAndTheMassThatStands() {
    int factors = 0;
    int masses = 0;
    int plants = 0;
    double narrowed = 0;
    CalibrationRanks ranks = new CalibrationRanks();
    SplittableRandom dice = new SplittableRandom(11);
    for (int seed = 0; seed < HOUSEHOLDS; seed++) {
      HiddenTruth truth = new HiddenTruth(seed, 0, CROPS);
      Standing standing = standing(truth);
      assertThat(standing.remarks()).as("seed %d", seed).isEmpty();
      for (Crop crop : CROPS) {
        LearnedFactor learned = standing.learned().growthOf(crop);
        factors += learned.band().holds(truth.factor(crop.name())) ? 1 : 0;
        ranks.add(rank(learned, truth.factor(crop.name()), dice));
        narrowed += learned.spread() / learned.priorSpread() / CROPS.size() / HOUSEHOLDS;
      }
      for (StandingBatch batch : standing.batches()) {
        for (StandingGroup group : batch.groups()) {
          if (group.stage() == Stage.BENCH) {
            plants++;
            masses += group.freshG().holds(truth.freshG(group.pots().get(0))) ? 1 : 0;
          }
        }
      }
    }
    assertThat(plants).isEqualTo(6 * HOUSEHOLDS);
    assertThat(factors / (3.0 * HOUSEHOLDS)).isBetween(0.75, 0.85);
    assertThat(masses / (double) plants).isBetween(0.75, 0.85);
    assertThat(narrowed).isLessThan(0.75);
    assertThat(ranks.chiSquare()).isLessThan(CalibrationRanks.LARGEST_CHI_SQUARE);
  }

  private static int rank(LearnedFactor learned, double truth, SplittableRandom dice) {
    int below = 0;
    for (int i = 0; i < CalibrationRanks.DRAWS; i++) {
      double draw = learned.median() * Math.exp(learned.spread() * dice.nextGaussian());
      below += draw < truth ? 1 : 0;
    }
    return below;
  }

  @Test
  void poorRegrowthIsNoticedAndRaisesTheMargin() {
    double usual = 0;
    double poor = 0;
    for (int seed = 0; seed < 40; seed++) {
      usual += standing(new HiddenTruth(seed, 0, CROPS)).learned().regrowth().median() / 40;
      Learned learned = standing(new HiddenTruth(seed, Math.log(0.7), CROPS)).learned();
      poor += learned.regrowth().median() / 40;
    }
    assertThat(usual).isBetween(0.97, 1.03);
    assertThat(poor).isLessThan(0.9);
  }
}
