package sallet.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What people type, and what they are told when it is no quantity. */
class QuantityTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "150 \u00b5mol/m²/s", // micro sign
        "150 \u03bcmol/m²/s", // Greek mu
        "150 umol/m2/s",
        "150µmol/m2/s",
        "150 µmol m⁻² s⁻¹",
        "150 µmol·m⁻²·s⁻¹",
        "150 µmol/(m²·s)",
        "150 umol m-2 s-1",
        "  150.0  µmol/m^2/s "
      })
  void oneLightLevelHasManySpellings(String text) {
    assertThat(Quantity.parse(text, Dimension.LIGHT).inBase()).isEqualTo(150);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"20 °C", "20 C", "20°C", "20 ºC", "20 ℃", "20 degC", "68 °F", "68F", "68 ℉"})
  void oneTemperatureHasManySpellings(String text) {
    assertThat(Quantity.parse(text, Dimension.TEMPERATURE).inBase()).isEqualTo(20, offset(1e-12));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"12 in", "12 inches", "12\"", "12 ″", "1 ft", "1 foot", "1'", "0 ft 12 in"})
  void oneLengthHasManySpellings(String text) {
    assertThat(Quantity.parse(text, Dimension.LENGTH).inBase()).isEqualTo(0.3048, offset(1e-12));
  }

  @ParameterizedTest
  @ValueSource(strings = {"225 cm²", "225 cm2", "225 cm^2", "225 sq cm", "0.0225 m²"})
  void oneAreaHasManySpellings(String text) {
    assertThat(Quantity.parse(text, Dimension.AREA).inBase()).isEqualTo(225, offset(1e-9));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1.2 | LENGTH | has no unit; add m, cm, mm, in, ft or yd",
        "55 | SHARE | has no unit; add %",
        "-3 | TEMPERATURE | has no unit; add °C, °F or K",
        "12 | ANGLE | has no unit; add °",
        "1,2 m | LENGTH | has a comma in its number; write 1.2 m with a decimal point",
        "1,200 ppm | MIXING_RATIO | has a comma in its number; write 1.200 ppm with a decimal point, or 1200 ppm without the comma",
        "2 kg | LENGTH | is not a length: the unit is \"kg\"; use m, cm, mm, in, ft or yd",
        "450 % | MIXING_RATIO | is not a gas content: the unit is \"%\"; use ppm",
        "two feet | LENGTH | is not a length; write it like 10 m",
        "NaN m | LENGTH | is not a length; write it like 10 m",
        "1.2.3 m | LENGTH | is not a length; write it like 10 m",
        "- 3 m | LENGTH | is not a length; write it like 10 m",
        "14.2 mJ/m² | IRRADIATION | is not an irradiation of one day: the unit is \"mJ/m²\"; use MJ/m², kWh/m², Wh/m² or Btu/ft²"
      })
  void whatIsNoQuantityIsRefusedWithAHint(String text, Dimension dimension, String message) {
    assertThatThrownBy(() -> Quantity.parse(text, dimension))
        .isInstanceOf(NotAQuantity.class)
        .hasMessage(message);
  }

  @Test
  void aTextWithoutEndIsRefusedAtOnce() {
    assertThatThrownBy(() -> Quantity.parse("1".repeat(1_000_000) + " m", Dimension.LENGTH))
        .isInstanceOf(NotAQuantity.class)
        .hasMessageContaining("too long");
  }

  @ParameterizedTest
  @EnumSource(Dimension.class)
  void noSpellingMeansTwoUnitsOfOneDimension(Dimension dimension) {
    List<String> all = new ArrayList<>();
    for (Unit unit : dimension.units()) {
      all.add(Spelling.plain(unit.symbol()));
      unit.spellings()
          .forEach(spelling -> assertThat(Spelling.plain(spelling)).isEqualTo(spelling));
      all.addAll(unit.spellings());
    }
    assertThat(all).doesNotHaveDuplicates();
  }

  static Stream<Unit> units() {
    return Arrays.stream(Dimension.values()).flatMap(dimension -> dimension.units().stream());
  }

  @ParameterizedTest
  @MethodSource("units")
  void aValueSurvivesTheWayThereAndBack(Unit unit) {
    Random random = new Random(20261125);
    for (int i = 0; i < 100; i++) {
      double value = random.nextDouble(-1000, 1000);
      assertThat(unit.fromBase(unit.toBase(value))).isEqualTo(value, offset(1e-9));
    }
  }

  @ParameterizedTest
  @CsvSource({
    "1.2, 1.2",
    "0.30000000000000004, 0.3",
    "1219.2, 1219",
    "123456.7, 123457",
    "0.012345, 0.01235",
    "-0.0, 0",
    "1000, 1000",
    "20, 20"
  })
  void numbersAreWrittenShort(double number, String text) {
    assertThat(Quantity.plain(number)).isEqualTo(text);
  }

  @Test
  void aSpanIsWrittenInTheGrowersUnit() {
    Unit inch = Dimension.LENGTH.unit("in").orElseThrow();
    assertThat(Quantity.write(0, 1.2, inch)).isEqualTo("0 to 47.24 in");
    assertThat(Quantity.write(0, 360, Dimension.ANGLE.base())).isEqualTo("0 to 360°");
  }
}
