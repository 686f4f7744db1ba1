package sallet.app.file;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import sallet.household.Household;
import sallet.household.LightReading;
import sallet.light.Calibration;

/** The grower's readings of light, each of one meter, and each of use. */
final class ReadingChecks {
  private final Values values;
  private final Faults faults;

  ReadingChecks(Values values, Faults faults) {
    this.values = values;
    this.faults = faults;
  }

  /** The household with its readings; those that say nothing become faults. */
  Household with(Household household) {
    List<LightReading> readings = new ArrayList<>();
    for (int i = 0; i < values.count("lightReadings"); i++) {
      String at = "lightReadings[" + i + "]";
      reading(at).ifPresent(readings::add);
      if (!readings.isEmpty() && faults.isEmpty()) {
        Calibration.refusal(household, readings.get(readings.size() - 1))
            .ifPresent(why -> faults.add(at, values.line(at), why));
      }
    }
    return household.withReadings(readings);
  }

  private Optional<LightReading> reading(String at) {
    boolean quantum = values.written(at + ".ppfd");
    boolean lux = values.written(at + ".lux");
    if (quantum == lux) {
      faults.add(at, values.line(at), "needs a reading: write either ppfd or lux");
      return Optional.empty();
    }
    String other = quantum ? ".outdoorLux" : ".outdoorPpfd";
    if (values.written(at + other)) {
      faults.add(
          at + other,
          values.line(at + other),
          "is of another meter than the reading; read both with the same one");
      return Optional.empty();
    }
    Optional<LocalDate> date = values.get(at + ".date", LocalDate.class);
    Optional<String> pot = values.get(at + ".pot", String.class);
    Optional<String> sky = values.get(at + ".sky", String.class);
    double value = values.base(at + (quantum ? ".ppfd" : ".lux"));
    if (date.isEmpty() || pot.isEmpty() || sky.isEmpty() || Double.isNaN(value)) {
      return Optional.empty();
    }
    LocalTime time = values.clock(at + ".time");
    String outdoors = at + (quantum ? ".outdoorPpfd" : ".outdoorLux");
    return Optional.of(
        new LightReading(
            pot.get(),
            date.get().atTime(time),
            LightReading.Sky.valueOf(sky.get().toUpperCase(Locale.ROOT)),
            quantum ? LightReading.Meter.PPFD : LightReading.Meter.LUX,
            value,
            values.written(outdoors)
                ? OptionalDouble.of(values.base(outdoors))
                : OptionalDouble.empty()));
  }
}
