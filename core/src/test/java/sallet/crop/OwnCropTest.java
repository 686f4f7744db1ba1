package sallet.crop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

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
        OptionalDouble.of(0.9),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  private static OwnCrop warmed(Crop like, Cardinals germinationC, Cardinals growthC) {
    OwnCrop as = OwnCrop.like(like, "window greens");
    return new OwnCrop(
        as.name(),
        as.like(),
        1,
        1,
        as.dryMatterShare(),
        as.liftG(),
        as.oldestDays(),
        as.usableShare(),
        as.edibleShare(),
        Optional.of(germinationC),
        Optional.of(growthC),
        Optional.of(new Bolting(700, 14)));
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

  static Stream<Crop> crops() {
    return BUILT_IN.all().stream();
  }

  /**
   * Thermal time by hand: as many days at its best as its relative, twice as many half way down to
   * the coldest or half way up to the warmest; all seed comes in the best range, half of it half
   * way.
   */
  @ParameterizedTest
  @MethodSource("crops")
  void ownTemperaturesReplaceThoseOfTheRelative(Crop like) {
    Cardinals seed = new Cardinals(6, 16, 26, 36);
    Germination theirs = like.germination();
    double bestDays = theirs.daysAt(theirs.optimumC()).orElseThrow();
    Crop crop =
        like.growth().isPresent()
            ? warmed(like, seed, new Cardinals(5, 12, 24, 33)).crop()
            : new OwnCrop(
                    "x",
                    like,
                    1,
                    1,
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    OptionalInt.empty(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    Optional.of(seed),
                    Optional.empty(),
                    Optional.of(new Bolting(700, 14)))
                .crop();
    assertThat(crop.germination().daysAt(26).orElseThrow()).isCloseTo(bestDays, within(1e-9));
    assertThat(crop.germination().daysAt(16).orElseThrow()).isCloseTo(2 * bestDays, within(1e-9));
    assertThat(crop.germination().daysAt(31).orElseThrow()).isCloseTo(2 * bestDays, within(1e-9));
    assertThat(crop.germination().daysAt(36)).isEmpty();
    assertThat(crop.seed().shareAt(20)).isEqualTo(1);
    assertThat(crop.seed().shareAt(11)).isCloseTo(0.5, within(1e-12));
    assertThat(crop.seed().shareAt(31)).isCloseTo(0.5, within(1e-12));
    assertThat(crop.bolting()).contains(new Bolting(700, 14));
    crop.growth()
        .ifPresent(
            p -> {
              assertThat(LifeDays.growthResponse(p, 5)).isZero();
              assertThat(LifeDays.growthResponse(p, 8.5)).isCloseTo(0.5, within(1e-12));
              assertThat(LifeDays.growthResponse(p, 18)).isEqualTo(1);
              assertThat(LifeDays.growthResponse(p, 28.5)).isCloseTo(0.5, within(1e-12));
            });
  }

  @Test
  void onlyACropOfTheSameNameKeepsTheOtherNames() {
    Crop coriander = BUILT_IN.find("coriander").orElseThrow();
    assertThat(OwnCrop.like(coriander, "window leaf").crop().alsoCalled()).isEmpty();
    assertThat(OwnCrop.like(coriander, "coriander").crop().alsoCalled()).contains("cilantro");
    Catalogue own = BUILT_IN.with(OwnCrop.like(coriander, "cilantro").crop());
    assertThat(own.find("cilantro").orElseThrow().name()).isEqualTo("cilantro");
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
                    OptionalDouble.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty()))
        .hasMessageContaining("above 0");
    assertThatThrownBy(
            () ->
                warmed(
                        BUILT_IN.find("lamb's lettuce").orElseThrow(),
                        new Cardinals(2, 10, 20, 28),
                        new Cardinals(2, 10, 20, 28))
                    .crop())
        .hasMessage("lamb's lettuce has no growth parameters whose temperatures could change");
    assertThatThrownBy(() -> new Cardinals(4, 22, 15, 28))
        .hasMessage(
            "temperatures must rise from coldest over best to warmest, were 4.0, 22.0, 15.0, 28.0 °C");
  }
}
