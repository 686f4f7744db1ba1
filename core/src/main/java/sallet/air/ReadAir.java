package sallet.air;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import sallet.household.Watering;

/**
 * A profile of the room's air put right by readings: by how much temperature and vapour pressure
 * are off at each reading, in straight lines between readings. So a logger's hours come out as
 * read, and a single look at the thermometer keeps the profile's swing of day and night. Before the
 * first and after the last reading the mean of a week's readings holds.
 */
public final class ReadAir {
  /** Hours whose readings speak for the time without any: a week. Judgement. */
  private static final double WEEK_HOURS = 7 * 24;

  /** Air of a room is never quite dry: least share of saturation. Judgement. */
  private static final double LEAST_SHARE = 0.01;

  private final LocalDate from;
  private final HourlyAir profile;

  private ReadAir(HourlyAir profile) {
    this.profile = profile;
    this.from = profile.from();
  }

  /** By how much something is off, hours counted from the first day. */
  private record Offset(double hour, double by) {}

  /** The profile put right; the same when there is no reading. */
  public static HourlyAir of(HourlyAir profile, List<Watering.AirReading> readings) {
    return readings.isEmpty() ? profile : new ReadAir(profile).corrected(readings);
  }

  private HourlyAir corrected(List<Watering.AirReading> readings) {
    List<Watering.AirReading> sorted =
        readings.stream().sorted(Comparator.comparingDouble(this::hour)).toList();
    List<Offset> warmer = new ArrayList<>();
    for (Watering.AirReading one : sorted) {
      double told = at(hour(one)).temperatureC();
      one.temperatureC().ifPresent(c -> warmer.add(new Offset(hour(one), c - told)));
    }
    List<Offset> damper = new ArrayList<>();
    for (Watering.AirReading one : sorted) {
      MoistAir told = at(hour(one));
      OptionalDouble percent = one.humidityPercent();
      double warmth = told.temperatureC() + between(warmer, hour(one));
      percent.ifPresent(
          rh ->
              damper.add(
                  new Offset(hour(one), MoistAir.of(warmth, rh).vapourKpa() - told.vapourKpa())));
    }
    return new HourlyAir(
        from,
        IntStream.range(0, profile.hours().size())
            .mapToObj(h -> put(profile.hours().get(h), between(warmer, h + 0.5), damper, h + 0.5))
            .toList());
  }

  private static MoistAir put(MoistAir told, double warmer, List<Offset> damper, double hour) {
    double warmth = told.temperatureC() + warmer;
    double most = MoistAir.of(warmth, 100).vapourKpa();
    double kpa = told.vapourKpa() + between(damper, hour);
    return new MoistAir(warmth, Math.max(LEAST_SHARE * most, kpa));
  }

  private double hour(Watering.AirReading one) {
    return 24.0 * ChronoUnit.DAYS.between(from, one.date()) + one.time().toSecondOfDay() / 3600.0;
  }

  /** Air of the profile; a day before or after it is like the first or the last. */
  private MoistAir at(double hour) {
    int day = (int) Math.floor(hour / 24);
    int held = Math.max(0, Math.min(profile.days() - 1, day));
    return profile.at(held, Math.floorMod((int) Math.floor(hour), 24));
  }

  private static double between(List<Offset> sorted, double hour) {
    if (sorted.isEmpty()) {
      return 0;
    }
    Offset first = sorted.get(0);
    Offset last = sorted.get(sorted.size() - 1);
    if (hour < first.hour()) {
      return mean(sorted, first.hour(), first.hour() + WEEK_HOURS);
    }
    if (hour > last.hour()) {
      return mean(sorted, last.hour() - WEEK_HOURS, last.hour());
    }
    int next = 0;
    while (sorted.get(next).hour() < hour) {
      next++;
    }
    Offset a = sorted.get(Math.max(0, next - 1));
    Offset b = sorted.get(next);
    double w = b.hour() == a.hour() ? 1 : (hour - a.hour()) / (b.hour() - a.hour());
    return a.by() + w * (b.by() - a.by());
  }

  private static double mean(List<Offset> sorted, double from, double to) {
    return sorted.stream()
        .filter(o -> o.hour() >= from && o.hour() <= to)
        .mapToDouble(Offset::by)
        .average()
        .orElse(0);
  }
}
