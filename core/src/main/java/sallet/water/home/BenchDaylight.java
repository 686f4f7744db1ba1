package sallet.water.home;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import sallet.household.Lamp;
import sallet.household.Place;
import sallet.light.RoomLight;
import sallet.water.flood.FloodTimes;
import sallet.weather.DaySpans;
import sallet.weather.Sun;

/** When it is day on the bench. */
final class BenchDaylight {
  private static final int DAY = 24 * 60;

  private BenchDaylight() {}

  /**
   * From the first lamp on to the last off: the night is the longest time of the day without any.
   * Empty without a lamp.
   */
  static Optional<FloodTimes.Light> byLamps(List<Lamp> lamps) {
    List<Lamp> lit = lamps.stream().filter(l -> l.hours() > 0 && l.dimming() > 0).toList();
    int dark = -1;
    int dawn = 0;
    for (Lamp lamp : lit) {
      int gap = darkBefore(start(lamp), lit);
      if (gap > dark) {
        dark = gap;
        dawn = start(lamp);
      }
    }
    return lit.isEmpty()
        ? Optional.empty()
        : Optional.of(new FloodTimes.Light(dawn, (DAY - dark) / 60.0));
  }

  /**
   * From sunrise to sunset, in standard time; noon and no hours where the sun does not rise.
   * Algorithm: {@link Sun#up}.
   */
  static FloodTimes.Light bySun(Place place, LocalDate day) {
    DaySpans up = Sun.up(place, day, RoomLight.standardTime(place, day));
    List<DaySpans.Span> spans = up.spans();
    double rise = spans.isEmpty() ? 12 : spans.get(spans.size() - 1).fromHour();
    return new FloodTimes.Light((int) Math.round(60 * rise) % DAY, up.hours());
  }

  /** Minutes without light just before a minute of the day. */
  private static int darkBefore(int minute, List<Lamp> lamps) {
    int least = DAY;
    for (Lamp lamp : lamps) {
      int lit = (int) Math.round(60 * lamp.hours());
      int since = Math.floorMod(minute - start(lamp), DAY);
      int gap = since == 0 ? DAY - lit : Math.max(0, since - lit);
      least = Math.min(least, gap);
    }
    return least;
  }

  private static int start(Lamp lamp) {
    return lamp.on().toSecondOfDay() / 60;
  }
}
