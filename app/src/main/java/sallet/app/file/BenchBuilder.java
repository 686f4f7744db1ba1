package sallet.app.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import sallet.household.Bench;
import sallet.household.Lamp;
import sallet.household.Pot;
import sallet.household.Room;

/** Makes the bench with its pots and the lamp above it. */
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
        values.word(list ? "bench.potMedium" : "bench.pots.medium"));
  }

  /**
   * The lamp. A file that says nothing about lamp and windows is taken to have the default lamp:
   * without any light there would be nothing to plan.
   */
  Optional<Lamp> lamp() {
    boolean none = values.get("lamp", String.class).isPresent();
    boolean assumed = !values.written("lamp") && !values.written("room.windows");
    if (none || (!values.written("lamp") && !assumed)) {
      return Optional.empty();
    }
    Bench bench = bench();
    return Optional.of(
        new Lamp(
            orMiddle("lamp.at.x", bench.xM() + bench.widthM() / 2),
            orMiddle("lamp.at.y", bench.yM() + bench.depthM() / 2),
            values.base("lamp.size.length"),
            values.base("lamp.size.width"),
            values.base("lamp.power"),
            values.base("lamp.efficacy"),
            values.base("lamp.heightAboveBench"),
            values.clock("lamp.on"),
            values.base("lamp.hours"),
            values.share("lamp.dimming")));
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
