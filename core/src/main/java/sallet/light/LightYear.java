package sallet.light;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import sallet.household.Bench;
import sallet.household.Household;
import sallet.household.Lamp;
import sallet.household.Nursery;
import sallet.household.Pot;
import sallet.household.WeatherSource;
import sallet.weather.ChanceLight;
import sallet.weather.PlaceClimate;

/**
 * A year of light in a room and what to do about it.
 *
 * @param household the household
 * @param target what the plants are to get, pot by pot
 * @param light hourly light of every pot
 * @param months twelve, from the first
 * @param weeks lamp hours and dimming, none without lamps
 * @param hanging the lamps as they hang, empty without any
 * @param better height at which the lamps, undimmed for the longest day, give the pots' mean what
 *     is missing in the month that misses most; empty without lamps or when no height does
 * @param raises when the lamps go up as leaves rise
 * @param shadow daylight that lamps and sheets keep off; empty without lamps or daylight
 * @param calibration the grower's readings
 * @param nursery map of the seed shelf, when its lamp is known
 * @param notes where the outdoor light comes from, a sentence each
 */
public record LightYear(
    Household household,
    LightTarget target,
    HourlyLight light,
    List<Month> months,
    List<LampWeek> weeks,
    Optional<LampHeight> hanging,
    Optional<LampHeight> better,
    List<LampRaise> raises,
    Optional<LampShadow> shadow,
    Calibration calibration,
    Optional<NurseryLight> nursery,
    List<String> notes) {
  /** Chance years that tell how far weeks stray from the mean. */
  private static final int CHANCE_YEARS = 8;

  public LightYear {
    months = List.copyOf(months);
    weeks = List.copyOf(weeks);
    raises = List.copyOf(raises);
    notes = List.copyOf(notes);
  }

  /**
   * A month's mean light of a day, mol/m².
   *
   * @param windowMol daylight of each pot
   * @param lampMol lamp light of each pot with the lamps as the household runs them
   * @param dayHours length of the day, sun and lamp together, h
   * @param dullWeekMol daylight at the bench's middle in a week that only one in ten is darker
   *     than; the mean when single weeks are not known
   * @param brightWeekMol the same for one in ten that is brighter
   */
  public record Month(
      YearMonth month,
      List<Double> windowMol,
      List<Double> lampMol,
      double dayHours,
      double dullWeekMol,
      double brightWeekMol) {
    public Month {
      windowMol = List.copyOf(windowMol);
      lampMol = List.copyOf(lampMol);
    }

    /** The day that stands for it. */
    public LocalDate middle() {
      return month.atDay(15);
    }

    /** Both together at a pot. */
    public double dliMol(int pot) {
      return windowMol.get(pot) + lampMol.get(pot);
    }

    /** Mean over the pots of daylight. */
    public double meanWindowMol() {
      return mean(windowMol);
    }

    /** Mean over the pots of lamp light. */
    public double meanLampMol() {
      return mean(lampMol);
    }

    private static double mean(List<Double> values) {
      return values.stream().mapToDouble(Double::doubleValue).average().orElse(0);
    }
  }

  /**
   * The twelve months from the month of a day.
   *
   * @param wish what the plants are to get; wanted crops without a place are given one each
   * @throws IllegalArgumentException when the place names an unknown city or a lamp hangs too low
   */
  public static LightYear of(Household household, LocalDate day, LightTarget wish) {
    LocalDate from = day.withDayOfMonth(1);
    LocalDate next = from.plusYears(1);
    int days = Math.toIntExact(next.toEpochDay() - from.toEpochDay());
    HourlyLight light = RoomLight.atPots(household, from, days);
    LightTarget target = wish.placed(meanMol(light), from, next.minusDays(1));
    List<Month> months = months(household, light);
    boolean lamps = household.lamps().stream().anyMatch(lamp -> lamp.ppfUmolPerS() > 0);
    return new LightYear(
        household,
        target,
        light,
        months,
        lamps ? LampWeek.of(household, light, target, household.tariff()) : List.of(),
        lamps ? Optional.of(LampHeight.at(household, lowest(household))) : Optional.empty(),
        lamps ? better(household, months, target) : Optional.empty(),
        lamps
            ? LampRaise.of(household, LampRaise.Canopy.LOOSE_LEAF, LightWarning.MOST_UMOL)
            : List.of(),
        LampShadow.of(household, from),
        Calibration.of(household),
        household
            .nursery()
            .lamp()
            .map((Nursery.ShelfLamp lamp) -> NurseryLight.of(lamp, household.nursery().cells())),
        PlaceClimate.of(household.place()).notes());
  }

  private static List<Double> meanMol(HourlyLight light) {
    return IntStream.range(0, light.places())
        .mapToObj(i -> mean(0, light.days(), day -> light.dliMol(i, day)))
        .toList();
  }

  /** Warnings for a pot in a month. */
  public List<LightWarning> warnings(int month, int pot) {
    Month m = months.get(month);
    List<LightNeed> crops = target.needs(pot, m.month.atDay(1), m.month.atEndOfMonth());
    return LightWarning.of(m.dliMol(pot), lampUmol(pot), m.dayHours(), crops);
  }

  /** Light of a day on the seed shelf, mol/m². */
  public double seedlingMol() {
    return Photons.mol(household.nursery().ppfdUmol(), household.nursery().hours());
  }

  /** Light of a day its seedlings are to get, mean over the wanted crops, mol/m². */
  public double wantedSeedlingMol() {
    return target.wanted().stream().mapToDouble(LightNeed::seedlingMol).average().orElseThrow();
  }

  /** Most lamp light of a pot in any hour, µmol/m²/s. */
  public double lampUmol(int pot) {
    return IntStream.range(0, 24).mapToDouble(h -> light.lampUmol(pot, 0, h)).max().orElse(0);
  }

  private static double lowest(Household household) {
    return household.lamps().stream().mapToDouble(Lamp::heightAboveBenchM).min().orElseThrow();
  }

  /** The height that fills the month that misses most within the longest day. */
  private static Optional<LampHeight> better(
      Household household, List<Month> months, LightTarget target) {
    double missing = months.stream().mapToDouble(month -> missing(month, target)).max().orElse(0);
    double factor = Calibration.of(household).factors().lamp().value();
    double wanted = missing / Photons.mol(1, target.mostHours()) / factor;
    Household full =
        household.withLamps(household.lamps().stream().map(l -> l.dimmedTo(1)).toList());
    return wanted <= 0 ? Optional.empty() : LampHeight.forMean(full, wanted);
  }

  /** Mean over the pots that hold a crop of what daylight leaves to be wished for, mol/m²/d. */
  private static double missing(Month month, LightTarget target) {
    return IntStream.range(0, month.windowMol.size())
        .boxed()
        .flatMapToDouble(
            pot ->
                target.need(pot, month.middle()).stream()
                    .mapToDouble(need -> need.targetMol() - month.windowMol.get(pot)))
        .average()
        .orElse(0);
  }

  private static List<Month> months(Household household, HourlyLight light) {
    List<double[]> weeks = chanceWeeks(household, light);
    List<Month> months = new ArrayList<>();
    int first = 0;
    for (int m = 0; m < 12; m++) {
      YearMonth month = YearMonth.from(light.from()).plusMonths(m);
      int end = first + month.lengthOfMonth();
      months.add(month(month, first, end, light, weeks));
      first = end;
    }
    return months;
  }

  /** The month of the days from start to before end, with the chance years' weeks within it. */
  private static Month month(
      YearMonth month, int start, int end, HourlyLight light, List<double[]> weeks) {
    List<Double> window = new ArrayList<>();
    List<Double> lamp = new ArrayList<>();
    for (int i = 0; i < light.places(); i++) {
      int pot = i;
      window.add(mean(start, end, d -> light.daylightDliMol(pot, d)));
      lamp.add(mean(start, end, d -> light.lampDliMol(pot, d)));
    }
    double[] sorted =
        weeks.stream()
            .flatMapToDouble(year -> Arrays.stream(year, start / 7, Math.min(52, end / 7)))
            .sorted()
            .toArray();
    int tenth = sorted.length / 10;
    double mean = Month.mean(window);
    return new Month(
        month,
        window,
        lamp,
        mean(start, end, light::photoperiodHours),
        mean * relative(sorted, tenth),
        mean * relative(sorted, sorted.length - 1 - tenth));
  }

  /** A value of a sorted list over the list's mean; 1 when there is none. */
  private static double relative(double[] sorted, int at) {
    double mean = Arrays.stream(sorted).average().orElse(0);
    return mean == 0 ? 1 : sorted[at] / mean;
  }

  private static double mean(int start, int end, IntToDoubleFunction ofDay) {
    return IntStream.range(start, end).mapToDouble(ofDay).average().orElse(0);
  }

  /** Weeks of daylight at the bench's middle in some chance years; none for a weather file. */
  private static List<double[]> chanceWeeks(Household household, HourlyLight light) {
    if (!household.room().hasDaylight()
        || household.place().weather() instanceof WeatherSource.Hourly) {
      return List.of();
    }
    Household middle = middleOnly(household);
    return IntStream.range(0, CHANCE_YEARS)
        .mapToObj(
            seed -> {
              ChanceLight sky =
                  ChanceLight.of(
                      household.place(),
                      RoomLight.standardTime(household.place(), light.from()),
                      light.from(),
                      364,
                      seed);
              HourlyLight chance = RoomLight.atPots(middle, sky, light.from(), 364);
              double[] weeks = new double[52];
              Arrays.setAll(weeks, w -> mean(7 * w, 7 * w + 7, d -> chance.daylightDliMol(0, d)));
              return weeks;
            })
        .toList();
  }

  /** The same room with one pot in the middle of the bench and no lamp. */
  private static Household middleOnly(Household household) {
    Bench b = household.bench();
    Pot middle = new Pot("middle", b.widthM() / 2, b.depthM() / 2);
    return household
        .withBench(b.withPots(List.of(middle)))
        .withLamps(List.of())
        .withReadings(List.of());
  }
}
