package sallet.weather;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import sallet.household.Place;
import sallet.household.WeatherSource;
import sallet.household.WeatherYear;

/**
 * Sun and sky by a weather file, in quarters of an hour: a patch of sun crosses a pot within the
 * hour. The hour's light on the flat from sky and sun is kept; the sun gets its part in the
 * quarters in which it is up. An hour whose sky part is missing, or whose beam would be stronger
 * than outside the air, is split by {@link DiffuseFraction#erbsHourly}.
 */
public final class HourlySky implements OutdoorLight {
  private static final int QUARTERS = 4;

  /** Sine of the altitude below which the sun's beam is counted with the sky: 1.7 degrees. */
  private static final double LOWEST_SINE = 0.03;

  /** Light from which an hour tells whether sun and sky of a file fit together, W/m². */
  private static final double TELLING_WM2 = 50;

  private final WeatherYear year;
  private final Place place;
  private final ZoneOffset clock;

  /**
   * @param clock the standard time in which the household counts hours
   */
  public HourlySky(WeatherYear year, ZoneOffset clock) {
    this.year = year;
    this.clock = clock;
    this.place =
        new Place(
            year.latitudeDeg(),
            year.longitudeDeg(),
            year.elevationM(),
            ZoneOffset.UTC,
            new WeatherSource.Nearest());
  }

  @Override
  public List<SkyMoment> of(LocalDate day) {
    List<SkyMoment> moments = new ArrayList<>();
    double shift = clock.getTotalSeconds() / 3600.0 - year.clockHours();
    double middle = year.hours().get(0).middleHour();
    int first = (int) Math.ceil(24.0 * dayIndex(day) - shift - middle);
    for (int i = first; i < first + 24; i++) {
      WeatherYear.Hour hour = year.hours().get(Math.floorMod(i, year.hours().size()));
      double at = i + middle + shift - 24.0 * dayIndex(day);
      if (hour.globalWm2() > 0 || hour.diffuseWm2() > 0) {
        addQuarters(moments, day, at, hour);
      }
    }
    return moments;
  }

  /** Mean irradiation on the flat on a day of the year, MJ/m². */
  public Climate climate() {
    return day -> of(day).stream().mapToDouble(m -> m.globalWm2() * m.lastsHours()).sum() * 3600e-6;
  }

  /**
   * How well beam and sky of the file add up to its global light with the sun where Sallet puts it,
   * mean over bright hours, W/m². Beyond some 15 the file's clock is not what it says.
   */
  public double misfitWm2() {
    double sum = 0;
    int count = 0;
    for (int i = 0; i < year.hours().size(); i++) {
      WeatherYear.Hour hour = year.hours().get(i);
      double misfit = hour.globalWm2() - hour.diffuseWm2();
      if (hour.globalWm2() > TELLING_WM2 && !Double.isNaN(misfit + hour.beamWm2())) {
        LocalDate day = LocalDate.of(2024, hour.month(), hour.day());
        double sine = Math.max(0, sun(day, hour.middleHour(), year.clockHours()).sinAltitude());
        sum += Math.abs(misfit - hour.beamWm2() * sine);
        count++;
      }
    }
    return count == 0 ? 0 : sum / count;
  }

  /** Hours of the year for which the file has no light at all. */
  public long missingHours() {
    return year.hours().stream().filter(hour -> Double.isNaN(hour.globalWm2())).count();
  }

  private int dayIndex(LocalDate day) {
    boolean leapFile = year.hours().size() == 8784;
    int index = day.getDayOfYear() - 1;
    boolean pastFebruary = day.getMonthValue() > 2;
    if (day.isLeapYear() && !leapFile && (pastFebruary || day.getDayOfMonth() == 29)) {
      return day.getMonthValue() == 2 && day.getDayOfMonth() < 29 ? index : index - 1;
    }
    return !day.isLeapYear() && leapFile && pastFebruary ? index + 1 : index;
  }

  private SunPosition sun(LocalDate day, double hour, double clockHours) {
    long midnight = day.atStartOfDay().toEpochSecond(ZoneOffset.UTC);
    return Sun.at(Instant.ofEpochSecond(midnight + Math.round(3600 * (hour - clockHours))), place);
  }

  private void addQuarters(
      List<SkyMoment> moments, LocalDate day, double middle, WeatherYear.Hour hour) {
    List<SunPosition> suns = new ArrayList<>();
    double sines = 0;
    for (int q = 0; q < QUARTERS; q++) {
      SunPosition sun =
          sun(day, middle + (q + 0.5) / QUARTERS - 0.5, clock.getTotalSeconds() / 3600.0);
      suns.add(sun);
      sines += Math.max(0, sun.sinAltitude()) / QUARTERS;
    }
    double outside = Sun.normalWm2(day.getDayOfYear());
    double global = global(hour, sines);
    double diffuse = diffuse(hour, global, sines, outside);
    double beam = sines > LOWEST_SINE ? Math.min(outside, (global - diffuse) / sines) : 0;
    double sky = global - beam * sines;
    for (int q = 0; q < QUARTERS; q++) {
      SunPosition sun = suns.get(q);
      double at = Math.max(0, Math.min(23.99, middle + (q + 0.5) / QUARTERS - 0.5));
      double shining = sun.sinAltitude() > 0 ? beam : 0;
      double flat = sky + shining * Math.max(0, sun.sinAltitude());
      moments.add(new SkyMoment(at, 1.0 / QUARTERS, sun, flat, sky, shining, outside));
    }
  }

  /** The light on the flat; from its parts where the file has no sum, 0 where it has neither. */
  private static double global(WeatherYear.Hour hour, double sine) {
    if (!Double.isNaN(hour.globalWm2())) {
      return hour.globalWm2();
    }
    double sum = hour.diffuseWm2() + hour.beamWm2() * sine;
    return Double.isNaN(sum) ? 0 : sum;
  }

  private static double diffuse(WeatherYear.Hour hour, double global, double sine, double outside) {
    double diffuse = hour.diffuseWm2();
    boolean sound =
        !Double.isNaN(diffuse) && (sine <= LOWEST_SINE || (global - diffuse) / sine <= outside);
    if (sound) {
      return Math.min(global, diffuse);
    }
    return global
        * (sine <= Math.sin(Math.toRadians(3))
            ? 1
            : DiffuseFraction.erbsHourly(DiffuseFraction.clearness(global, outside, sine)));
  }
}
