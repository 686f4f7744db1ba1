package sallet.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import sallet.household.Wall;
import sallet.household.Window;

class GlazingTest {
  /** Ratios to light at right angles from the check file of glass, two panes. */
  @ParameterizedTest
  @CsvSource({"0, 1", "45, 0.97562", "60, 0.88862", "75, 0.54725", "85, 0.15518"})
  void theMakersTransmittanceScalesTheWholeCurve(double angleDeg, double ratio) {
    Window coated = new Window(Wall.SOUTH, 0, 1, 1, 1, 0, 2, 0.5, 0.8, 0.92, 1, 0);
    double through = Glazing.of(coated).at(Math.cos(Math.toRadians(angleDeg)));
    assertThat(through).isEqualTo(0.5 * ratio, within(1e-4));
  }

  @Test
  void noGlassLetsAllThrough() {
    assertThat(Glazing.none().at(0.01)).isEqualTo(1);
    assertThat(Glazing.none().diffuse()).isEqualTo(1, within(1e-9));
  }

  /** The two short formulas, made for one pane, bear the long one out below 60 degrees. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 15, 30, 45, 55})
  void shortFormulasAgreeBelowSixtyDegrees(double angleDeg) {
    double angle = Math.toRadians(angleDeg);
    Glazing pane = Glazing.clear(1);
    double ratio = pane.at(Math.cos(angle)) / pane.at(1);
    assertThat(GlazingFits.ashrae(angle)).isEqualTo(ratio, within(0.03));
    assertThat(GlazingFits.rivero(angle)).isEqualTo(ratio, within(0.08));
  }

  @Test
  void morePanesLetLessThrough() {
    for (int panes = 1; panes < 4; panes++) {
      for (double cosine = 0.05; cosine <= 1; cosine += 0.05) {
        assertThat(Glazing.clear(panes + 1).at(cosine)).isLessThan(Glazing.clear(panes).at(cosine));
      }
    }
  }
}
