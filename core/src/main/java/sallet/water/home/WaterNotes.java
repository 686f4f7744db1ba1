package sallet.water.home;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import sallet.air.RoomVapour;
import sallet.water.caution.FloorLoad;
import sallet.water.flood.FloodSchedule;
import sallet.water.flood.Timer;
import sallet.water.medium.Medium;
import sallet.water.reservoir.SolutionWarmth;
import sallet.water.reservoir.TankForecast;

/** What a grower should know of the water, most urgent first. */
final class WaterNotes {
  /** A pot that needs so many times the floods of the middle one spoils it for all. Judgement. */
  private static final double SPOILS = 2;

  /** A leaf cooler than this against the air hints at a wrong humidity. Nelson and Bugbee 2015. */
  private static final double UNLIKELY_LEAF_K = -3;

  private static final double STRETCHED = 1.001;

  /** Warmth of the lamps that is worth a note, K. Judgement. */
  private static final double TOLD_FROM_K = 1;

  /** Share of a pin by which a flood just passes one. Judgement. */
  private static final double JUST_OVER = 0.35;

  /** A shorter soak is not advised, min. Judgement. */
  private static final double LEAST_SOAK_MIN = 5;

  private final List<String> notes = new ArrayList<>();

  private WaterNotes() {}

  /**
   * The notes.
   *
   * @param without floods if the pots that spoil it for all were not there
   */
  static List<String> of(
      HomeBench bench,
      FloodSchedule schedule,
      FloodSchedule without,
      List<WaterSheet.PotLine> pots,
      TankForecast tank,
      WaterSheet.Solution solution,
      WaterSheet.RoomMoisture room,
      Learned learned) {
    WaterNotes all = new WaterNotes();
    all.tank(tank);
    all.timer(schedule);
    all.pins(bench);
    all.thirstiest(pots, schedule, without);
    all.air(pots);
    all.solution(solution);
    all.room(bench, room, tank.days().get(0).date());
    all.notes.addAll(learned.notes());
    all.media(bench, pots);
    all.floor(bench);
    return all.notes;
  }

  private void add(String text, Object... values) {
    notes.add(String.format(Locale.ROOT, text, values));
  }

  private void tank(TankForecast tank) {
    if (tank.tank().usableL(tank.startL()) <= 0) {
      add(
          "The reservoir holds %.1f L, and a whole flood needs %.1f L: top up before the next flood",
          tank.startL(), tank.tank().leastL());
    }
  }

  private void timer(FloodSchedule schedule) {
    if (!schedule.unserved().isEmpty()) {
      add(
          "%s %s out faster than this timer can flood: use larger pots or a medium that holds more, or harvest %s",
          pots(schedule.unserved()),
          schedule.unserved().size() == 1 ? "dries" : "dry",
          schedule.unserved().size() == 1 ? "it" : "them");
    } else if (schedule.stretch() > STRETCHED) {
      add(
          "The timer has too few starts, so pots dry to %.0f %% of their easy water instead of 30 %%; growth may slow a little",
          30 * schedule.stretch());
    }
  }

  /** A soak that just passes a pin of the dial makes every flood a pin longer. */
  private void pins(HomeBench bench) {
    if (bench.timer() instanceof Timer.Segments dial) {
      double minutes = bench.length().floodMinutes();
      int on = dial.onMinutes(minutes);
      int fewer = on - dial.gridMinutes();
      double over = minutes - fewer;
      double soak = bench.household().watering().timer().soakMinutes();
      if (fewer > 0 && over < JUST_OVER * dial.gridMinutes() && soak - over >= LEAST_SOAK_MIN) {
        add(
            "Filling and soaking take %.1f min, so with pins of %d min the pump runs %d min; a soak of %.0f min (timer.soak) would do with %d, and the tray would stand wet less long",
            minutes, dial.gridMinutes(), on, Math.floor(soak - over), fewer);
      }
    }
  }

  /** Pots that need far more floods than the middle one; none when few are planted. */
  static List<WaterSheet.PotLine> spoilers(List<WaterSheet.PotLine> pots) {
    List<WaterSheet.PotLine> planted = byFloods(pots);
    return planted.size() < 3
        ? List.of()
        : planted.stream().filter(p -> p.floodsPerDay() > SPOILS * middle(planted)).toList();
  }

  private static List<WaterSheet.PotLine> byFloods(List<WaterSheet.PotLine> pots) {
    return pots.stream()
        .filter(p -> !p.crop().isEmpty())
        .sorted(Comparator.comparingDouble(WaterSheet.PotLine::floodsPerDay))
        .toList();
  }

  private static double middle(List<WaterSheet.PotLine> planted) {
    return planted.get(planted.size() / 2).floodsPerDay();
  }

  private void thirstiest(
      List<WaterSheet.PotLine> pots, FloodSchedule schedule, FloodSchedule without) {
    List<WaterSheet.PotLine> spoilers = spoilers(pots);
    if (!spoilers.isEmpty()) {
      boolean one = spoilers.size() == 1;
      add(
          "%s need%s %.1f floods a day where the middle pot needs %.1f, so the whole bench is flooded %.0f times for %s; without %s %.0f floods would do: a larger pot, a medium that holds more, a dimmer place or a harvest there",
          pots(spoilers.stream().map(WaterSheet.PotLine::pot).toList()),
          one ? "s" : "",
          spoilers.get(spoilers.size() - 1).floodsPerDay(),
          middle(byFloods(pots)),
          schedule.floodsPerDay(),
          one ? "it" : "them",
          one ? "it" : "them",
          without.floodsPerDay());
    }
  }

  private void air(List<WaterSheet.PotLine> pots) {
    pots.stream()
        .filter(p -> p.airShare() < Medium.LEAST_AIR)
        .collect(Collectors.groupingBy(WaterSheet.PotLine::medium))
        .forEach(
            (medium, some) ->
                add(
                    "%s in these pots holds only %.0f %% of air after a flood, 10 %% is the least roots like: use taller pots or a coarser mix",
                    capital(medium), 100 * some.get(0).airShare()));
  }

  private void solution(WaterSheet.Solution solution) {
    if (solution.warmth() != SolutionWarmth.WELL && solution.warmth() != SolutionWarmth.COOL) {
      add(
          "Solution at %.0f °C%s. %s",
          solution.temperatureC(),
          solution.measured() ? "" : " if it is as warm as the room",
          solution.warmth().advice());
    }
  }

  private void room(HomeBench bench, WaterSheet.RoomMoisture room, LocalDate day) {
    room.wetBelowC()
        .ifPresent(
            wet ->
                add(
                    "Below %.0f °C outside the panes run wet, below %.0f °C their edges stay damp enough for mould: air the room in short bursts, or let the bench stand away from cold glass",
                    whole(wet), whole(room.mouldBelowC().orElse(wet))));
    double told = bench.household().room().air().humidityPercent().get(day.getMonthValue() - 1);
    if (room.humidityPoints() > RoomVapour.LARGEST_SHARE * told) {
      add(
          "The bench gives off up to %.0f g of water an hour, and its mean over the day would raise a room aired as told by %.0f points of humidity: yours is aired more than %.1f times an hour, or damper than told; measure humidity at the leaves",
          room.vapourGPerHour(),
          room.humidityPoints(),
          bench.household().watering().airing().changesPerHour());
    } else if (room.humidityPoints() >= 5) {
      add(
          "The bench gives off up to %.0f g of water an hour; with %.1f air changes an hour its mean over the day adds about %.0f points of humidity to the room's",
          room.vapourGPerHour(),
          bench.household().watering().airing().changesPerHour(),
          room.humidityPoints());
    }
    room.lampHeat()
        .filter(heat -> heat.warmsHighK() >= TOLD_FROM_K)
        .ifPresent(
            heat ->
                add(
                    "The lamps give the room %.0f W as a mean of the day, of which %.0f W leave as vapour of the bench: where nothing else warms or cools it, it is about %.0f to %.0f °C warmer for them; write room.air as it is with the lamps on",
                    heat.watts(), heat.latentW(), heat.warmsLowK(), heat.warmsHighK()));
    if (room.coolestLeafK() < UNLIKELY_LEAF_K) {
      add(
          "Leaves come out %.1f °C cooler than the air, more than is usual: measure the room's humidity at the leaves",
          -room.coolestLeafK());
    }
  }

  /** To whole degrees, and 0 without a sign. */
  private static double whole(double value) {
    return Math.round(value);
  }

  private void floor(HomeBench bench) {
    double litres = bench.household().reservoir().volumeL();
    double load = FloorLoad.kNPerM2(litres, bench.tankM2());
    if (load > FloorLoad.USUAL_KN_M2) {
      add(
          "Full, the reservoir stands on the floor with %.0f kg on %.2f m², %.1f kN/m²; floors of dwellings are usually made for 1.5 to 1.9: spread it as the caution below says",
          litres, bench.tankM2(), load);
    }
  }

  private void media(HomeBench bench, List<WaterSheet.PotLine> pots) {
    if (pots.stream().noneMatch(WaterSheet.PotLine::weighed)) {
      add(
          "What the pots hold comes from a table, and media differ: weigh one filled pot dry and once after a flood (bench.weighings), it takes a minute");
    }
    if (pots.stream().anyMatch(p -> p.medium().startsWith("peat"))
        && bench.household().watering().readings().weighings().isEmpty()) {
      add(
          "Peat that has dried out takes up about 40 % less from below: keep it moist or water it once from above");
    }
  }

  private static String pots(List<String> names) {
    return (names.size() == 1 ? "Pot " : "Pots ") + String.join(", ", names);
  }

  private static String capital(String text) {
    return Character.toUpperCase(text.charAt(0)) + text.substring(1);
  }
}
