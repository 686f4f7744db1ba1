package sallet.household;

import java.time.LocalTime;

/**
 * The seed shelf: cells for sowing and places for seedlings, under a light of its own.
 *
 * @param cells number of sowing cells
 * @param places number of nursery places
 * @param cellAreaCm2 area one cell offers a seedling, cm²
 * @param placeAreaCm2 area one nursery place offers a seedling, cm²
 * @param ppfdUmol light on the shelf while it is on, µmol/m²/s
 * @param on time of day the light switches on
 * @param hours hours the light stays on each day
 * @param dayC temperature while the light is on, °C
 * @param nightC temperature in the dark, °C
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
    double nightC) {}
