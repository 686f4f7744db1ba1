package sallet.learn;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sallet.household.Household;
import sallet.household.Watering;
import sallet.journal.Entry;
import sallet.journal.Event;
import sallet.journal.Journal;
import sallet.journal.Where;

/**
 * What a journal's rows tell of reservoir, pots on the scales and air.
 *
 * @param watering the household's watering with these readings beside those of its file
 * @param remarks what the grower should know of single rows
 */
public record WaterRows(Watering watering, List<Remark> remarks) {
  /** Levels up to so many times a full reservoir are believed: a ruler may err. Judgement. */
  private static final double RULER = 1.02;

  /** Days for which the last temperature of the solution speaks. Judgement. */
  private static final int SOLUTION_DAYS = 14;

  /** Time of the day of a reading that names none. */
  private static final LocalTime NOON = LocalTime.NOON;

  private static final String RESERVOIR = "reservoir";
  private static final String POURED = "top-up";

  public WaterRows {
    remarks = List.copyOf(remarks);
  }

  /**
   * From the rows up to a day. Of a day that stands in the file too, the journal's readings count.
   *
   * @param today last day that counts
   */
  public static WaterRows of(Household household, Journal journal, LocalDate today) {
    List<Entry> rows = journal.until(today).entries();
    List<Remark> remarks = new ArrayList<>();
    Map<LocalDate, ReservoirDay> days = new TreeMap<>();
    for (Entry row : rows) {
      if (ofReservoir(row)) {
        days.computeIfAbsent(row.date(), ReservoirDay::new).add(row, remarks);
      }
    }
    double full = household.reservoir().volumeL() * RULER;
    days.values().forEach(day -> day.tooFull(full).ifPresent(remarks::add));
    Watering told = household.watering();
    List<Watering.Level> levels =
        Stream.concat(
                told.readings().levels().stream().filter(level -> !days.containsKey(level.date())),
                days.values().stream().map(ReservoirDay::level))
            .sorted(Comparator.comparing(Watering.Level::date))
            .toList();
    List<Watering.Weighing> weighings = new ArrayList<>(told.readings().weighings());
    weighings.addAll(new PotRows(remarks).of(rows));
    Watering.TankSetting tank =
        tank(told.tank(), rows, today, days.values().stream().anyMatch(ReservoirDay::tellsLevel));
    return new WaterRows(
        told.withReadings(new Watering.Readings(weighings, levels, air(rows))).withTank(tank),
        remarks);
  }

  private static boolean ofReservoir(Entry row) {
    return switch (row.event()) {
      case LEVEL, TOP_UP, RENEW -> true;
      case EC -> inReservoir(row) || row.place().text().equalsIgnoreCase(POURED);
      default -> false;
    };
  }

  private static boolean inReservoir(Entry row) {
    return row.place() instanceof Where.Anywhere || row.place().text().equalsIgnoreCase(RESERVOIR);
  }

  static boolean isPoured(Entry row) {
    return row.place().text().equalsIgnoreCase(POURED);
  }

  private static Watering.TankSetting tank(
      Watering.TankSetting t, List<Entry> rows, LocalDate today, boolean levelRead) {
    OptionalDouble warm =
        rows.stream()
            .filter(row -> row.event() == Event.SOLUTION_TEMPERATURE && inReservoir(row))
            .filter(row -> row.date().isAfter(today.minusDays(SOLUTION_DAYS)))
            .mapToDouble(row -> row.value().orElseThrow())
            .reduce((first, second) -> second);
    return t.with(
        levelRead ? OptionalDouble.empty() : t.levelL(),
        warm.isPresent() ? warm : t.temperatureC());
  }

  private static List<Watering.AirReading> air(List<Entry> rows) {
    Map<String, List<Entry>> moments =
        rows.stream()
            .filter(r -> r.event() == Event.AIR_TEMPERATURE || r.event() == Event.HUMIDITY)
            .filter(WaterRows::indoors)
            .collect(
                Collectors.groupingBy(
                    r -> r.date() + " " + r.time().orElse(NOON),
                    TreeMap::new,
                    Collectors.toList()));
    return moments.values().stream()
        .map(
            same ->
                new Watering.AirReading(
                    same.get(0).date(),
                    same.get(0).time().orElse(NOON),
                    last(same, Event.AIR_TEMPERATURE),
                    last(same, Event.HUMIDITY)))
        .toList();
  }

  private static boolean indoors(Entry row) {
    String place = row.place().text();
    return place.isEmpty() || place.equalsIgnoreCase("room") || place.equalsIgnoreCase("bench");
  }

  private static OptionalDouble last(List<Entry> rows, Event event) {
    return rows.stream()
        .filter(row -> row.event() == event)
        .mapToDouble(row -> row.value().orElseThrow())
        .reduce((first, second) -> second);
  }
}
