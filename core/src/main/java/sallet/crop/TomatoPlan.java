package sallet.crop;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import sallet.household.AirClimate;

/**
 * The course of one tomato plant: stages by thermal time, trusses, hand work and a band of yield.
 * The stages are common practice; the yield of the reduced model is an upper mark.
 *
 * @param sown day of sowing
 * @param stages in order of time; a stage that is not reached within the days known is missing
 * @param trusses trusses that have flowered 200 days after sowing, or by the last day known
 * @param usualG usual yield of a plant, g (common practice)
 * @param modelG ripe fruit of a plant by then by the reduced model, g fresh: optimistic indoors
 * @param work hand work in order of time
 */
public record TomatoPlan(
    LocalDate sown,
    List<Stage> stages,
    double trusses,
    Optional<Span> usualG,
    double modelG,
    List<Work> work) {
  public TomatoPlan {
    stages = List.copyOf(stages);
    work = List.copyOf(work);
  }

  /** Degree days above 7.5 °C from emergence to the first flower: 45 to 55 days at 21 °C. */
  private static final double FLOWER_CD = (50 - 8) * (21 - 7.5);

  private static final double FLOWER_BASE_C = 7.5;

  /**
   * Degree days above 0 °C from flower to ripe fruit of small-fruited types. Source: Agronomy 2024,
   * 14:3074, abstract: 900 to 1400 °C d were tried for quality.
   */
  private static final double RIPE_FIRST_CD = 900;

  private static final double RIPE_FULL_CD = 1400;

  /** Days from sowing that are told. Judgement: one season. */
  private static final int SEASON_DAYS = 200;

  /** Dry share of ripe fruit. From memory. */
  private static final double FRUIT_DRY_SHARE = 0.055;

  /**
   * A stage.
   *
   * @param name what is reached
   * @param date when
   */
  public record Stage(String name, LocalDate date) {}

  /**
   * Hand work.
   *
   * @param from first day
   * @param text what to do and how often
   */
  public record Work(LocalDate from, String text) {}

  /**
   * The course of a plant from sowing to the last day known.
   *
   * @param crop a fruiting crop
   * @param nurseryC mean temperature of the seed shelf, °C
   * @param bench the place it fruits at
   * @param air air of the room
   */
  public static TomatoPlan of(
      Crop crop, LocalDate sown, double nurseryC, PlaceDays bench, AirClimate air) {
    if (crop.style() != HarvestStyle.FRUIT) {
      throw new IllegalArgumentException(crop.name() + " is no fruiting crop");
    }
    List<Stage> stages = new ArrayList<>();
    stages.add(new Stage("sown", sown));
    OptionalDouble days = crop.germination().daysAt(nurseryC);
    if (days.isEmpty()) {
      return new TomatoPlan(sown, stages, 0, crop.guide().yieldG(), 0, List.of());
    }
    LocalDate emerged = sown.plusDays((long) Math.ceil(days.getAsDouble()));
    stages.add(new Stage("comes up", emerged));
    LocalDate planted =
        emerged.plusDays(crop.guide().nurseryDays().map(d -> (long) d.high()).orElse(35L));
    stages.add(new Stage("moves to its pot", planted));
    Optional<LocalDate> flower = after(bench, emerged, FLOWER_CD, c -> c - FLOWER_BASE_C);
    flower.ifPresent(date -> stages.add(new Stage("first truss in flower", date)));
    flower
        .flatMap(date -> after(bench, date, RIPE_FIRST_CD, c -> c))
        .ifPresent(date -> stages.add(new Stage("first fruit ripe, at the earliest", date)));
    flower
        .flatMap(date -> after(bench, date, RIPE_FULL_CD, c -> c))
        .ifPresent(date -> stages.add(new Stage("first truss fully ripe", date)));
    stages.sort(Comparator.comparing(Stage::date));
    return new TomatoPlan(
        sown,
        stages,
        flower.map(date -> trusses(bench, date, sown.plusDays(SEASON_DAYS))).orElse(0.0),
        crop.guide().yieldG(),
        modelG(bench, planted, sown.plusDays(SEASON_DAYS), air),
        work(planted, flower));
  }

  /** Trusses that flower in a day: -0.29 + 0.1454 ln T, 17 to 27 °C (de Koning 1994). */
  static double trussesPerDay(double meanC) {
    return -0.29 + 0.1454 * Math.log(Math.min(27, Math.max(17, meanC)));
  }

  private static Optional<LocalDate> after(
      PlaceDays place, LocalDate from, double sumCd, DoubleUnaryOperator degrees) {
    double sum = 0;
    for (LocalDate date = from; place.holds(date); date = date.plusDays(1)) {
      sum += Math.max(0, degrees.applyAsDouble(place.meanC(place.index(date))));
      if (sum >= sumCd) {
        return Optional.of(date.plusDays(1));
      }
    }
    return Optional.empty();
  }

  private static double trusses(PlaceDays place, LocalDate flower, LocalDate end) {
    double sum = 1;
    for (LocalDate date = flower;
        date.isBefore(end) && place.holds(date);
        date = date.plusDays(1)) {
      sum += trussesPerDay(place.meanC(place.index(date)));
    }
    return sum;
  }

  private static double modelG(PlaceDays place, LocalDate planted, LocalDate end, AirClimate air) {
    ReducedTomato.Stand stand = ReducedTomato.Stand.TRANSPLANT;
    for (LocalDate date = planted;
        date.isBefore(end) && place.holds(date);
        date = date.plusDays(1)) {
      int at = place.index(date);
      int month = date.getMonthValue() - 1;
      int litHours = (int) Math.round(place.photoperiodHours(at));
      double ppfdUmol = litHours == 0 ? 0 : place.dliMol(at) / (litHours * 3600e-6);
      stand =
          ReducedTomato.step(
              stand,
              new ReducedTomato.Day(
                  ppfdUmol,
                  litHours,
                  air.dayC().get(month),
                  air.nightC().get(month),
                  air.co2Ppm()));
    }
    return stand.ripeGM2() / ReducedTomato.PLANTS_PER_M2 / FRUIT_DRY_SHARE;
  }

  /** Common practice. */
  private static List<Work> work(LocalDate planted, Optional<LocalDate> flower) {
    List<Work> work = new ArrayList<>();
    work.add(
        new Work(
            planted,
            "Give it a stake or a string that holds the plant with its fruit, and tie it in every"
                + " week."));
    flower.ifPresent(
        date -> {
          work.add(
              new Work(
                  date,
                  "Pollinate: indoors there is no wind and no bee. Tap or brush every open truss"
                      + " around midday, three times a week."));
          work.add(
              new Work(
                  date,
                  "Break out side shoots of tall types weekly; leave those of compact types."));
        });
    return work;
  }
}
