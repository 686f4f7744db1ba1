package sallet.light;

import java.time.LocalDate;
import sallet.weather.PerezSky;
import sallet.weather.SkyMoment;

/** An opening of the room and what it lets in at a moment of a day. All W/m² on the level. */
interface Aperture {
  /** Adds what comes straight from the sky to each point. */
  void addSky(LocalDate day, PerezSky sky, double[] pointsWm2);

  /** Adds the sun and the bright sky around it to the points they reach. */
  void addSun(LocalDate day, SkyMoment moment, PerezSky sky, double[] pointsWm2);

  /** Light on the bench by way of the room's surfaces. */
  double reflectedWm2(LocalDate day, SkyMoment moment, PerezSky sky);
}
