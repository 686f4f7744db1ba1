package sallet.plan;

import sallet.crop.PlantDay;
import sallet.crop.PlantModel;
import sallet.crop.PlantParameters;
import sallet.crop.PlantState;

/**
 * Bounds on the states of a plant that reaches the same node of a life graph by different pick
 * sequences, and the daily step of the growth model in interval arithmetic: whatever sequence is
 * behind it, the true state stays inside. Mutable, for the inner loop of graph building.
 *
 * <p>The step is not monotone in the state (more shoot catches more light and costs more upkeep;
 * the root switch), so each term takes the end of the interval that keeps the bound valid.
 */
final class GrowthBounds {
  double shootLo;
  double shootHi;
  double rootLo;
  double rootHi;
  double reserveLo;
  double reserveHi;
  double leafLo;
  double leafHi;
  double leavesLo;
  double leavesHi;

  static GrowthBounds exactly(PlantState s) {
    GrowthBounds b = new GrowthBounds();
    b.shootLo = b.shootHi = s.shootG();
    b.rootLo = b.rootHi = s.rootG();
    b.reserveLo = b.reserveHi = s.reserveG();
    b.leafLo = b.leafHi = s.leafCm2();
    b.leavesLo = b.leavesHi = s.leaves();
    return b;
  }

  /** These bounds after a share of the leaf area was picked that is itself known by bounds. */
  void setPicked(GrowthBounds from, double shareLo, double shareHi) {
    double keepLo = 1 - shareHi;
    double keepHi = 1 - shareLo;
    shootLo = from.shootLo * keepLo;
    shootHi = from.shootHi * keepHi;
    rootLo = from.rootLo;
    rootHi = from.rootHi;
    reserveLo = from.reserveLo * keepLo;
    reserveHi = from.reserveHi * keepHi;
    leafLo = from.leafLo * keepLo;
    leafHi = from.leafHi * keepHi;
    leavesLo = from.leavesLo * keepLo;
    leavesHi = from.leavesHi * keepHi;
  }

  /** Widens these bounds to hold the other's as well. */
  void join(GrowthBounds other) {
    shootLo = Math.min(shootLo, other.shootLo);
    shootHi = Math.max(shootHi, other.shootHi);
    rootLo = Math.min(rootLo, other.rootLo);
    rootHi = Math.max(rootHi, other.rootHi);
    reserveLo = Math.min(reserveLo, other.reserveLo);
    reserveHi = Math.max(reserveHi, other.reserveHi);
    leafLo = Math.min(leafLo, other.leafLo);
    leafHi = Math.max(leafHi, other.leafHi);
    leavesLo = Math.min(leavesLo, other.leavesLo);
    leavesHi = Math.max(leavesHi, other.leavesHi);
  }

  GrowthBounds copy() {
    GrowthBounds b = new GrowthBounds();
    b.setPicked(this, 0, 0);
    return b;
  }

  double freshLo(PlantDay day) {
    return (shootLo + reserveLo) / day.dryMatterShare();
  }

  double freshHi(PlantDay day) {
    return (shootHi + reserveHi) / day.dryMatterShare();
  }

  /** One day on. */
  void step(PlantParameters p, PlantDay day) {
    double massLo = shootLo + rootLo;
    double massHi = shootHi + rootHi;
    double ms = p.shootUpkeepPerDay() * day.upkeepFactor();
    double mr = p.rootUpkeepPerDay() * day.upkeepFactor();
    double gainHi =
        day.assimilateGPerCm2() * PlantModel.crownCm2(leafHi, p.crownC(), day.siteCm2());
    double gainLo =
        leafLo == leafHi
            ? gainHi
            : day.assimilateGPerCm2() * PlantModel.crownCm2(leafLo, p.crownC(), day.siteCm2());
    double poolHi = reserveHi + gainHi - (ms * shootLo + mr * rootLo);
    double poolLo = reserveLo + gainLo - (ms * shootHi + mr * rootHi);
    double keepLo = poolLo < 0 ? 1 - Math.min(-poolLo / massLo, 0.05) : 1;
    double keepHi = poolHi < 0 ? 1 - Math.min(-poolHi / massHi, 0.05) : 1;
    double grownHi = Math.min(massHi * day.growthFactor(), p.growthYield() * Math.max(0, poolHi));
    double grownLo = Math.min(massLo * day.growthFactor(), p.growthYield() * Math.max(0, poolLo));
    double y = p.growthYield();
    double leftHi = Math.max(0, poolHi - massLo * day.growthFactor() / y);
    double leftLo = Math.max(0, poolLo - massHi * day.growthFactor() / y);
    reserveHi = Math.min(leftHi, p.reserveCap() * (massHi + grownHi));
    reserveLo = Math.min(leftLo, p.reserveCap() * (massLo + grownLo));
    double shootPart = 1 - p.rootShare();
    double partHi = rootHi > p.rootShare() * (massLo + grownLo) ? 1 : shootPart;
    double partLo = rootLo > p.rootShare() * (massHi + grownHi) ? 1 : shootPart;
    double leafPerShoot = day.slaCm2PerG() * p.leafShare();
    leafHi += leafPerShoot * partHi * grownHi;
    leafLo += leafPerShoot * partLo * grownLo;
    shootHi = shootHi * keepHi + partHi * grownHi;
    shootLo = shootLo * keepLo + partLo * grownLo;
    rootHi = rootHi * keepHi + (1 - partLo) * grownHi;
    rootLo = rootLo * keepLo + (1 - partHi) * grownLo;
    leavesLo += day.leavesAdded();
    leavesHi += day.leavesAdded();
  }
}
