package sallet.weather;

import java.time.LocalDate;
import java.util.List;

/** Sun and sky through the days of a year: a mean climate, a chance one or a weather file. */
@FunctionalInterface
public interface OutdoorLight {
  /** The lit moments of a day; hours are counted in the household's standard time. */
  List<SkyMoment> of(LocalDate day);
}
