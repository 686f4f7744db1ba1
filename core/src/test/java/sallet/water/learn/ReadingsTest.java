package sallet.water.learn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.stat.regression.GLSMultipleLinearRegression;
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
    assertThat(new Interval(50, 49.5, 2, 1, false).teaches()).isFalse();
    assertThat(new Interval(50, 45, 4, 4, false).teaches()).isTrue();
    assertThat(new Interval(50, 45, 4, 4, false).logSd(0.85))
        .isGreaterThan(new Interval(50, 30, 16, 16, false).logSd(0.85));
  }

  /** A short interval waits for the next level; a rise, a long one or a large loss do not. */
  @Test
  void anIntervalTheRulerCouldHideGoesOn() {
    assertThat(interval(1.5, 1.9, 3, false).tooShort()).isTrue();
    assertThat(interval(0.5, 3, 4, false).tooShort()).isTrue();
    assertThat(interval(-0.5, 1, 1, false).tooShort()).isTrue();
    assertThat(interval(-5, 1, 1, false).tooShort()).isFalse();
    assertThat(interval(0.5, 8, 9, false).tooShort()).isFalse();
    assertThat(interval(5, 1.5, 3, false).tooShort()).isFalse();
    assertThat(interval(2.5, 2.5, 3, false).tooShort()).isFalse();
  }

  @Test
  void aFactorThatGrowsOldIsLessSure() {
    UseFactor taught = UseFactor.prior().after(List.of(1.0, 1.0), 0.15);
    assertThat(taught.loosened().logSd()).isGreaterThan(taught.logSd());
    assertThat(taught.quantile(0.5)).isCloseTo(taught.median(), within(1e-12));
    assertThat(taught.afterLosses(List.of())).isEqualTo(taught);
    assertThat(taught.later(10).logSd()).isBetween(taught.logSd() + 0.01, 0.34);
    assertThat(taught.later(1000).logSd()).isEqualTo(UseFactor.prior().logSd());
    assertThat(taught.later(10).median()).isEqualTo(taught.median());
    List<Interval> soon = List.of(interval(6, 5, 4, false), interval(8, 5, 4, false));
    List<Interval> later = List.of(interval(6, 5, 4, false), interval(8, 5, 40, false));
    UseFactor late = UseFactor.prior().afterLosses(later);
    assertThat(late.logSd()).isGreaterThan(UseFactor.prior().afterLosses(soon).logSd());
    assertThat(late.median()).isGreaterThan(UseFactor.prior().afterLosses(soon).median());
  }

  private static Interval interval(double lossL, double computedL, double days, boolean goesOn) {
    return new Interval(50, 50 - lossL, computedL, days, goesOn);
  }

  /**
   * Hipparchus' generalised least squares find the same mean when nothing is known before and no
   * time goes by: spread 0.12 of each interval, and a ruler good to 0.4 L, whose error at a reading
   * between two intervals counts with opposite signs; set against the loss that is likely, at first
   * with the factor before, then with the one that comes of it.
   */
  @Test
  void lossesAreWeighedAsByGeneralisedLeastSquares() {
    List<Interval> losses =
        List.of(interval(6, 7, 0, false), interval(3, 2.5, 0, true), interval(8, 8, 0, false));
    UseFactor factor = new UseFactor(0.8, 1000, 0).afterLosses(losses);
    double likely = Math.exp(leastSquares(losses, covariance(0.8)));
    double[][] covariance = covariance(likely);
    assertThat(Math.log(factor.median())).isCloseTo(leastSquares(losses, covariance), within(1e-6));
    RealMatrix precision = MatrixUtils.inverse(MatrixUtils.createRealMatrix(covariance));
    double sum = Arrays.stream(precision.operate(new double[] {1, 1, 1})).sum();
    assertThat(factor.logSd()).isCloseTo(1 / Math.sqrt(sum), within(1e-6));
    assertThat(factor.readings()).isEqualTo(3);
  }

  /** Of those three losses. */
  private static double[][] covariance(double factor) {
    double[] likelyL = {7 * factor, 2.5 * factor, 8 * factor};
    double[][] covariance = new double[3][3];
    for (int i = 0; i < 3; i++) {
      covariance[i][i] = 0.12 * 0.12 + 2 * 0.4 * 0.4 / (likelyL[i] * likelyL[i]);
    }
    covariance[0][1] = -0.4 * 0.4 / (likelyL[0] * likelyL[1]);
    covariance[1][0] = covariance[0][1];
    return covariance;
  }

  private static double leastSquares(List<Interval> losses, double[][] covariance) {
    GLSMultipleLinearRegression gls = new GLSMultipleLinearRegression();
    gls.setNoIntercept(true);
    gls.newSampleData(
        losses.stream().mapToDouble(loss -> Math.log(loss.ratio())).toArray(),
        new double[][] {{1}, {1}, {1}},
        covariance);
    return gls.estimateRegressionParameters()[0];
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
