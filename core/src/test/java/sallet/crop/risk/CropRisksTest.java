package sallet.crop.risk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sallet.crop.Catalogue;
import sallet.crop.Concern;
import sallet.crop.Crop;
import sallet.crop.RoomDays;
import sallet.crop.Stay;
import sallet.crop.risk.Risk.Kind;
import sallet.household.AirClimate;
import sallet.light.HourlyLight;

/** Graded risks. The limits they are tested with are common practice. */
class CropRisksTest {
  private static final int DAYS = 60;

  /** A room with one light, warmth and dampness. */
  private record Room(
      double dliMol, int hours, double dayC, double nightC, double humidityPercent) {

    Exposure exposure(Crop crop, LocalDate emergence, boolean southern) {
      double[] ppfd = new double[DAYS * 24];
      for (int h = 0; h < ppfd.length; h++) {
        ppfd[h] = h % 24 < hours ? dliMol / (hours * 3600e-6) : 0;
      }
      double[] photoperiod = new double[DAYS];
      Arrays.fill(photoperiod, hours);
      HourlyLight light =
          new HourlyLight(
              emergence,
              new double[][] {new double[DAYS * 24]},
              new double[][] {ppfd},
              photoperiod);
      AirClimate air =
          new AirClimate(
              Collections.nCopies(12, dayC), Collections.nCopies(12, nightC), humidityPercent, 450);
      return new Exposure(
          crop,
          emergence,
          emergence.plusDays(DAYS),
          List.of(new Stay(emergence, RoomDays.atPlace(light, 0, air), 225)),
          air,
          Exposure.STILL_AIR_M_PER_S,
          southern);
    }
  }

  private static final Room GOOD = new Room(12, 16, 21, 17, 55);
  private static final LocalDate SPRING = LocalDate.of(2027, 3, 1);

  private static Optional<Risk> risk(Kind kind, String crop, Room room) {
    return risk(kind, crop, room, SPRING, false);
  }

  private static Optional<Risk> risk(
      Kind kind, String name, Room room, LocalDate emergence, boolean southern) {
    Crop crop = Catalogue.builtIn().find(name).orElseThrow();
    return CropRisks.of(room.exposure(crop, emergence, southern)).stream()
        .filter(risk -> risk.kind() == kind)
        .findFirst();
  }

  @Test
  void aGoodRoomWorriesNobody() {
    Crop lettuce = Catalogue.builtIn().find("loose-leaf lettuce, green").orElseThrow();
    assertThat(CropRisks.of(GOOD.exposure(lettuce, SPRING, false)))
        .filteredOn(risk -> risk.kind() != Kind.BOLTING && risk.kind() != Kind.BITTERNESS)
        .allSatisfy(
            risk -> {
              assertThat(risk.concern()).as(risk.toString()).isEqualTo(Concern.NONE);
              assertThat(risk.mend()).isEmpty();
              assertThat(risk.source()).isNotBlank();
              assertThat(risk.drivers()).isNotEmpty();
            });
  }

  /** Stems 1.5 times as long at 4 mol, twice at 2.3 mol (handbook limits, from memory). */
  @ParameterizedTest
  @CsvSource({"5, NONE", "3, WATCH", "2, ACT"})
  void dimSeedlingsStretch(double dliMol, Concern concern) {
    Room dim = new Room(dliMol, 16, 21, 17, 55);
    assertThat(risk(Kind.STRETCH, "mizuna", dim).orElseThrow().concern()).isEqualTo(concern);
  }

  /** Common practice: seedlings without enough light stretch within their first two weeks. */
  @ParameterizedTest
  @CsvSource({"7, NONE", "12, WATCH", "14, ACT"})
  void seedlingsStretchInTheirFirstTwoWeeks(int dimDays, Concern concern) {
    Crop mizuna = Catalogue.builtIn().find("mizuna").orElseThrow();
    Exposure dim = new Room(1.5, 16, 21, 17, 55).exposure(mizuna, SPRING, false);
    Exposure bright = new Room(8, 16, 21, 17, 55).exposure(mizuna, SPRING, false);
    Exposure moved =
        new Exposure(
            mizuna,
            SPRING,
            SPRING.plusDays(DAYS),
            List.of(
                dim.stays().get(0),
                new Stay(SPRING.plusDays(dimDays), bright.stays().get(0).place(), 225)),
            dim.air(),
            Exposure.STILL_AIR_M_PER_S,
            false);
    Exposure later =
        new Exposure(
            mizuna,
            SPRING,
            SPRING.plusDays(DAYS),
            List.of(
                bright.stays().get(0),
                new Stay(SPRING.plusDays(14), dim.stays().get(0).place(), 225)),
            dim.air(),
            Exposure.STILL_AIR_M_PER_S,
            false);
    assertThat(stretch(moved)).isEqualTo(concern);
    assertThat(stretch(later)).isEqualTo(Concern.NONE);
  }

  private static Concern stretch(Exposure life) {
    return CropRisks.of(life).stream()
        .filter(risk -> risk.kind() == Kind.STRETCH)
        .findFirst()
        .orElseThrow()
        .concern();
  }

  /** Carotti and others (2021): excessive at 400 µmol/m²/s for 16 h (23 mol) and 28 °C. */
  @Test
  void brightHotStillAirBurnsMargins() {
    Room hot = new Room(23, 16, 30, 26, 55);
    Risk risk = risk(Kind.TIP_BURN, "butterhead lettuce", hot).orElseThrow();
    assertThat(risk.concern()).isEqualTo(Concern.ACT);
    assertThat(risk.mend()).contains("air");
    assertThat(risk(Kind.TIP_BURN, "basil", hot)).isEmpty();
  }

  /** Spinach wants days of 13 h or less; lettuce bears 16 h for its usual life. */
  @Test
  void longDaysBringSpinachToSeed() {
    assertThat(risk(Kind.BOLTING, "spinach", GOOD).orElseThrow().concern()).isEqualTo(Concern.ACT);
    Room shortDays = new Room(12, 10, 18, 12, 55);
    assertThat(risk(Kind.BOLTING, "spinach", shortDays).orElseThrow().concern())
        .isEqualTo(Concern.NONE);
    assertThat(risk(Kind.BOLTING, "dwarf tomato", GOOD)).isEmpty();
  }

  /** Basil suffers below 10 to 12 °C; lettuce does not. */
  @ParameterizedTest
  @CsvSource({"16, NONE", "11, WATCH", "9, ACT"})
  void coldNightsChillBasil(double nightC, Concern concern) {
    Room cold = new Room(12, 16, 21, nightC, 55);
    assertThat(risk(Kind.CHILLING, "basil", cold).orElseThrow().concern()).isEqualTo(concern);
    assertThat(risk(Kind.CHILLING, "butterhead lettuce", cold)).isEmpty();
  }

  @Test
  void heatSpoilsLettuceAndMakesItBitter() {
    Room hot = new Room(12, 16, 29, 22, 55);
    assertThat(risk(Kind.HEAT, "butterhead lettuce", hot).orElseThrow().concern())
        .isEqualTo(Concern.ACT);
    assertThat(risk(Kind.BITTERNESS, "butterhead lettuce", hot).orElseThrow().says())
        .contains("heat");
    assertThat(risk(Kind.BITTERNESS, "spinach", hot)).isEmpty();
  }

  /** FAO 56: 2.338 kPa at 20 °C, 1.228 at 10: 60 % become 114 %. */
  @Test
  void dampAirSettlesAsDewInColdNights() {
    Room damp = new Room(12, 16, 20, 10, 60);
    Risk risk = risk(Kind.SLOW_DRYING, "mizuna", damp).orElseThrow();
    assertThat(risk.concern()).isEqualTo(Concern.ACT);
    assertThat(risk.says()).contains("dew");
  }

  /** Regulation (EU) No 1258/2011: lettuce under cover 5000 mg/kg in winter, 4000 in summer. */
  @Test
  void dimWinterLightPushesNitrateTowardsThePublishedMaximum() {
    Room dim = new Room(3, 10, 15, 10, 55);
    LocalDate november = LocalDate.of(2027, 11, 1);
    Risk winter = risk(Kind.NITRATE, "butterhead lettuce", dim, november, false).orElseThrow();
    assertThat(winter.concern()).isEqualTo(Concern.ACT);
    assertThat(winter.says()).contains("5000 mg/kg");
    assertThat(winter.mend()).contains("never a proof of safety");
    assertThat(risk(Kind.NITRATE, "butterhead lettuce", dim, november, true).orElseThrow().says())
        .contains("4000 mg/kg");
    assertThat(risk(Kind.NITRATE, "crisphead lettuce", GOOD).orElseThrow().says())
        .contains("2500 mg/kg");
    assertThat(risk(Kind.NITRATE, "salad rocket", GOOD).orElseThrow().says())
        .contains("6000 mg/kg");
    assertThat(risk(Kind.NITRATE, "spinach", GOOD).orElseThrow().says()).contains("3500 mg/kg");
    assertThat(risk(Kind.NITRATE, "mizuna", GOOD)).isEmpty();
  }

  @Test
  void theGravestComesFirst() {
    Crop spinach = Catalogue.builtIn().find("spinach").orElseThrow();
    List<Risk> risks = CropRisks.of(GOOD.exposure(spinach, SPRING, false));
    assertThat(risks.get(0).kind()).isEqualTo(Kind.BOLTING);
    assertThat(risks).extracting(Risk::concern).isSortedAccordingTo(Collections.reverseOrder());
  }

  @Test
  void aLifeNeedsAPlaceFromItsFirstDay() {
    Crop crop = Catalogue.builtIn().find("mizuna").orElseThrow();
    Exposure good = GOOD.exposure(crop, SPRING, false);
    assertThatThrownBy(
            () ->
                new Exposure(
                    crop,
                    SPRING.minusDays(1),
                    SPRING.plusDays(30),
                    good.stays(),
                    good.air(),
                    0.1,
                    false))
        .hasMessageContaining("needs a place from its first day on");
  }

  @Test
  void aPlantCannotMoveBeforeItComesUp() {
    Crop crop = Catalogue.builtIn().find("mizuna").orElseThrow();
    Exposure good = GOOD.exposure(crop, SPRING, false);
    Stay stay = good.stays().get(0);
    assertThatThrownBy(
            () ->
                new Exposure(
                    crop,
                    SPRING.plusDays(5),
                    SPRING.plusDays(30),
                    List.of(stay, new Stay(SPRING.plusDays(2), stay.place(), 225)),
                    good.air(),
                    0.1,
                    false))
        .hasMessage("a plant cannot move on 2027-03-03, before it comes up on 2027-03-06");
  }
}
