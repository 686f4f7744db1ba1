package sallet.light;

import java.util.List;
import sallet.household.Bench;

/**
 * A point in the room, looking up.
 *
 * @param xM from the west wall, m
 * @param yM from the south wall, m
 * @param zM above the floor, m
 */
record Spot(double xM, double yM, double zM) {

  /** Every pot's leaves, half grown. */
  static List<Spot> ofPots(Bench bench) {
    return bench.pots().stream()
        .map(pot -> new Spot(bench.xM() + pot.xM(), bench.yM() + pot.yM(), bench.canopyHeightM()))
        .toList();
  }

  /** The middle of a cell of a grid over the tray, counted row by row from the south-west. */
  static Spot ofGrid(Bench bench, int columns, int rows, int cell, double heightM) {
    return new Spot(
        bench.xM() + bench.widthM() * (cell % columns + 0.5) / columns,
        bench.yM() + bench.depthM() * (Math.floorDiv(cell, columns) + 0.5) / rows,
        heightM);
  }
}
