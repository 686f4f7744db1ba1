package sallet.app.file;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import sallet.household.Bench;
import sallet.household.Watering;

/** Makes pump, timer, reservoir and the grower's readings of them of a file's values. */
final class WateringBuilder {
  private static final double MINUTES_PER_HOUR = 60;

  /** Depth of a flood as a share of the pots' height, and its bounds, m. Common practice. */
  private static final double DEPTH_SHARE = 1 / 3.0;

  private static final double LEAST_DEPTH_M = 0.02;
  private static final double MOST_DEPTH_M = 0.05;

  private final Values values;
  private final Bench bench;

  WateringBuilder(Values values, Bench bench) {
    this.values = values;
    this.bench = bench;
  }

  Watering watering() {
    double usual =
        Math.min(MOST_DEPTH_M, Math.max(LEAST_DEPTH_M, DEPTH_SHARE * bench.potHeightM()));
    return new Watering(
        pump(),
        timer(),
        orElse("bench.floodDepth", usual),
        tank(),
        stream("bench.otherPots", this::otherPots).toList(),
        new Watering.Airing(
            values.get("room.fan", Boolean.class).orElse(false), values.number("room.airChanges")),
        new Watering.Readings(
            stream("bench.weighings", this::weighing).flatMap(Optional::stream).toList(),
            stream("reservoir.readings", this::level)
                .flatMap(Optional::stream)
                .sorted(Comparator.comparing(Watering.Level::date))
                .toList(),
            List.of()));
  }

  private <T> Stream<T> stream(String list, Function<String, T> item) {
    return IntStream.range(0, values.count(list)).mapToObj(i -> item.apply(list + "[" + i + "]."));
  }

  private Watering.Pump pump() {
    return new Watering.Pump(
        curve(),
        orElse("pump.lift", bench.heightM()),
        values.base("pump.power"),
        minutes("pump.fillTime"),
        1000 * values.base("pump.drain"));
  }

  /** The points of its curve by height, else a straight line. */
  private List<Watering.CurvePoint> curve() {
    return values.isList("pump.curve")
        ? stream(
                "pump.curve",
                at -> new Watering.CurvePoint(values.base(at + "head"), values.base(at + "flow")))
            .sorted(Comparator.comparingDouble(Watering.CurvePoint::headM))
            .toList()
        : Watering.CurvePoint.straight(values.base("pump.flow"), values.base("pump.head"));
  }

  private Watering.TimerSetting timer() {
    return new Watering.TimerSetting(
        values.word("timer.kind"),
        (int) Math.round(MINUTES_PER_HOUR * values.base("timer.step")),
        values.whole("timer.starts"),
        MINUTES_PER_HOUR * values.base("timer.soak"));
  }

  private Watering.TankSetting tank() {
    return new Watering.TankSetting(
        values.base("reservoir.height"),
        values.base("reservoir.sump"),
        values.base("reservoir.hose"),
        !values.get("reservoir.open", Boolean.class).orElse(false),
        optional("reservoir.level"),
        values.base("reservoir.ec"),
        values.base("reservoir.highestEc"),
        optional("reservoir.temperature"),
        optional("reservoir.bleach"));
  }

  private Watering.OtherPots otherPots(String at) {
    return new Watering.OtherPots(
        names(values.word(at + "pots")),
        optional(at + "volume"),
        optional(at + "height"),
        values.get(at + "medium", String.class));
  }

  /** Names written like A1 + A2. */
  static List<String> names(String text) {
    return Arrays.stream(text.split("\\+", -1)).map(String::strip).toList();
  }

  private Optional<Watering.Weighing> weighing(String at) {
    return values
        .get(at + "pot", String.class)
        .map(
            pot ->
                new Watering.Weighing(
                    pot,
                    OptionalDouble.of(values.base(at + "dry")),
                    values.base(at + "wet"),
                    optional(at + "before"),
                    values.base(at + "hours"),
                    values.get(at + "date", LocalDate.class)));
  }

  private Optional<Watering.Level> level(String at) {
    return values
        .get(at + "date", LocalDate.class)
        .map(
            date ->
                new Watering.Level(
                    date,
                    values.base(at + "level"),
                    optional(at + "ec"),
                    values.base(at + "added"),
                    values.base(at + "addedEc")));
  }

  private double orElse(String path, double usual) {
    return values.written(path) ? values.base(path) : usual;
  }

  private OptionalDouble optional(String path) {
    return values.written(path) ? OptionalDouble.of(values.base(path)) : OptionalDouble.empty();
  }

  private OptionalDouble minutes(String path) {
    return values.written(path)
        ? OptionalDouble.of(MINUTES_PER_HOUR * values.base(path))
        : OptionalDouble.empty();
  }
}
