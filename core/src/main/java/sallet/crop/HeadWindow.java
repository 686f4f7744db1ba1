package sallet.crop;

import java.util.Optional;

/**
 * The days on which a whole plant is best lifted.
 *
 * @param firstDay days after emergence from which it is heavy enough
 * @param lastDay days after emergence after which it is over-mature, or has to go
 * @param overMature whether it outgrows its usual size by then; else its age or running to seed
 *     sets the end
 */
public record HeadWindow(int firstDay, int lastDay, boolean overMature) {

  /**
   * The window of a plant; empty when it is never heavy enough.
   *
   * @param life the plant, unpicked
   * @param rule says from which mass it may be lifted
   * @param usualG usual yield of a plant, whose upper end is full size (common practice)
   */
  public static Optional<HeadWindow> of(PlantLife life, HarvestRule rule, Optional<Span> usualG) {
    if (life.daysTo(rule.liftFromG()).isEmpty()) {
      return Optional.empty();
    }
    int first = life.daysTo(rule.liftFromG()).getAsInt();
    int full = usualG.map(g -> life.daysTo(g.high()).orElse(life.days())).orElse(life.days());
    int last = Math.max(first, full);
    return Optional.of(new HeadWindow(first, last, last < life.days()));
  }
}
