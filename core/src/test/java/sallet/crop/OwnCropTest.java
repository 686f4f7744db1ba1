package sallet.crop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** Crops of a grower's own. */
class OwnCropTest {
  private static final Catalogue BUILT_IN = Catalogue.builtIn();
  private static final Crop MIZUNA = BUILT_IN.find("mizuna").orElseThrow();

  private static OwnCrop own(String name) {
    return new OwnCrop(
        name,
        MIZUNA,
        1.2,
        0.5,
        OptionalDouble.of(0.05),
        OptionalDouble.empty(),
        OptionalInt.of(80),
        OptionalDouble.empty(),
        OptionalDouble.of(0.9));
  }

  /** crop_map.csv and plant_model_parameters.csv: mizuna has q 1.08, factor 0.8, 60 days, 0.95. */
  @Test
  void isLikeItsRelativeButForWhatIsSaid() {
    Crop crop = own("window greens").crop();
    assertThat(crop.growth().orElseThrow().assimilationFactor()).isCloseTo(1.296, within(1e-12));
    assertThat(crop.growth().orElseThrow().dryMatterShare()).isEqualTo(0.05);
    assertThat(crop.germination().timeFactor()).isCloseTo(0.4, within(1e-12));
    assertThat(crop.harvest().orElseThrow())
        .isEqualTo(new HarvestRule(true, 30, 80, 35, 0.93, 7, 0.9, 1, 0.7));
    assertThat(crop.sources().rules()).startsWith("as mizuna, changed by the grower");
  }

  @Test
  void addsACropOrOverridesOne() {
    assertThat(BUILT_IN.with(own("window greens").crop()).all()).hasSize(25);
    Catalogue changed = BUILT_IN.with(own("mizuna").crop());
    assertThat(changed.all()).hasSize(24);
    assertThat(changed.find("Mizuna").orElseThrow().harvest().orElseThrow().overAgeDays())
        .isEqualTo(80);
  }

  @Test
  void refusesFactorsOfNothing() {
    assertThatThrownBy(
            () ->
                new OwnCrop(
                    "x",
                    MIZUNA,
                    0,
                    1,
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    OptionalInt.empty(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty()))
        .hasMessageContaining("above 0");
  }
}
