package sallet.feed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sallet.feed.ion.Ion;
import sallet.feed.solution.Carbon;
import sallet.feed.solution.Speciation;
import sallet.feed.water.AnalysisUnit;
import sallet.feed.water.SourceWater;
import sallet.feed.water.WaterBalance;
import sallet.feed.water.WaterEntry;
import sallet.feed.water.WaterReport;

final class WaterTest {
  static WaterReport report(Object... triples) {
    Map<WaterEntry, WaterReport.Value> entries = new EnumMap<>(WaterEntry.class);
    for (int i = 0; i < triples.length; i += 3) {
      entries.put(
          WaterEntry.of((String) triples[i]).orElseThrow(),
          new WaterReport.Value(
              ((Number) triples[i + 1]).doubleValue(),
              AnalysisUnit.of((String) triples[i + 2]).orElseThrow()));
    }
    return new WaterReport("tap", false, entries, Optional.of(7.8), Optional.empty());
  }

  /** Medium tap water; EC of the same water by an independent geochemistry code 416 µS/cm. */
  @Test
  void aFullReportInMixedUnitsMakesTheWater() {
    SourceWater water =
        WaterBalance.of(
            report(
                "Ca", 52.1, "mg/L", "Mg", 0.3, "mmol/L", "Na", 0.8, "meq/L", "Cl", 28.36, "ppm",
                "SO4", 28.8, "mg/L", "KH", 7.29, "°dH"));
    assertThat(water.alkalinityMeq()).isCloseTo(2.6, within(0.01));
    assertThat(water.ecMsCm()).isCloseTo(0.4162, within(0.08 * 0.4162));
    assertThat(water.stateAsDrawn(25).ph()).isCloseTo(7.8, within(0.005));
    assertThat(water.hardnessMmol()).isCloseTo(1.6, within(0.01));
  }

  @Test
  void missingSodiumIsTakenFromTheBalance() {
    SourceWater water =
        WaterBalance.of(
            report(
                "Ca",
                1.3,
                "mmol/L",
                "Mg",
                0.3,
                "mmol/L",
                "Cl",
                0.8,
                "mmol/L",
                "SO4",
                0.3,
                "mmol/L",
                "alkalinity",
                2.6,
                "meq/L"));
    assertThat(water.composition().mmol(Ion.SODIUM)).isCloseTo(0.8, within(1e-9));
    assertThat(water.notes()).anyMatch(n -> n.startsWith("Na⁺ is not stated"));
  }

  @Test
  void chargesOffByMoreThanTenPercentAreRefused() {
    assertThatThrownBy(
            () ->
                WaterBalance.of(
                    report(
                        "Ca", 3, "mmol/L", "Na", 1, "mmol/L", "Cl", 1, "mmol/L", "HCO3", 200,
                        "mg/L")))
        .isInstanceOf(FeedFault.class)
        .hasMessageContaining("charges do not balance by 24 %");
  }

  @Test
  void negativeAndAbsurdFiguresAreRefusedTogether() {
    assertThatThrownBy(() -> WaterBalance.of(report("Ca", -3, "mmol/L", "Na", 90_000, "mg/L")))
        .isInstanceOfSatisfying(FeedFault.class, f -> assertThat(f.sentences()).hasSize(2));
  }

  @Test
  void pureWaterOfThreeMillisiemensIsRefused() {
    WaterReport report =
        new WaterReport("rain barrel", true, Map.of(), Optional.empty(), Optional.of(3.0));
    assertThatThrownBy(() -> WaterBalance.of(report))
        .isInstanceOf(FeedFault.class)
        .hasMessageContaining("less than 0.3 mS/cm, not 3.0 mS/cm");
  }

  /** Definitions: 10 °dH = 178.5 mg/L CaCO3 = 17.85 °fH = 12.52 °e; 1 gpg = 17.118 mg/L. */
  @ParameterizedTest
  @CsvSource({
    "10, dH, 1.783",
    "17.85, °fH, 1.783",
    "178.5, mg/L CaCO3, 1.783",
    "12.52, °e, 1.783",
    "10.425, gpg, 1.783"
  })
  void allDegreesOfHardnessAgree(double value, String unit, double mmol) {
    SourceWater water =
        WaterBalance.of(report("hardness", value, unit, "Na", 1, "mmol/L", "Cl", 1, "mmol/L"));
    assertThat(water.hardnessMmol()).isCloseTo(mmol, within(0.003));
  }

  @Test
  void blendingIsLinearInAlkalinityAndNotInPh() {
    SourceWater tap = WaterBalance.of(report("Ca", 1.3, "mmol/L", "HCO3", 2.6, "mmol/L"));
    SourceWater blend = tap.blendedWith(SourceWater.reverseOsmosis(), 0.4);
    assertThat(blend.alkalinityMeq()).isCloseTo(0.6 * 2.6 + 0.4 * 0.04, within(1e-9));
    assertThat(Speciation.at(25).solve(blend.composition(), Carbon.OPEN).ph())
        .isLessThan(Speciation.at(25).solve(tap.composition(), Carbon.OPEN).ph());
  }

  /** The independent code gives 6.80 and 23 µS/cm for this water in open air. */
  @Test
  void reverseOsmosisWaterIsNearlyNothing() {
    SourceWater water = SourceWater.reverseOsmosis();
    assertThat(Speciation.at(25).solve(water.composition(), Carbon.OPEN).ph())
        .isCloseTo(6.796, within(0.05));
    assertThat(water.ecMsCm()).isCloseTo(0.023, within(0.002));
  }
}
