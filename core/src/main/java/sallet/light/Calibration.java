package sallet.light;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import sallet.household.Bench;
import sallet.household.Household;
import sallet.household.Lamp;
import sallet.household.LampColour;
import sallet.household.LightReading;
import sallet.weather.ClearSky;
import sallet.weather.SkyMoment;
import sallet.weather.Sun;
import sallet.weather.SunPosition;

/**
 * Windows and lamps put right by readings of a light meter.
 *
 * <p>Each reading over the reckoned light at its pot is one sample of the factor's logarithm. The
 * factor is the mean of samples and prior weighed by their precision (normal, conjugate); the prior
 * is 1 within 30 % for windows (dirt, curtain, glass) and 20 % for lamps. Spreads are judgement. A
 * reading outdoors takes the sky's own brightness out; without one a sunny sky is taken as clear
 * (Ineichen and Perez 2002), and a cloudy one tells nothing.
 */
public final class Calibration {
  private static final double WINDOW_PRIOR = Math.log(1.3);
  private static final double LAMP_PRIOR = Math.log(1.2);

  /** A quantum meter held by hand; a lux meter more, by its lamp. Judgement. */
  private static final double QUANTUM_SPREAD = 0.10;

  private static final double LUX_SPREAD = 0.15;

  /** A sky taken as clear that was not measured. Judgement. */
  private static final double CLEAR_SKY_SPREAD = 0.20;

  /** Lux for each µmol/m²/s of sun and sky: 54 and 52. Source: Thimijan and Heins 1983. */
  private static final double DAYLIGHT_LUX_PER_UMOL = 54;

  /** Reckoned light below which a reading says nothing, µmol/m²/s. Judgement. */
  private static final double LEAST_UMOL = 0.5;

  private final Household household;
  private final List<Sample> samples = new ArrayList<>();
  private final List<String> refusals = new ArrayList<>();

  /**
   * A reading and what Sallet reckons for it.
   *
   * @param reading the reading
   * @param measuredUmol the reading, as µmol/m²/s; as a share of the light outdoors when that was
   *     read too
   * @param reckonedUmol the same as Sallet has it
   * @param spread of the reading, as a logarithm
   */
  public record Sample(
      LightReading reading, double measuredUmol, double reckonedUmol, double spread) {
    /** The factor this reading alone would give. */
    public double factor() {
      return measuredUmol / reckonedUmol;
    }
  }

  private Calibration(Household household) {
    this.household = household;
    for (LightReading reading : household.readings()) {
      refusal(household, reading).ifPresentOrElse(refusals::add, () -> sample(reading));
    }
  }

  /** By the household's readings. */
  public static Calibration of(Household household) {
    return new Calibration(household);
  }

  /** The readings that count. */
  public List<Sample> samples() {
    return List.copyOf(samples);
  }

  /** Readings that do not count, and why, a sentence each. */
  public List<String> refusals() {
    return List.copyOf(refusals);
  }

  /** The factors of windows and lamps. */
  public LightFactors factors() {
    return new LightFactors(factor(false, WINDOW_PRIOR), factor(true, LAMP_PRIOR));
  }

  private LightFactors.Factor factor(boolean lamp, double prior) {
    double precision = 1 / (prior * prior);
    double sum = 0;
    int count = 0;
    for (Sample sample : samples) {
      if ((sample.reading.sky() == LightReading.Sky.LAMP) == lamp) {
        double weight = 1 / (sample.spread * sample.spread);
        precision += weight;
        sum += weight * Math.log(sample.factor());
        count++;
      }
    }
    return new LightFactors.Factor(
        Math.exp(sum / precision), Math.exp(Math.sqrt(1 / precision)), count);
  }

  /** Why a reading cannot be used, whatever it shows. */
  public static Optional<String> refusal(Household household, LightReading reading) {
    if (household.bench().pots().stream().noneMatch(p -> p.name().equals(reading.pot()))) {
      return Optional.of("there is no pot called " + reading.pot());
    }
    boolean lux = reading.meter() == LightReading.Meter.LUX;
    if (reading.sky() == LightReading.Sky.LAMP) {
      if (household.lamps().isEmpty()) {
        return Optional.of("a reading of the lamp needs a lamp in the file");
      }
      if (lux && household.lamps().stream().anyMatch(lamp -> !lamp.colour().shownByLux())) {
        return Optional.of(
            "a lux meter sees as the eye does and hardly notices red and blue light (about 8 lux"
                + " for each µmol/m²/s instead of 54 to 82); use a quantum meter");
      }
      if (lux && household.lamps().stream().map(Lamp::colour).distinct().count() > 1) {
        return Optional.of(
            "lux under lamps of several colours cannot be told apart; use a quantum meter");
      }
      return Optional.empty();
    }
    if (!household.room().hasDaylight()) {
      return Optional.of("a reading of daylight needs a window in the file");
    }
    if (reading.sky() == LightReading.Sky.OVERCAST && reading.outdoors().isEmpty()) {
      return Optional.of(
          "under cloud the light changes too much to reckon; read the light outdoors as well");
    }
    return Optional.empty();
  }

  private void sample(LightReading reading) {
    Spot spot = spot(household.bench(), reading.pot());
    boolean lux = reading.meter() == LightReading.Meter.LUX;
    double spread = lux ? LUX_SPREAD : QUANTUM_SPREAD;
    if (reading.sky() == LightReading.Sky.LAMP) {
      LampColour colour = household.lamps().get(0).colour();
      double reckoned =
          new RoomLamps(household.room(), household.bench(), household.lamps()).ppfdUmol(spot);
      double measured = lux ? reading.value() / colour.luxPerUmol() : reading.value();
      add(reading, measured, reckoned, lux ? Math.hypot(spread, colour.spread()) : spread);
      return;
    }
    SkyMoment sky = sky(reading);
    double reckoned =
        new RoomDaylight(household, List.of(spot)).atWm2(reading.at().toLocalDate(), sky)[0]
            * RoomLight.UMOL_PER_J;
    double measured = lux ? reading.value() / DAYLIGHT_LUX_PER_UMOL : reading.value();
    OptionalDouble outdoors = reading.outdoors();
    if (outdoors.isPresent()) {
      double open = lux ? outdoors.getAsDouble() / DAYLIGHT_LUX_PER_UMOL : outdoors.getAsDouble();
      double scale = open / (sky.globalWm2() * RoomLight.UMOL_PER_J);
      add(reading, measured, reckoned * scale, spread);
    } else {
      add(reading, measured, reckoned, Math.hypot(spread, CLEAR_SKY_SPREAD));
    }
  }

  private void add(LightReading reading, double measured, double reckoned, double spread) {
    if (reckoned < LEAST_UMOL || measured <= 0) {
      refusals.add(
          String.format(
              Locale.ROOT,
              "pot %s on %s: Sallet reckons %.1f µmol/m²/s there, too little to compare with",
              reading.pot(),
              reading.at().toLocalDate(),
              reckoned));
    } else {
      samples.add(new Sample(reading, measured, reckoned, spread));
    }
  }

  /** A clear sky, or an overcast one of any brightness; only its pattern counts. */
  private SkyMoment sky(LightReading reading) {
    LocalDate day = reading.at().toLocalDate();
    ZoneOffset clock = RoomLight.standardTime(household.place(), day);
    Instant when = reading.at().toInstant(clock);
    SunPosition sun = Sun.at(when, household.place());
    double hour = reading.at().toLocalTime().toNanoOfDay() / 3.6e12;
    double outside = Sun.normalWm2(day.getDayOfYear());
    if (sun.altitudeDeg() <= 0) {
      return new SkyMoment(hour, 1, sun, 1e-9, 1e-9, 0, outside);
    }
    ClearSky clear = ClearSky.of(sun, outside, household.place().elevationM());
    if (reading.sky() == LightReading.Sky.OVERCAST) {
      double grey = 0.3 * clear.globalWm2();
      return new SkyMoment(hour, 1, sun, grey, grey, 0, outside);
    }
    return new SkyMoment(
        hour, 1, sun, clear.globalWm2(), clear.diffuseWm2(), clear.beamWm2(), outside);
  }

  private static Spot spot(Bench bench, String pot) {
    return bench.pots().stream()
        .filter(p -> p.name().equals(pot))
        .map(p -> new Spot(bench.xM() + p.xM(), bench.yM() + p.yM(), bench.canopyHeightM()))
        .findFirst()
        .orElseThrow();
  }
}
