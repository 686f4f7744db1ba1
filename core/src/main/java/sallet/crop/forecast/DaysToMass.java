package sallet.crop.forecast;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import sallet.crop.Crop;
import sallet.crop.LifeDays;
import sallet.crop.PlantLife;
import sallet.crop.PlantParameters;

/**
 * Days from sowing until one unpicked plant of median luck stands at some fresh masses.
 *
 * @param sown day of sowing
 * @param days days to each mass, in the order asked for; empty when it is too old by then
 */
public record DaysToMass(LocalDate sown, List<OptionalInt> days) {
  public DaysToMass {
    days = List.copyOf(days);
  }

  /**
   * The days of one sowing.
   *
   * @param crop a crop that can be planned
   * @param massesG fresh masses, g
   */
  public static DaysToMass of(
      Crop crop, LocalDate sown, GrowingRoom room, double vigour, List<Double> massesG) {
    OptionalDouble median =
        crop.germination().daysAt(room.nursery().meanC(room.nursery().index(sown)));
    if (median.isEmpty()) {
      return new DaysToMass(sown, massesG.stream().map(g -> OptionalInt.empty()).toList());
    }
    int up = (int) Math.ceil(median.getAsDouble() - 1e-9);
    LocalDate emergence = sown.plusDays(up);
    PlantParameters p = crop.growth().orElseThrow();
    int age = crop.harvest().orElseThrow().overAgeDays();
    PlantLife plant =
        PlantLife.of(
            p,
            LifeDays.of(
                p,
                crop.harvest().orElseThrow(),
                vigour,
                emergence,
                room.stays(crop, emergence, room.bench()),
                emergence.plusDays(age)));
    return new DaysToMass(sown, massesG.stream().map(g -> after(up, plant.daysTo(g))).toList());
  }

  private static OptionalInt after(int up, OptionalInt days) {
    return days.isPresent() ? OptionalInt.of(up + days.getAsInt()) : days;
  }
}
