package sallet.crop.forecast;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import sallet.crop.Crop;
import sallet.crop.PlaceDays;
import sallet.crop.Span;
import sallet.crop.Stay;
import sallet.household.AirClimate;

/**
 * What a household offers one plant on its way.
 *
 * @param nursery days on the seed shelf
 * @param cellCm2 area of a sowing cell, cm²
 * @param placeCm2 area of a nursery place, cm²; 0 when there are none
 * @param bench days at the place on the bench under the mean sky
 * @param skies the same under other skies, at least one
 * @param siteCm2 area of the pot on the bench, cm²
 * @param air air of the room
 * @param airMPerS speed of the air at the leaves, m/s
 * @param southern whether it lies south of the equator
 */
public record GrowingRoom(
    PlaceDays nursery,
    double cellCm2,
    double placeCm2,
    PlaceDays bench,
    List<PlaceDays> skies,
    double siteCm2,
    AirClimate air,
    double airMPerS,
    boolean southern) {

  private static final int USUAL_NURSERY_DAYS = 14;

  public GrowingRoom {
    skies = List.copyOf(skies);
    if (skies.isEmpty()) {
      throw new IllegalArgumentException("a room needs at least one sky");
    }
  }

  /** Days from emergence to the first move, out of the cell. */
  public static int daysInCell(Crop crop) {
    return crop.guide().nurseryDays().map(Span::low).orElse((double) USUAL_NURSERY_DAYS).intValue();
  }

  /** Days from emergence to the bench. */
  public int daysToBench(Crop crop) {
    int low = daysInCell(crop);
    return placeCm2 > 0 ? crop.guide().nurseryDays().map(d -> (int) d.high()).orElse(low) : low;
  }

  /** The stays of a plant: cell, nursery place if there are any, pot. */
  public List<Stay> stays(Crop crop, LocalDate emergence, PlaceDays onBench) {
    List<Stay> stays = new ArrayList<>();
    stays.add(new Stay(emergence, nursery, cellCm2));
    LocalDate out = emergence.plusDays(daysInCell(crop));
    LocalDate toBench = emergence.plusDays(daysToBench(crop));
    if (toBench.isAfter(out)) {
      stays.add(new Stay(out, nursery, placeCm2));
    }
    stays.add(new Stay(toBench, onBench, siteCm2));
    return stays;
  }
}
