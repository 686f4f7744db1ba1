package sallet.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class DaySpansTest {
  @Test
  void aStretchPastMidnightLiesAtBothEndsOfTheDay() {
    DaySpans night = DaySpans.daily(22, 5);
    assertThat(night.hours()).isEqualTo(5);
    assertThat(night.contains(23)).isTrue();
    assertThat(night.contains(2.9)).isTrue();
    assertThat(night.contains(3)).isFalse();
    assertThat(night.contains(12)).isFalse();
  }

  @Test
  void hoursAreFilledInPart() {
    DaySpans on = DaySpans.daily(6.5, 2.25);
    assertThat(on.shareOfHour(5)).isZero();
    assertThat(on.shareOfHour(6)).isEqualTo(0.5);
    assertThat(on.shareOfHour(7)).isEqualTo(1);
    assertThat(on.shareOfHour(8)).isEqualTo(0.75);
    assertThat(on.shareOfHour(9)).isZero();
  }

  @Test
  void whatTwoStretchesShareCountsOnce() {
    DaySpans sun = DaySpans.daily(7, 9);
    assertThat(sun.or(DaySpans.daily(6, 4)).hours()).isEqualTo(10);
    assertThat(sun.or(DaySpans.daily(18, 2)).hours()).isEqualTo(11);
    assertThat(sun.or(DaySpans.daily(8, 2)).hours()).isEqualTo(9);
    assertThat(sun.or(DaySpans.daily(15, 20)).hours()).isEqualTo(24, within(1e-12));
    assertThat(sun.or(DaySpans.NONE)).isEqualTo(sun);
    assertThat(sun.or(DaySpans.ALL_DAY)).isEqualTo(DaySpans.ALL_DAY);
  }

  @Test
  void nothingAndTheWholeDay() {
    assertThat(DaySpans.daily(8, 0)).isEqualTo(DaySpans.NONE);
    assertThat(DaySpans.daily(8, 24)).isEqualTo(DaySpans.ALL_DAY);
  }
}
