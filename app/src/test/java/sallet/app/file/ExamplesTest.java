package sallet.app.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.nio.charset.StandardCharsets;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sallet.household.Absence;
import sallet.household.Eaters;
import sallet.household.Household;
import sallet.household.Lamp;
import sallet.household.Nursery;
import sallet.household.Pot;
import sallet.household.PotSites;
import sallet.household.Wall;
import sallet.household.WeatherSource;

/** The shipped examples give the household that their lines say, reckoned by hand. */
class ExamplesTest {

  @Test
  void thePorchIsReadAsWritten() {
    Household porch = household("porch.yaml");

    assertThat(porch.eaters())
        .isEqualTo(new Eaters(2, 240, 3, List.of(DayOfWeek.WEDNESDAY, DayOfWeek.SATURDAY)));
    assertThat(porch.eaters().bowlDay()).isEqualTo(DayOfWeek.SATURDAY);
    assertThat(porch.absences())
        .containsExactly(new Absence(LocalDate.of(2027, 2, 5), LocalDate.of(2027, 2, 16), 2));
    assertThat(porch.crops().want()).hasSize(8).startsWith("loose-leaf lettuce, green");
    assertThat(porch.crops().avoid()).containsExactly("coriander");
    assertThat(porch.place().latitudeDeg()).isEqualTo(-42.88);
    assertThat(porch.place().timeZone()).isEqualTo(ZoneId.of("Australia/Hobart"));
    assertThat(porch.place().weather()).isEqualTo(new WeatherSource.BuiltIn("Hobart"));
    assertThat(porch.room().air().dayC()).startsWith(24.0, 24.0, 22.0).hasSize(12);
    assertThat(porch.room().air().nightC()).endsWith(11.0, 12.0, 14.0);
    assertThat(porch.room().windows()).hasSize(3);
    assertThat(porch.room().windows().get(2).wall()).isEqualTo(Wall.WEST);
    assertThat(porch.room().windows().get(2).curtain()).isEqualTo(0.6);
    assertThat(porch.room().windows().get(2).visibleTransmittance()).isNaN();
    assertThat(porch.reservoir().volumeL()).isEqualTo(60);
  }

  @Test
  void thePorchHasEighteenPotsFromTheSouthWestCorner() {
    Household porch = household("porch.yaml");

    assertThat(porch.bench().pots()).hasSize(18);
    Pot first = porch.bench().pots().get(0);
    assertThat(first.name()).isEqualTo("A1");
    assertThat(first.xM()).isEqualTo(0.1, offset(1e-12));
    assertThat(first.yM()).isEqualTo(0.1, offset(1e-12));
    Pot last = porch.bench().pots().get(17);
    assertThat(last.name()).isEqualTo("C6");
    assertThat(last.xM()).isEqualTo(1.1, offset(1e-12));
    assertThat(last.yM()).isEqualTo(0.5, offset(1e-12));
    assertThat(PotSites.siteCm2(porch.bench()))
        .allSatisfy(site -> assertThat(site).isEqualTo(400, offset(1e-6)));
  }

  @Test
  void theCellarIsReadInUsUnits() {
    Household cellar = household("cellar.yaml");

    assertThat(cellar.eaters().bowlGrams()).isEqualTo(1200);
    assertThat(cellar.eaters().bowlDay()).isEqualTo(DayOfWeek.SUNDAY);
    assertThat(cellar.absences()).extracting(Absence::people).containsExactly(4, 2);
    assertThat(cellar.room().widthM()).isEqualTo(4.2672, offset(1e-12));
    assertThat(cellar.room().heightM()).isEqualTo(2.286, offset(1e-12));
    assertThat(cellar.room().air().dayC().get(0)).isEqualTo(20, offset(1e-9));
    assertThat(cellar.room().windows()).isEmpty();
    assertThat(cellar.bench().pots()).hasSize(72);
    assertThat(cellar.bench().potVolumeL()).isEqualTo(1.1356235352, offset(1e-12));
    assertThat(cellar.nursery().placeAreaCm2()).isEqualTo(51.6128, offset(1e-9));
    assertThat(cellar.reservoir().volumeL()).isEqualTo(151.41647136, offset(1e-9));
    assertThat(cellar.place().weather()).isEqualTo(new WeatherSource.Nearest());
  }

  @Test
  void theMinimalFileTakesTheDefaults() {
    Household minimal = household("minimal.yaml");

    assertThat(minimal.eaters().kinds()).isEqualTo(3);
    assertThat(minimal.crops().want()).isEmpty();
    assertThat(minimal.room().windows().get(0).fromM()).isEqualTo(0.6, offset(1e-12));
    assertThat(minimal.bench().xM()).isEqualTo(0.9, offset(1e-12));
    assertThat(minimal.bench().yM()).isEqualTo(0.9, offset(1e-12));
    Lamp lamp = minimal.lamp().orElseThrow();
    assertThat(lamp.xM()).isEqualTo(1.5, offset(1e-12));
    assertThat(lamp.yM()).isEqualTo(1.2, offset(1e-12));
    assertThat(lamp.on()).isEqualTo(LocalTime.of(6, 0));
    assertThat(minimal.nursery())
        .isEqualTo(new Nursery(40, 24, 16, 49, 150, LocalTime.of(6, 0), 16, 20, 18));
  }

  @Test
  void onlyThePlaceIsRequired() {
    Household household = good("place: {latitude: 0, longitude: 0, timeZone: Africa/Nairobi}\n");

    assertThat(household.lamp()).as("a file without a word on light gets a lamp").isPresent();
    assertThat(household.eaters().bowlGrams()).isEqualTo(480);
  }

  @Test
  void aFileThatNamesItsWindowsHasNoLampUnlessWritten() {
    String place = "place: {latitude: 0, longitude: 0, timeZone: Africa/Nairobi}\n";

    assertThat(good(place + "room: {windows: []}\n").lamp()).isEqualTo(Optional.empty());
    assertThat(good(place + "lamp: none\n").lamp()).isEqualTo(Optional.empty());
  }

  private static Household household(String name) {
    return good(Examples.reader().read(Examples.file(name)), name);
  }

  private static Household good(String text) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    return good(Examples.reader().read(bytes), text);
  }

  private static Household good(HouseholdFile file, String name) {
    assertThat(file).as(name).isInstanceOf(HouseholdFile.Good.class);
    return ((HouseholdFile.Good) file).household();
  }
}
