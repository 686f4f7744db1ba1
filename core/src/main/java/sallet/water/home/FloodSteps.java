package sallet.water.home;

import java.util.Comparator;
import java.util.List;
import sallet.household.Bench;
import sallet.household.Watering;
import sallet.units.Step;
import sallet.water.flood.FloodTimes;
import sallet.water.flood.PumpCurve;

/** How flood and timer come about. */
final class FloodSteps {
  static final String FILE = "your file or our default";

  private final HomeBench bench;
  private final Watering watering;
  private final WaterSheet.Floods floods;
  private final WaterSheet sheet;

  FloodSteps(HomeBench bench, WaterSheet sheet) {
    this.bench = bench;
    this.watering = bench.household().watering();
    this.floods = sheet.floods();
    this.sheet = sheet;
  }

  List<Step> volume() {
    Bench b = bench.household().bench();
    double potsM2 = bench.footprintM2();
    double standing = 1000 * floods.depthM() * (b.widthM() * b.depthM() - potsM2);
    return List.of(
        new Step("tray", b.widthM() * b.depthM(), "m²", "bench.width x bench.depth", FILE),
        new Step("ground the pots cover", potsM2, "m²", "volume / height, summed", FILE),
        new Step("depth h", 100 * floods.depthM(), "cm", "bench.floodDepth", FILE),
        new Step("water between the pots", standing, "L", "1000 h (tray - pots)", "geometry"),
        new Step(
            "water the pots take up",
            floods.volumeL() - standing,
            "L",
            "1000 h pots x pores that are empty when what may go is gone",
            "retention curve: see pots[0].fullMl"),
        new Step("flood", floods.volumeL(), "L", "sum", "balance of volumes"));
  }

  private Step area() {
    return new Step(
        "area that fills", floods.volumeL() / floods.depthM() / 1000, "m²", "flood / depth", "");
  }

  List<Step> fill() {
    Watering.Pump pump = watering.pump();
    PumpCurve curve = PumpCurve.of(pump.curve());
    String how =
        floods.fillMeasured()
            ? "by your watch"
            : "each straight piece of the curve: area x rise / logarithmic mean of the flows at its ends";
    double top = pump.liftM() + floods.depthM();
    return List.of(
        new Step("lift", pump.liftM(), "m", "pump.lift, else the height of the bench", FILE),
        new Step(
            "flow there",
            curve.flowLh(pump.liftM()),
            "L/h",
            "pump.curve, or straight from pump.flow to 0 at pump.head",
            FILE),
        new Step("flow into the full tray", curve.flowLh(top), "L/h", "at lift + depth", FILE),
        new Step(
            "of which is left",
            100 * PumpCurve.USUAL_SHARE,
            "%",
            "hose and bends",
            "judgement; the watch replaces it (pump.fillTime)"),
        area(),
        new Step("time to fill", floods.fillMinutes(), "min", how, "balance of volumes"));
  }

  List<Step> drain() {
    return List.of(
        area(),
        new Step("drain", watering.pump().drainMm(), "mm", "pump.drain", FILE),
        new Step("drop", watering.pump().liftM(), "m", "pump.lift", FILE),
        new Step(
            "through a plain hole",
            floods.drainMinutes() / HomeBench.THROUGH_PUMP,
            "min",
            "2 A (√(h+z) - √z) / (0.6 a √(2g))",
            "flow through an orifice"),
        new Step(
            "time to drain",
            floods.drainMinutes(),
            "min",
            "times %.0f: back through the stopped pump".formatted(HomeBench.THROUGH_PUMP),
            "judgement; look at the clock once"));
  }

  List<Step> onMinutes() {
    double soak = watering.timer().soakMinutes();
    return List.of(
        new Step("time to fill", floods.fillMinutes(), "min", "see flood.fillMinutes", ""),
        new Step("soak", soak, "min", "timer.soak", FILE),
        new Step(
            "pump on",
            floods.schedule().onMinutes(),
            "min",
            "sum, up to the next step of the timer",
            FILE));
  }

  List<Step> perDay() {
    FloodTimes.Light light =
        BenchFloods.light(bench.household(), sheet.day().plusDays(HomeWater.WEEK / 2));
    WaterSheet.PotLine thirsty =
        sheet.pots().stream()
            .max(Comparator.comparingDouble(WaterSheet.PotLine::floodsPerDay))
            .orElseThrow();
    return List.of(
        new Step(
            "light begins",
            light.onMinute() / 60.0,
            "o'clock",
            "first lamp on after the longest dark; sunrise without lamps",
            FILE + "; sun: Reda and Andreas 2008"),
        new Step(
            "hours of light", light.hours(), "h", "until the last lamp is off, or sunset", FILE),
        new Step(
            "factor on use to be safe for",
            sheet.learned().factor().quantile(BenchFloods.SAFE),
            "",
            "not passed 9 times in 10: median x exp(1.28 spread)",
            "see use.factor.median"),
        new Step(
            "fastest pot " + thirsty.pot(),
            thirsty.floodsPerDay(),
            "a day",
            "its use on the thirstiest day of the week / what may go",
            "see pots[].floodsPerDay"),
        new Step(
            "floods",
            floods.schedule().floodsPerDay(),
            "a day",
            "one when the light begins; the next at the last step of the timer before any pot has used"
                + " what may go, hour by hour; one half an hour before dark when the last is an hour"
                + " or more ago; at night only where a pot would not last",
            "rule: judgement; proven minute by minute in the tests"));
  }

  List<Step> energy() {
    return List.of(
        new Step("power", watering.pump().watts(), "W", "pump.power", FILE),
        new Step("pump runs", floods.schedule().pumpHours(), "h/d", "floods x time on", ""),
        new Step("energy", floods.pumpKwhPerDay(), "kWh/d", "power x hours / 1000", ""));
  }
}
