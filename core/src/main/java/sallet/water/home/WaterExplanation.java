package sallet.water.home;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import sallet.units.Step;
import sallet.water.WaterFault;
import sallet.water.transpiration.HourlyUse;

/** How each number of the sheet comes about, step by step, by its path in the JSON. */
final class WaterExplanation {
  private final Map<String, Supplier<List<Step>>> told = new LinkedHashMap<>();

  WaterExplanation(HomeBench bench, BenchDays days, HourlyUse use, TankNow now, WaterSheet sheet) {
    FloodSteps floods = new FloodSteps(bench, sheet);
    told.put("timer.onMinutes", floods::onMinutes);
    told.put("timer.floodsPerDay", floods::perDay);
    told.put("flood.volumeL", floods::volume);
    told.put("flood.fillMinutes", floods::fill);
    told.put("flood.drainMinutes", floods::drain);
    told.put("flood.pumpKwhPerDay", floods::energy);
    TankSteps tank = new TankSteps(bench, use, now, sheet);
    told.put("reservoir.levelL", tank::level);
    told.put("reservoir.usableL", tank::usable);
    for (int i = 0; i < sheet.tank().days().size(); i++) {
      int day = i;
      String at = "reservoir.days[" + day + "].";
      told.put(at + "useL", () -> tank.use(day));
      told.put(at + "levelL", () -> tank.level(day));
      told.put(at + "levelLowL", () -> tank.low(day));
      told.put(at + "ecMsCm", () -> tank.conductivity(day));
      told.put(at + "lastsProbability", () -> tank.lasts(day));
    }
    told.put("cleaning.bleachLeastMl", tank::bleachLeast);
    told.put("cleaning.bleachMostMl", tank::bleachMost);
    told.put("refill.litres", tank::pour);
    told.put("refill.ecMsCm", tank::pourStrength);
    told.put("use.factor.median", tank::factor);
    told.put("use.uptakeMsCm", tank::uptake);
    PotSteps pots = new PotSteps(bench, days, use, sheet);
    for (int i = 0; i < sheet.pots().size(); i++) {
      int pot = i;
      String at = "pots[" + pot + "].";
      told.put(at + "fullMl", () -> pots.full(pot));
      told.put(at + "allowedMl", () -> pots.allowed(pot));
      told.put(at + "airShare", () -> pots.air(pot));
      told.put(at + "useMlPerDay", () -> pots.use(pot));
      told.put(at + "floodsPerDay", () -> pots.floods(pot));
      told.put(at + "survivesHours", () -> pots.survives(pot));
    }
    RoomSteps room = new RoomSteps(bench, days, use, sheet);
    told.put("solution.temperatureC", room::solution);
    told.put("solution.oxygenMgL", room::oxygen);
    told.put("room.humidityPoints", room::points);
    if (sheet.room().lampHeat().isPresent()) {
      told.put("room.lampWarmsLowK", room::lampsLow);
      told.put("room.lampWarmsHighK", room::lampsHigh);
    }
    sheet.room().wetBelowC().ifPresent(c -> told.put("room.wetBelowOutdoorC", room::wet));
    sheet.room().mouldBelowC().ifPresent(c -> told.put("room.mouldBelowOutdoorC", room::mould));
  }

  List<Step> of(String path) {
    Supplier<List<Step>> steps = told.get(path.strip());
    if (steps == null) {
      throw new WaterFault(
          List.of(
              new WaterFault.Line(
                  "--explain",
                  "\"%s\" is no number of this sheet that can be explained; ask for %s (counted from 0)"
                      .formatted(
                          path,
                          String.join(
                              ", ",
                              paths().stream()
                                  .filter(name -> !name.matches(".*\\[[1-9].*"))
                                  .toList())))));
    }
    return steps.get();
  }

  /** All paths that can be explained. */
  List<String> paths() {
    return List.copyOf(told.keySet());
  }
}
