package sallet.crop.forecast;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;
import sallet.crop.Crop;
import sallet.crop.Emergence;
import sallet.crop.HarvestRule;
import sallet.crop.LifeDays;
import sallet.crop.PlantLife;
import sallet.crop.PlantLife.Picking;
import sallet.crop.PlantParameters;

/**
 * Many plants of one sowing, each with its own day of emergence, factor on assimilation and
 * weather. A plant's luck depends on the seed of the dice and its number alone.
 */
public final class GrowthEnsemble {
  private final List<Member> members;

  private GrowthEnsemble(List<Member> members) {
    this.members = List.copyOf(members);
  }

  /**
   * One plant.
   *
   * @param emergenceDay days from sowing to emergence
   * @param life its life from emergence on
   */
  public record Member(int emergenceDay, PlantLife life) {
    /**
     * Fresh mass some days after sowing, g: nothing before it is up, the last one after its end.
     */
    double freshG(int daysFromSowing) {
      int day = Math.min(daysFromSowing - emergenceDay, life.days());
      return day < 1 ? 0 : life.freshG(day);
    }

    /** Days from sowing to a fresh mass; infinite when it never stands at it. */
    double daysTo(double wantedG) {
      return life.daysTo(wantedG).isPresent()
          ? emergenceDay + life.daysTo(wantedG).getAsInt()
          : Double.POSITIVE_INFINITY;
    }
  }

  /**
   * What is grown.
   *
   * @param crop a crop with growth parameters and harvest rule
   * @param sown day of sowing
   * @param emergence what comes of the sowing; its median must be known
   * @param days days from sowing to the end
   * @param firstPick days from sowing to the first pick
   * @param pickShare share of the leaf area each weekly pick takes, 0 for none
   */
  public record Sowing(
      Crop crop, LocalDate sown, Emergence emergence, int days, int firstPick, double pickShare) {}

  /** Grows the plants. */
  public static GrowthEnsemble of(Sowing sowing, GrowingRoom room, Spread spread) {
    SplittableRandom dice = new SplittableRandom(spread.seed());
    List<Member> members = new ArrayList<>();
    for (int i = 0; i < spread.members(); i++) {
      members.add(member(sowing, room, spread, i, dice.split()));
    }
    return new GrowthEnsemble(members);
  }

  private static Member member(
      Sowing sowing, GrowingRoom room, Spread spread, int number, SplittableRandom dice) {
    double median = sowing.emergence().medianDays().orElseThrow();
    int up = (int) Math.ceil(median * Math.exp(Emergence.SPREAD * dice.nextGaussian()) - 1e-9);
    double vigour =
        spread.vigour()
            * Math.exp(
                Spread.ofLogarithm(spread.vigourCv()) * dice.nextGaussian()
                    + Spread.ofLogarithm(spread.plantCv()) * dice.nextGaussian());
    PlantParameters p = sowing.crop().growth().orElseThrow();
    HarvestRule rule = sowing.crop().harvest().orElseThrow();
    LocalDate emergence = sowing.sown().plusDays(up);
    return new Member(
        up,
        PlantLife.of(
            p,
            LifeDays.of(
                p,
                rule,
                vigour,
                emergence,
                room.stays(
                    sowing.crop(), emergence, room.skies().get(number % room.skies().size())),
                sowing.sown().plusDays(Math.max(up, sowing.days()))),
            picking(sowing, up)));
  }

  private static final int DAYS_OF_WEEK = 7;

  /** All plants are picked on the same weekdays. */
  private static Picking picking(Sowing sowing, int emergenceDay) {
    if (sowing.pickShare() == 0) {
      return Picking.NONE;
    }
    int first = sowing.firstPick() - emergenceDay;
    while (first < 1) {
      first += DAYS_OF_WEEK;
    }
    return new Picking(first, DAYS_OF_WEEK, sowing.pickShare());
  }

  /** The plants. */
  public List<Member> members() {
    return members;
  }

  /** Fresh mass some days after sowing, before that day's pick, g. */
  public Band freshG(int daysFromSowing) {
    return band(member -> member.freshG(daysFromSowing));
  }

  /** Days from sowing to a fresh mass; ends that no plant reaches are infinite. */
  public Band daysTo(double wantedG) {
    return band(member -> member.daysTo(wantedG));
  }

  /** Fresh mass picked some days after sowing, g; a plant too small to be picked counts as 0. */
  public Band pickedG(int daysFromSowing) {
    return band(
        member ->
            member.life().picks().stream()
                .filter(pick -> member.emergenceDay() + pick.day() == daysFromSowing)
                .mapToDouble(PlantLife.Pick::freshG)
                .sum());
  }

  private Band band(ToDoubleFunction<Member> value) {
    return Band.of(members.stream().mapToDouble(value).toArray());
  }
}
