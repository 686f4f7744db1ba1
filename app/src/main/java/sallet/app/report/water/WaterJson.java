package sallet.app.report.water;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import sallet.water.flood.FloodSchedule;
import sallet.water.home.Learned;
import sallet.water.home.WaterSheet;
import sallet.water.learn.UseFactor;
import sallet.water.reservoir.TankForecast;

/** The sheet of water as JSON, described by {@code docs/schema/water.schema.json}. */
public final class WaterJson {
  private static final MathContext DIGITS = new MathContext(6);

  private WaterJson() {}

  /** The JSON text, indented. */
  public static String of(WaterReport report) {
    WaterSheet sheet = report.sheet();
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    root.put("day", sheet.day().toString());
    root.put("verdict", WaterWords.verdict(sheet));
    root.put("plantedPots", sheet.planted());
    root.set("timer", timer(sheet.floods().schedule()));
    root.set("flood", flood(sheet.floods()));
    root.set("reservoir", tank(sheet.tank()));
    sheet.untaught().ifPresent(before -> root.set("reservoirBefore", tank(before)));
    ObjectNode refill = root.putObject("refill");
    refill.put("by", sheet.topUp().by().toString());
    refill.put("beyondForecast", sheet.topUp().beyond());
    put(refill, "litres", sheet.topUp().pour().litres());
    put(refill, "ecMsCm", sheet.topUp().pour().msCm());
    put(refill, "endsMsCm", sheet.topUp().pour().endsMsCm());
    root.set("pots", pots(sheet));
    root.set("use", use(sheet.before(), sheet.learned()));
    root.set("solution", solution(sheet.solution()));
    root.set("room", room(sheet.room()));
    sheet
        .cells()
        .ifPresent(
            c -> {
              ObjectNode cells = root.putObject("seedCells");
              put(cells, "heightCm", c.heightCm());
              put(cells, "fullMl", c.fullMl());
              put(cells, "refloodMl", c.refloodMl());
              put(cells, "airShare", c.airShare());
            });
    texts(root, "notes", sheet.notes());
    texts(root, "how", WaterWords.how());
    texts(root, "cautions", sheet.cautions().stream().map(c -> c.text()).toList());
    texts(root, "basis", report.basis());
    ObjectNode cleaning = root.putObject("cleaning");
    put(cleaning, "litres", sheet.cleaning().litres());
    put(cleaning, "bleachPercent", sheet.cleaning().bleachPercent());
    cleaning.put("bleachTold", sheet.cleaning().told());
    put(cleaning, "bleachLeastMl", sheet.cleaning().leastMl());
    put(cleaning, "bleachMostMl", sheet.cleaning().mostMl());
    report.explained().ifPresent(told -> told.json(root));
    return root.toPrettyString() + "\n";
  }

  static ObjectNode timer(FloodSchedule s) {
    ObjectNode timer = JsonNodeFactory.instance.objectNode();
    texts(timer, "starts", s.clockTimes());
    timer.put("onMinutes", s.onMinutes());
    s.everyMinutes().ifPresent(every -> timer.put("everyMinutes", every));
    put(timer, "floodsPerDay", s.floodsPerDay());
    put(timer, "stretch", s.stretch());
    texts(timer, "unserved", s.unserved());
    return timer;
  }

  private static ObjectNode flood(WaterSheet.Floods f) {
    ObjectNode flood = JsonNodeFactory.instance.objectNode();
    put(flood, "volumeL", f.volumeL());
    put(flood, "depthM", f.depthM());
    put(flood, "fillMinutes", f.fillMinutes());
    flood.put("fillMeasured", f.fillMeasured());
    put(flood, "drainMinutes", f.drainMinutes());
    put(flood, "pumpKwhPerDay", f.pumpKwhPerDay());
    return flood;
  }

  static ObjectNode tank(TankForecast t) {
    ObjectNode tank = JsonNodeFactory.instance.objectNode();
    put(tank, "fullL", t.tank().fullL());
    put(tank, "levelL", t.startL());
    put(tank, "floodL", t.tank().floodL());
    put(tank, "sumpL", t.tank().sumpL());
    put(tank, "hoseL", t.tank().hoseL());
    put(tank, "leastL", t.tank().leastL());
    put(tank, "usableL", t.tank().usableL(t.startL()));
    t.daysLasting(0.9).ifPresent(d -> tank.put("lastsDaysLow", d));
    t.daysLasting(0.5).ifPresent(d -> tank.put("lastsDaysExpected", d));
    t.daysLasting(0.1).ifPresent(d -> tank.put("lastsDaysHigh", d));
    ArrayNode days = tank.putArray("days");
    for (TankForecast.Day day : t.days()) {
      ObjectNode one = days.addObject();
      one.put("date", day.date().toString());
      put(one, "useL", day.useL());
      put(one, "levelL", day.levelL());
      put(one, "levelLowL", day.lowL());
      put(one, "levelHighL", day.highL());
      put(one, "ecMsCm", day.ecMsCm());
      put(one, "lastsProbability", day.lasts());
    }
    return tank;
  }

  private static ArrayNode pots(WaterSheet sheet) {
    ArrayNode pots = JsonNodeFactory.instance.arrayNode();
    for (WaterSheet.PotLine p : sheet.pots()) {
      ObjectNode one = pots.addObject();
      one.put("pot", p.pot());
      one.put("crop", p.crop());
      one.put("medium", p.medium());
      put(one, "fullMl", p.fullMl());
      put(one, "allowedMl", p.allowedMl());
      put(one, "useMlPerDay", p.useMlPerDay());
      put(one, "floodsPerDay", p.floodsPerDay());
      put(one, "survivesHours", p.survivesHours());
      put(one, "lowestShare", p.lowestShare());
      put(one, "airShare", p.airShare());
      one.put("weighed", p.weighed());
    }
    return pots;
  }

  static ObjectNode use(UseFactor before, Learned learned) {
    ObjectNode use = JsonNodeFactory.instance.objectNode();
    factor(use.putObject("factorBefore"), before);
    factor(use.putObject("factor"), learned.factor());
    put(use, "uptakeMsCm", learned.uptake().msCm());
    put(use, "uptakeSdMsCm", learned.uptake().sd());
    ArrayNode intervals = use.putArray("intervals");
    learned
        .intervals()
        .forEach(
            i -> {
              ObjectNode one = intervals.addObject();
              put(one, "days", i.days());
              put(one, "lossL", i.lossL());
              put(one, "computedL", i.computedL());
            });
    return use;
  }

  private static void factor(ObjectNode node, UseFactor factor) {
    put(node, "median", factor.median());
    put(node, "low", factor.quantile(0.1));
    put(node, "high", factor.quantile(0.9));
    node.put("readings", factor.readings());
  }

  private static ObjectNode solution(WaterSheet.Solution s) {
    ObjectNode solution = JsonNodeFactory.instance.objectNode();
    put(solution, "temperatureC", s.temperatureC());
    solution.put("measured", s.measured());
    solution.put("warmth", s.warmth().name().toLowerCase(java.util.Locale.ROOT));
    put(solution, "oxygenMgL", s.oxygenMgL());
    put(solution, "pumpWarmsK", s.pumpWarmsK());
    s.renewBy()
        .ifPresent(
            r -> {
              solution.put("renewBy", r.by().toString());
              texts(solution, "renewWhy", r.why());
            });
    return solution;
  }

  private static ObjectNode room(WaterSheet.RoomMoisture r) {
    ObjectNode room = JsonNodeFactory.instance.objectNode();
    put(room, "vapourGPerHour", r.vapourGPerHour());
    put(room, "humidityPoints", r.humidityPoints());
    r.mouldBelowC().ifPresent(c -> put(room, "mouldBelowOutdoorC", c));
    r.wetBelowC().ifPresent(c -> put(room, "wetBelowOutdoorC", c));
    put(room, "coolestLeafK", r.coolestLeafK());
    r.lampHeat()
        .ifPresent(
            heat -> {
              put(room, "lampMeanW", heat.watts());
              put(room, "lampLatentW", heat.latentW());
              put(room, "lampWarmsLowK", heat.warmsLowK());
              put(room, "lampWarmsHighK", heat.warmsHighK());
            });
    return room;
  }

  static void texts(ObjectNode node, String name, List<String> texts) {
    ArrayNode array = node.putArray(name);
    texts.forEach(array::add);
  }

  /** A number of six figures; null when it is none. */
  static void put(ObjectNode node, String name, double value) {
    if (Double.isFinite(value)) {
      node.put(name, new BigDecimal(value).round(DIGITS));
    } else {
      node.putNull(name);
    }
  }
}
