package sallet.app.file;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import sallet.household.Household;
import sallet.household.Pot;
import sallet.household.Watering;
import sallet.units.Quantity;

/** The pots named are on the bench, and readings make sense by themselves. */
final class WateringChecks {
  private static final int DAY_MINUTES = 24 * 60;

  private final Values values;
  private final Faults faults;
  private final Household household;

  WateringChecks(Values values, Faults faults, Household household) {
    this.values = values;
    this.faults = faults;
    this.household = household;
  }

  void check() {
    timer();
    curve();
    Set<String> taken = new HashSet<>();
    for (int i = 0; i < values.count("bench.otherPots"); i++) {
      otherPots("bench.otherPots[" + i + "]", taken);
    }
    for (int i = 0; i < values.count("bench.weighings"); i++) {
      weighing("bench.weighings[" + i + "]");
    }
    levels();
  }

  private void timer() {
    int step = household.watering().timer().stepMinutes();
    if (values.sound("timer.step")
        && household.watering().timer().kind().equals("segments")
        && (step < 1 || DAY_MINUTES % step != 0)) {
      add("timer.step", "segments of " + step + " min do not make up a day; dials have 15 or 30");
    }
  }

  private void curve() {
    if (!values.isList("pump.curve") || !values.sound("pump.curve")) {
      return;
    }
    for (String key : List.of("pump.flow", "pump.head")) {
      if (values.written(key)) {
        add(key, "stands beside pump.curve, which tells flow at every height; keep one of the two");
      }
    }
    List<Watering.CurvePoint> curve = household.watering().pump().curve();
    for (int i = 1; i < curve.size(); i++) {
      Watering.CurvePoint low = curve.get(i - 1);
      Watering.CurvePoint high = curve.get(i);
      if (!(high.headM() > low.headM() && high.flowLh() <= low.flowLh())) {
        add(
            "pump.curve",
            "a pump brings less the higher it lifts, but here %s L/h at %s m and %s L/h at %s m; look at the box again"
                .formatted(
                    Quantity.plain(low.flowLh()),
                    Quantity.plain(low.headM()),
                    Quantity.plain(high.flowLh()),
                    Quantity.plain(high.headM())));
      }
    }
  }

  private void otherPots(String at, Set<String> taken) {
    if (!values.sound(at)) {
      return;
    }
    for (String name : WateringBuilder.names(values.word(at + ".pots"))) {
      known(at + ".pots", name);
      if (!taken.add(name)) {
        add(at + ".pots", "pot " + name + " is described twice");
      }
    }
  }

  private void known(String path, String name) {
    List<String> names = household.bench().pots().stream().map(Pot::name).toList();
    if (!names.contains(name)) {
      add(
          path,
          "\"%s\" is no pot of your bench; the first is %s, the last %s"
              .formatted(name, names.get(0), names.get(names.size() - 1)));
    }
  }

  private void weighing(String at) {
    if (!values.sound(at)) {
      return;
    }
    known(at + ".pot", values.word(at + ".pot"));
    double dry = values.base(at + ".dry");
    double wet = values.base(at + ".wet");
    double before = values.written(at + ".before") ? values.base(at + ".before") : wet;
    if (!(dry < before && before <= wet)) {
      add(
          at,
          "masses must rise from dry (%s g) over before the next flood (%s g) to wet (%s g)"
              .formatted(Quantity.plain(dry), Quantity.plain(before), Quantity.plain(wet)));
    }
  }

  private void levels() {
    List<Watering.Level> levels = household.watering().readings().levels();
    double full = household.reservoir().volumeL();
    for (int i = 0; i < values.count("reservoir.readings"); i++) {
      String at = "reservoir.readings[" + i + "]";
      if (values.sound(at)
          && values.sound("reservoir.volume")
          && values.base(at + ".level") > full * 1.02) {
        add(
            at + ".level",
            "%s L is more than the %s L the reservoir holds"
                .formatted(Quantity.plain(values.base(at + ".level")), Quantity.plain(full)));
      }
    }
    for (int i = 1; i < levels.size(); i++) {
      if (levels.get(i).date().equals(levels.get(i - 1).date())) {
        add(
            "reservoir.readings",
            "two readings on " + levels.get(i).date() + "; keep one for each day");
      }
    }
  }

  private void add(String path, String sentence) {
    faults.add(path, values.line(path), sentence);
  }
}
