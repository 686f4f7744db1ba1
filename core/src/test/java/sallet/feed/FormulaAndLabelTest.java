package sallet.feed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import sallet.feed.ion.Composition;
import sallet.feed.ion.Formula;
import sallet.feed.ion.Ion;
import sallet.feed.ion.Nutrient;
import sallet.feed.product.Label;
import sallet.feed.product.Product;
import sallet.feed.product.Reagent;
import sallet.feed.product.Salt;
import sallet.feed.product.Use;

final class FormulaAndLabelTest {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        " ",
        "Xx",
        "kno3",
        "Ca(NO3",
        "CaNO3)2",
        "()",
        "Ca..2H2O",
        "2",
        "MgSO4.",
        "Mg SO4",
        "K+"
      })
  void anUnknownFormulaIsAFault(String text) {
    assertThatThrownBy(() -> Formula.parse(text)).isInstanceOf(FeedFault.class);
  }

  @Test
  void nestedBracketsAndMiddleDotsAreRead() {
    assertThat(Formula.parse("[Fe(CN2)3]2·3H2O").molarMass())
        .isCloseTo(2 * (55.845 + 3 * (12.011 + 2 * 14.007)) + 3 * 18.015, within(1e-9));
  }

  /** The parser over the whole catalogue: masses of the elements add up to the molar mass. */
  static java.util.List<Salt> catalogue() {
    return Salt.catalogue();
  }

  @ParameterizedTest
  @MethodSource("catalogue")
  void everySaltIsNeutralAndHoldsWhatItsFormulaSays(Salt salt) {
    Composition perMole = salt.ionsPerMole();
    if (salt.use() == Use.MACRO || (salt.use() == Use.TRACE && salt.id().matches("fe.*|.*so4"))) {
      assertThat(perMole.alkalinityMeq()).isCloseTo(0, within(1e-12));
    }
    for (Nutrient nutrient : Nutrient.values()) {
      boolean nitrogenOfChelate = nutrient == Nutrient.NITROGEN && salt.id().startsWith("fee");
      boolean otherNitrogen =
          nutrient != Nutrient.NITROGEN && nutrient.element() == Nutrient.NITROGEN.element();
      if (!nitrogenOfChelate && !otherNitrogen && !salt.id().equals("fedtpa")) {
        double inFormula = salt.formula().atoms().getOrDefault(nutrient.element(), 0.0);
        assertThat(perMole.mg(nutrient) / nutrient.element().weight())
            .as(nutrient.symbol())
            .isCloseTo(inFormula, within(1e-9));
      }
    }
  }

  /** Alkalinity per mole by textbook reactions. */
  @ParameterizedTest
  @CsvSource({
    "khco3, 1",
    "k2co3, 2",
    "koh, 1",
    "hno3, -1",
    "h2so4, -2",
    "h3po4, -1",
    "borax, 2",
    "k2sio3, 2",
    "ammo, -8"
  })
  void acidsAndBasesCarryTheirAlkalinity(String id, double eqPerMole) {
    assertThat(Salt.find(id).orElseThrow().ionsPerMole().alkalinityMeq()).isEqualTo(eqPerMole);
  }

  @Test
  void aLabelIsClosedInChargeAndSplitByForm() {
    Product product =
        new Label(
                "bag",
                Label.Basis.BY_MASS,
                Map.of("N", 15.5, "NO3-N", 14.4, "NH4-N", 1.1, "CaO", 26.5),
                Optional.empty())
            .product(Use.MACRO);
    assertThat(product.perUnit().mg(Nutrient.NITRATE_NITROGEN)).isCloseTo(144, within(1e-9));
    assertThat(product.perUnit().mg(Nutrient.AMMONIUM_NITROGEN)).isCloseTo(11, within(1e-9));
    assertThat(product.perUnit().mg(Nutrient.CALCIUM)).isCloseTo(265 * 0.7147, within(0.05));
    assertThat(product.perUnit().alkalinityMeq()).isCloseTo(0, within(1e-12));
    assertThat(product.notes()).isEmpty();
  }

  @Test
  void ureaIsCountedByItsTwoNitrogens() {
    Product urea =
        new Label("bag", Label.Basis.BY_MASS, Map.of("urea-N", 46.0), Optional.empty())
            .product(Use.MACRO);
    assertThat(urea.perUnit().mg(Nutrient.NITROGEN)).isCloseTo(460, within(1e-9));
    assertThat(urea.perUnit().mmol(Ion.UREA)).isCloseTo(460 / 14.007 / 2, within(1e-9));
  }

  @Test
  void impossibleLabelsAreFaultsAllInOneGo() {
    Label label =
        new Label(
            "bag",
            Label.Basis.BY_MASS,
            Map.of("N", -1.0, "K2O", 120.0, "Unobtainium", 3.0),
            Optional.empty());
    assertThatThrownBy(() -> label.product(Use.MACRO))
        .isInstanceOfSatisfying(FeedFault.class, f -> assertThat(f.sentences()).hasSize(3));
  }

  @Test
  void partsOfMoreThanAHundredPercentAreRefused() {
    Label label =
        new Label("bag", Label.Basis.BY_MASS, Map.of("P2O5", 60.0, "K2O", 45.0), Optional.empty());
    assertThatThrownBy(() -> label.product(Use.MACRO))
        .isInstanceOf(FeedFault.class)
        .hasMessageContaining("105.0 %, more than 100 %");
  }

  @Test
  void formsOfNitrogenCannotExceedTheTotal() {
    Label label =
        new Label("bag", Label.Basis.BY_MASS, Map.of("N", 5.0, "NO3-N", 6.0), Optional.empty());
    assertThatThrownBy(() -> label.product(Use.MACRO)).isInstanceOf(FeedFault.class);
  }

  @Test
  void anAcidStrongerThanItExistsIsAFault() {
    assertThatThrownBy(() -> Reagent.SULFURIC_ACID.molarity(99)).isInstanceOf(FeedFault.class);
    assertThatThrownBy(() -> Reagent.NITRIC_ACID.molarity(0)).isInstanceOf(FeedFault.class);
  }
}
