package sallet.light;

import java.util.List;
import java.util.stream.IntStream;
import sallet.household.Nursery;

/**
 * Light of the seed shelf's lamp over its cells: a flat face above the middle of the shelf, shining
 * evenly in all directions. Walls near the shelf would add a little.
 *
 * @param columns along the lamp
 * @param rows across it
 * @param ppfdUmol of each cell, row by row, µmol/m²/s
 */
public record NurseryLight(int columns, int rows, List<Double> ppfdUmol) {
  public NurseryLight {
    ppfdUmol = List.copyOf(ppfdUmol);
  }

  /** Over a shelf's cells, set in rows as square as the shelf allows. */
  public static NurseryLight of(Nursery.ShelfLamp lamp, int cells) {
    int columns =
        (int) Math.max(1, Math.round(Math.sqrt(cells * lamp.shelfLengthM() / lamp.shelfWidthM())));
    int rows = Math.max(1, (int) Math.ceil(cells / (double) columns));
    double perM2 = lamp.ppfUmolPerS() / (lamp.lengthM() * lamp.widthM());
    return new NurseryLight(
        columns,
        rows,
        IntStream.range(0, Math.max(1, cells))
            .mapToObj(
                i ->
                    perM2
                        * Panel.rectangle(
                            lamp.lengthM(),
                            lamp.widthM(),
                            lamp.shelfLengthM() * ((i % columns + 0.5) / columns - 0.5),
                            lamp.shelfWidthM() * ((Math.floorDiv(i, columns) + 0.5) / rows - 0.5),
                            lamp.heightM()))
            .toList());
  }

  /** Mean, least, most and variation. */
  public Evenness evenness() {
    return Evenness.of(ppfdUmol);
  }
}
