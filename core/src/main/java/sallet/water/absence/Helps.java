package sallet.water.absence;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import sallet.household.AirClimate;
import sallet.household.Household;

/** Steps that bring water instead of saving it, in words. */
final class Helps {
  private static final double DRIER_POINTS = 10;
  private static final double DRIEST_PERCENT = 15;

  private Helps() {}

  /**
   * To fill it up.
   *
   * @param litres about how much, L
   * @param msCm conductivity of what is poured in, mS/cm
   * @param thin whether the reservoir is made thinner than by any other top-up
   * @param today whether it is done on the day of leaving
   */
  static Step fill(double litres, double msCm, boolean thin, boolean today) {
    String when = today ? "before you leave" : "on the evening before";
    String what =
        (msCm < 0.05 ? "plain water" : String.format(Locale.ROOT, "solution of %.1f mS/cm", msCm))
            + (thin ? ", thin because it grows stronger while you are away" : "");
    return new Step(
        Step.Kind.FILL,
        litres < 1
            ? "See that the reservoir is full to the brim %s; top up with %s.".formatted(when, what)
            : String.format(
                Locale.ROOT,
                "Fill the reservoir to the brim %s, with about %.0f L of %s.",
                when,
                litres,
                what),
        0,
        0,
        Double.NaN,
        0);
  }

  /**
   * Part of what is in the tank goes out and plain water comes in.
   *
   * @param msCm conductivity to leave with, mS/cm
   * @param litres what goes out, L
   */
  static Step dilute(double msCm, double litres) {
    return new Step(
        Step.Kind.DILUTE,
        String.format(
            Locale.ROOT,
            "Thin the solution to %.1f mS/cm by exchanging %.0f L of it for plain water: it grows stronger while you are away.",
            msCm,
            Math.ceil(litres)),
        0,
        0,
        Double.NaN,
        0);
  }

  static Step neighbour(Visits visits, LocalDate from) {
    String days =
        IntStream.range(0, visits.mornings().size())
            .mapToObj(
                i ->
                    String.format(
                        Locale.ROOT,
                        "%s (about %.0f L)",
                        DayWords.of(from.plusDays(visits.mornings().get(i))),
                        visits.litres().get(i)))
            .collect(Collectors.joining(", "));
    return new Step(
        Step.Kind.NEIGHBOUR,
        "Ask somebody to fill the reservoir with plain water on " + days + ".",
        6 * visits.mornings().size(),
        0,
        visits.lasts(),
        visits.pouredL());
  }

  /** A larger container is more trouble. Judgement. */
  static int tankTrouble(double litres) {
    return 5 + (int) Math.ceil(litres / 10);
  }

  static Step tank(double litres) {
    return new Step(
        Step.Kind.TANK,
        String.format(
            Locale.ROOT,
            "Connect a second container, level with the first, with %.0f L of the same solution above the height of the pump's intake; or take out plants.",
            litres),
        tankTrouble(litres),
        0,
        Outlook.SAFE,
        litres);
  }

  static Household drier(Household household) {
    AirClimate air = household.room().air();
    List<Double> drier =
        air.humidityPercent().stream()
            .map(rh -> Math.min(rh, Math.max(DRIEST_PERCENT, rh - DRIER_POINTS)))
            .toList();
    return household.withRoom(
        household.room().withAir(new AirClimate(air.dayC(), air.nightC(), drier, air.co2Ppm())));
  }
}
