package sallet.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import org.hipparchus.stat.correlation.PearsonsCorrelation;
import org.hipparchus.stat.descriptive.moment.StandardDeviation;
import org.junit.jupiter.api.Test;
import sallet.household.Place;
import sallet.household.WeatherSource;

/** Chance days against the statistics of six hourly weather files, with Hipparchus' estimators. */
class ChanceLightTest {
  private static final LocalDate FROM = LocalDate.of(2027, 1, 1);
  private static final int DAYS = 4000;

  private static ChanceLight days(double clearness, long seed) {
    Place place = new Place(45, 8, 0, ZoneId.of("UTC"), new WeatherSource.SkyClass(clearness));
    return ChanceLight.of(place, ZoneOffset.UTC, FROM, DAYS, seed);
  }

  private static double[] clearness(ChanceLight light) {
    double[] values = new double[DAYS];
    for (int i = 0; i < DAYS; i++) {
      values[i] = light.clearness(i);
    }
    return values;
  }

  @Test
  void meanSpreadAndMemoryAreTheFiles() {
    for (double mean : new double[] {0.35, 0.45, 0.55, 0.65}) {
      double[] k = clearness(days(mean, 1));
      double ours = 0;
      double[] before = new double[DAYS - 1];
      double[] after = new double[DAYS - 1];
      for (int i = 0; i < DAYS; i++) {
        ours += k[i] / DAYS;
        assertThat(k[i]).isBetween(0.0, 0.85);
      }
      System.arraycopy(k, 0, before, 0, DAYS - 1);
      System.arraycopy(k, 1, after, 0, DAYS - 1);
      assertThat(ours).isEqualTo(mean, within(0.015));
      assertThat(new StandardDeviation().evaluate(k)).isBetween(0.07, 0.20);
      assertThat(new PearsonsCorrelation().correlation(before, after)).isBetween(0.2, 0.3);
    }
  }

  @Test
  void theSameSeedGivesTheSameDays() {
    assertThat(clearness(days(0.5, 5))).containsExactly(clearness(days(0.5, 5)));
    assertThat(clearness(days(0.5, 5))).isNotEqualTo(clearness(days(0.5, 6)));
  }

  /** A day's moments hold the light that was drawn, up to what the dull sky's bound takes. */
  @Test
  void theDaysLightIsTheDrawnOne() {
    ChanceLight light = days(0.5, 9);
    for (int i = 0; i < 60; i++) {
      LocalDate day = FROM.plusDays(i);
      double sum =
          light.of(day).stream().mapToDouble(m -> m.globalWm2() * m.lastsHours()).sum() * 3600e-6;
      double drawn =
          light.clearness(i) * DailyRadiation.outsideAirMegaJoules(45, day.getDayOfYear());
      assertThat(sum / drawn).as("day %d", i).isEqualTo(1, within(0.01));
    }
  }
}
