package sallet.household;

import java.time.LocalTime;
import java.util.Optional;

/**
 * The seed shelf: cells for sowing and places for seedlings, under a light of its own.
 *
 * @param cells number of sowing cells
 * @param places number of nursery places
 * @param cellAreaCm2 area one cell offers a seedling, cm²
 * @param placeAreaCm2 area one nursery place offers a seedling, cm²
 * @param ppfdUmol light on the shelf while it is on, µmol/m²/s: the mean when there is a lamp
 * @param on time of day the light switches on
 * @param hours hours the light stays on each day
 * @param dayC temperature while the light is on, °C
 * @param nightC temperature in the dark, °C
 * @param lamp the shelf's lamp, when more is known than the mean light
 */
public record Nursery(
    int cells,
    int places,
    double cellAreaCm2,
    double placeAreaCm2,
    double ppfdUmol,
    LocalTime on,
    double hours,
    double dayC,
    double nightC,
    Optional<ShelfLamp> lamp) {

  /** A shelf of which only the mean light is known. */
  public Nursery(
      int cells,
      int places,
      double cellAreaCm2,
      double placeAreaCm2,
      double ppfdUmol,
      LocalTime on,
      double hours,
      double dayC,
      double nightC) {
    this(
        cells,
        places,
        cellAreaCm2,
        placeAreaCm2,
        ppfdUmol,
        on,
        hours,
        dayC,
        nightC,
        Optional.empty());
  }

  /**
   * A flat lamp above the middle of the shelf.
   *
   * @param shelfLengthM size of the shelf along the lamp, m
   * @param shelfWidthM size of the shelf across it, m
   * @param lengthM shining face along the shelf, m
   * @param widthM shining face across it, m
   * @param ppfUmolPerS photons it sends out, µmol/s
   * @param heightM shining face above the seedlings' leaves, m
   */
  public record ShelfLamp(
      double shelfLengthM,
      double shelfWidthM,
      double lengthM,
      double widthM,
      double ppfUmolPerS,
      double heightM) {}
}
