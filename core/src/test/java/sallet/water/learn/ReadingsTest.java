package sallet.water.learn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import sallet.water.caution.CleaningDose;
import sallet.water.flood.Timer;
import sallet.water.reservoir.SolutionWarmth;

/** Readings and the figures they give. */
class ReadingsTest {
  /** A level that falls by 0.1 L an hour, read every five minutes, with three floods of 20 L. */
  @Test
  void floodsAreLeftOutOfTheLoss() {
    List<LevelTrace.Point> trace = new ArrayList<>();
    for (int minute = 0; minute <= 24 * 60; minute += 5) {
      trace.add(new LevelTrace.Point(minute, 50 - minute / 600.0 - (flooded(minute) ? 20 : 0)));
    }
    assertThat(LevelTrace.lossL(trace, 20)).isCloseTo(2.4, within(1e-9));
    assertThat(LevelTrace.settled(trace, 20)).allMatch(p -> p.litres() > 45);
    assertThat(trace).anyMatch(p -> p.litres() < 30);
  }

  private static boolean flooded(int minute) {
    return List.of(360, 720, 1080).stream()
        .anyMatch(start -> start < minute && minute < start + 25);
  }

  /** Water that does not come back is a loss, not a flood. */
  @Test
  void aSpillStaysInTheLoss() {
    List<LevelTrace.Point> trace = new ArrayList<>();
    for (int minute = 0; minute <= 600; minute += 5) {
      trace.add(new LevelTrace.Point(minute, minute < 300 ? 50 : 35));
    }
    assertThat(LevelTrace.lossL(trace, 20)).isCloseTo(15, within(1e-9));
  }

  @Test
  void anIntervalWithinTheRulersErrorTeachesNothing() {
    assertThat(new Interval(50, 49.5, 2, 1).teaches()).isFalse();
    assertThat(new Interval(50, 45, 4, 4).teaches()).isTrue();
    assertThat(new Interval(50, 45, 4, 4).logSd())
        .isGreaterThan(new Interval(50, 30, 16, 16).logSd());
  }

  @Test
  void aFactorThatGrowsOldIsLessSure() {
    UseFactor taught = UseFactor.prior().after(List.of(1.0, 1.0), 0.15);
    assertThat(taught.later(10).logSd()).isGreaterThan(taught.logSd());
    assertThat(taught.loosened().logSd()).isGreaterThan(taught.logSd());
    assertThat(taught.later(10).median()).isEqualTo(taught.median());
    assertThat(taught.quantile(0.5)).isCloseTo(taught.median(), within(1e-12));
  }

  /** 200 mg/L in 10 L from bleach of 5 % w/v are 40 mL: mg/L × L / (10 × %). */
  @Test
  void bleachIsDosedByItsStrengthAndWithinLimits() {
    assertThat(CleaningDose.bleachMl(200, 10, 5)).isCloseTo(40, within(1e-9));
    assertThatThrownBy(() -> CleaningDose.bleachMl(500, 10, 5))
        .hasMessageContaining("100 to 200 mg/L");
    assertThatThrownBy(() -> CleaningDose.bleachMl(200, 10, 40)).hasMessageContaining("1 to 15 %");
  }

  /** By hand: 10 W all day on 0.6 m² at 8 W/m²/K warm by 2.1 K; 40 L follow within 9.7 h. */
  @Test
  void aPumpWarmsItsWater() {
    assertThat(SolutionWarmth.pumpWarmsK(10, 24, 0.6)).isCloseTo(2.1, within(0.05));
    assertThat(SolutionWarmth.followsHours(40, 0.6)).isCloseTo(9.7, within(0.05));
    assertThat(SolutionWarmth.of(18)).isEqualTo(SolutionWarmth.WELL);
    assertThat(SolutionWarmth.of(24)).isEqualTo(SolutionWarmth.HOT);
    assertThat(SolutionWarmth.of(27)).isEqualTo(SolutionWarmth.ACUTE);
  }

  @Test
  void aTimerRoundsUpToItsSegments() {
    assertThat(new Timer.Segments(15).onMinutes(13)).isEqualTo(15);
    assertThat(new Timer.Segments(15).onMinutes(15.5)).isEqualTo(30);
    assertThat(new Timer.Minutes(8).onMinutes(13.2)).isEqualTo(14);
  }
}
