package sallet.crop;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;

/** One plant's life from emergence on: fresh mass at the end of every day and what was picked. */
public final class PlantLife {
  private final double[] freshG;
  private final double[] leaves;
  private final List<Pick> picks;

  private PlantLife(double[] freshG, double[] leaves, List<Pick> picks) {
    this.freshG = freshG;
    this.leaves = leaves;
    this.picks = List.copyOf(picks);
  }

  /**
   * Outer leaves taken from the standing plant.
   *
   * @param day days after emergence, 1 being the end of the first day
   * @param share share of the leaf area taken
   * @param freshG fresh mass taken, g
   * @param leavesLeft leaves left standing
   */
  public record Pick(int day, double share, double freshG, double leavesLeft) {}

  /**
   * When outer leaves are picked.
   *
   * @param firstDay days after emergence of the first pick
   * @param everyDays days between picks
   * @param share share of the leaf area wanted, up to {@link HarvestRule#LARGEST_PICK}
   */
  public record Picking(int firstDay, int everyDays, double share) {
    /** Never. */
    public static final Picking NONE = new Picking(Integer.MAX_VALUE, 1, 0);

    public Picking {
      if (firstDay < 1 || everyDays < 1) {
        throw new IllegalArgumentException(
            "picks need a first day and days between them of 1 or more, were "
                + firstDay
                + " and "
                + everyDays);
      }
      if (!(share >= 0 && share <= HarvestRule.LARGEST_PICK)) {
        throw new IllegalArgumentException(
            "a pick takes 0 to %d %% of the leaf area of a plant that is to stand on, was %s %%"
                .formatted(Math.round(100 * HarvestRule.LARGEST_PICK), 100 * share));
      }
    }

    private boolean on(int day) {
      return day >= firstDay && (day - firstDay) % everyDays == 0;
    }
  }

  /** A plant that nobody picks. */
  public static PlantLife of(PlantParameters p, PlantDay[] days) {
    return of(p, days, Picking.NONE);
  }

  /**
   * A plant picked leaf by leaf. A pick is left out while the plant stands at less than {@link
   * HarvestRule#PICK_FROM_G}, and never takes more than {@link HarvestRule#largestPick}.
   */
  public static PlantLife of(PlantParameters p, PlantDay[] days, Picking picking) {
    double[] freshG = new double[days.length];
    double[] leaves = new double[days.length];
    List<Pick> picks = new ArrayList<>();
    PlantState plant = PlantState.atEmergence(p);
    for (int i = 0; i < days.length; i++) {
      plant = PlantModel.step(plant, p, days[i]);
      freshG[i] = plant.freshG(days[i].dryMatterShare());
      double share = Math.min(picking.share(), HarvestRule.largestPick(plant.leaves()));
      if (picking.on(i + 1) && freshG[i] >= HarvestRule.PICK_FROM_G && share > 0) {
        plant = plant.pickedLeaves(share);
        picks.add(new Pick(i + 1, share, share * freshG[i], plant.leaves()));
      }
      leaves[i] = plant.leaves();
    }
    return new PlantLife(freshG, leaves, picks);
  }

  /** Number of days lived. */
  public int days() {
    return freshG.length;
  }

  /** Fresh mass of the shoot at the end of a day after emergence (1 on), before its pick, g. */
  public double freshG(int day) {
    return freshG[day - 1];
  }

  /** Leaves standing at the end of a day after emergence (1 on), after its pick. */
  public double leaves(int day) {
    return leaves[day - 1];
  }

  /** Picks in order of time. */
  public List<Pick> picks() {
    return picks;
  }

  /** Sum of the picks, g. */
  public double pickedG() {
    return picks.stream().mapToDouble(Pick::freshG).sum();
  }

  /** Days after emergence until the plant stands at a fresh mass; empty when it never does. */
  public OptionalInt daysTo(double wantedG) {
    int found = 0;
    while (found < freshG.length && freshG[found] < wantedG) {
      found++;
    }
    return found < freshG.length ? OptionalInt.of(found + 1) : OptionalInt.empty();
  }

  /** The heaviest fresh mass it stands at on any day, g. */
  public double largestG() {
    return Arrays.stream(freshG).max().orElse(0);
  }

  /**
   * Day after emergence of the first pick that brings less than 60 % of the best pick before it: a
   * new plant is then the better use of the pot. Common practice; the share is judgement.
   */
  public OptionalInt renewDay() {
    double best = 0;
    for (Pick pick : picks) {
      best = Math.max(best, pick.freshG());
      if (pick.freshG() < RENEW_BELOW * best) {
        return OptionalInt.of(pick.day());
      }
    }
    return OptionalInt.empty();
  }

  private static final double RENEW_BELOW = 0.6;
}
