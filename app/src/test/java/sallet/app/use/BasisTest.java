package sallet.app.use;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import sallet.app.file.HouseholdFile;
import sallet.app.file.HouseholdReader;
import sallet.crop.Catalogue;
import sallet.household.Household;
import sallet.household.Watering;

/** What a sheet of water says it rests on. */
class BasisTest {
  private static final Household HOME =
      ((HouseholdFile.Good)
              new HouseholdReader(Catalogue.builtIn())
                  .read(Path.of("..", "examples", "minimal.yaml")))
          .household();

  private static List<String> basis(Household file, LocalDate today) {
    TellWater.Wish wish =
        new TellWater.Wish(today, today.minusWeeks(12), Optional.empty(), Optional.empty(), 1, 1);
    return Basis.of(file, file.withWatering(file.watering().withLevels(List.of())), wish);
  }

  /** Berlin keeps summer time in July and not in January. */
  @Test
  void summerTimeIsTold() {
    assertThat(basis(HOME, LocalDate.of(2027, 7, 1))).anyMatch(s -> s.contains("standard time"));
    assertThat(basis(HOME, LocalDate.of(2027, 1, 1))).noneMatch(s -> s.contains("standard time"));
  }

  @Test
  void readingsLeftOutAreTold() {
    LocalDate today = LocalDate.of(2027, 1, 1);
    Watering.Level old = new Watering.Level(today.minusYears(1), 40, OptionalDouble.empty(), 0, 0);
    Household read = HOME.withWatering(HOME.watering().withLevels(List.of(old)));
    assertThat(basis(read, today))
        .anyMatch(s -> s.startsWith("1 reading of the reservoir was left out: before Fri 9 Oct"));
    assertThat(basis(HOME, today)).noneMatch(s -> s.contains("left out"));
  }
}
