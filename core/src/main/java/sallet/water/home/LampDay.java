package sallet.water.home;

import java.util.List;
import sallet.household.Lamp;
import sallet.water.flood.FloodTimes;

/** The day that several lamps make together. */
final class LampDay {
  private static final int DAY = 24 * 60;

  private LampDay() {}

  /**
   * From the first lamp on to the last off: the night is the longest time of the day without any.
   * Without a lamp from 06:00 to 18:00.
   */
  static FloodTimes.Light of(List<Lamp> lamps) {
    List<Lamp> lit = lamps.stream().filter(l -> l.hours() > 0 && l.dimming() > 0).toList();
    int dark = lit.isEmpty() ? DAY / 2 : -1;
    int dawn = DAY / 4;
    for (Lamp lamp : lit) {
      int gap = darkBefore(start(lamp), lit);
      if (gap > dark) {
        dark = gap;
        dawn = start(lamp);
      }
    }
    return new FloodTimes.Light(dawn, (DAY - dark) / 60.0);
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
