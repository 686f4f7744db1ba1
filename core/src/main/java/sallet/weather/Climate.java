package sallet.weather;

import java.time.LocalDate;

/** Mean outdoor light of every day of the year at one place. */
public interface Climate {
  /** Mean global irradiation on the flat on this day of the year, MJ per m² and day. */
  double globalMegaJoules(LocalDate day);
}
