package sallet.app.file;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import sallet.household.Bench;
import sallet.household.Pot;
import sallet.household.Room;
import sallet.household.Sides;

/** Makes the bench with its pots. */
final class BenchBuilder {
  private final Values values;
  private final Room room;

  BenchBuilder(Values values, Room room) {
    this.values = values;
    this.room = room;
  }

  Bench bench() {
    double width = values.base("bench.width");
    double depth = values.base("bench.depth");
    boolean list = values.isList("bench.pots");
    return new Bench(
        orMiddle("bench.at.x", Math.max(0, (room.widthM() - width) / 2)),
        orMiddle("bench.at.y", Math.max(0, (room.depthM() - depth) / 2)),
        width,
        depth,
        values.base("bench.height"),
        list ? listed() : grid(width, depth),
        values.base(list ? "bench.potHeight" : "bench.pots.height"),
        values.base(list ? "bench.potVolume" : "bench.pots.volume"),
        values.word(list ? "bench.potMedium" : "bench.pots.medium"),
        new Sides(
            values.share("bench.sides.north"),
            values.share("bench.sides.east"),
            values.share("bench.sides.south"),
            values.share("bench.sides.west")));
  }

  private double orMiddle(String path, double middle) {
    return values.written(path) ? values.base(path) : middle;
  }

  private List<Pot> listed() {
    return IntStream.range(0, values.count("bench.pots"))
        .mapToObj(
            i -> {
              String at = "bench.pots[" + i + "].";
              String name = values.get(at + "name", String.class).orElse("P" + (i + 1));
              return new Pot(name, values.base(at + "x"), values.base(at + "y"));
            })
        .toList();
  }

  /** Rows from south to north, columns from west to east, each pot in the middle of its share. */
  private List<Pot> grid(double width, double depth) {
    int rows = values.whole("bench.pots.rows");
    int columns = values.whole("bench.pots.columns");
    List<Pot> pots = new ArrayList<>();
    for (int row = 0; row < rows; row++) {
      for (int column = 0; column < columns; column++) {
        pots.add(
            new Pot(
                (char) ('A' + row) + Integer.toString(column + 1),
                (column + 0.5) * width / columns,
                (row + 0.5) * depth / rows));
      }
    }
    return pots;
  }
}
