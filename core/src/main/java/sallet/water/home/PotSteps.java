package sallet.water.home;

import java.util.ArrayList;
import java.util.List;
import sallet.air.MoistAir;
import sallet.units.Step;
import sallet.water.medium.Medium;
import sallet.water.medium.PotWater;
import sallet.water.medium.Retention;
import sallet.water.transpiration.Canopy;
import sallet.water.transpiration.HourlyUse;
import sallet.water.transpiration.LeafBalance;

/** How the numbers of a pot come about. */
final class PotSteps {
  private static final String FILE = FloodSteps.FILE;
  private static final String GRAAMANS = "Graamans et al. 2017, Agricultural Systems 153:138-147";
  private static final int NOON = 12;

  private final HomeBench bench;
  private final BenchDays days;
  private final HourlyUse use;
  private final WaterSheet sheet;

  PotSteps(HomeBench bench, BenchDays days, HourlyUse use, WaterSheet sheet) {
    this.bench = bench;
    this.days = days;
    this.use = use;
    this.sheet = sheet;
  }

  List<Step> full(int pot) {
    PotWater water = bench.water(pot);
    List<Step> steps = new ArrayList<>();
    steps.add(new Step("volume", water.volumeMl(), "mL", "bench.pots", FILE));
    if (water.weighed()) {
      steps.add(
          new Step("full", water.fullMl(), "mL", "mass after a flood - dry mass", "your scales"));
      return steps;
    }
    Medium medium = Medium.named(bench.medium(pot));
    double drained = bench.shape(pot).drainedContent(medium.retention());
    steps.addAll(curve(medium.retention()));
    steps.add(
        new Step("height", bench.shape(pot).heightCm(), "cm", "bench.pots or otherPots", FILE));
    steps.add(
        new Step(
            "water once drained",
            drained,
            "m³/m³",
            "mean of θ(z) over the height",
            "after Milks, Fonteno and Larson 1989, from memory"));
    steps.add(
        new Step("brought back from below", medium.wetting(), "", "share of that", "judgement"));
    steps.add(new Step("full", water.fullMl(), "mL", "volume x water x share", ""));
    return steps;
  }

  private static List<Step> curve(Retention r) {
    String source = "van Genuchten 1980; the points behind the curve: docs/models/water.md";
    return List.of(
        new Step("θr", r.residual(), "m³/m³", "θ(h) = θr + (θs - θr)/(1+(αh)^n)^(1-1/n)", source),
        new Step("θs", r.saturated(), "m³/m³", "all pores", source),
        new Step("α", r.alphaPerCm(), "1/cm", "", source),
        new Step("n", r.n(), "", "", source));
  }

  List<Step> allowed(int pot) {
    PotWater water = bench.water(pot);
    return List.of(
        new Step("full", water.fullMl(), "mL", "see pots[%d].fullMl".formatted(pot), ""),
        new Step(
            "easy water",
            water.easyMl(),
            "mL",
            "volume x (full - θ at 50 cm of pull)",
            "van Genuchten 1980"),
        new Step(
            "of which may go", 100 * water.depletion(), "%", "30 %, stone wool 15 %", "judgement"),
        new Step("never below", water.floorMl(), "mL", "floor of the medium", "judgement"),
        new Step(
            "may go",
            water.allowedMl(),
            "mL",
            "the smaller of easy water x share and full - floor",
            ""));
  }

  List<Step> air(int pot) {
    Medium medium = Medium.named(bench.medium(pot));
    List<Step> steps = new ArrayList<>(curve(medium.retention()));
    steps.add(
        new Step(
            "air after a flood",
            bench.water(pot).airShare(),
            "m³/m³",
            "θs - mean of θ(z) over the pot's height",
            "after Milks, Fonteno and Larson 1989, from memory"));
    return steps;
  }

  /** The hour of noon in full, then the day. */
  List<Step> use(int pot) {
    List<Step> steps = new ArrayList<>(leaf(pot));
    double leaves = use.leavesDayMl(pot, 0);
    steps.add(new Step("leaves, whole day", leaves, "mL", "24 such hours", GRAAMANS));
    steps.add(
        new Step(
            "wet medium",
            use.potDayMl(pot, 0) - leaves,
            "mL",
            "open top of the pot, 300 s/m in the shade",
            "judgement"));
    steps.add(
        new Step("factor", sheet.learned().factor().median(), "", "see use.factor.median", ""));
    steps.add(
        new Step(
            "use",
            sheet.pots().get(pot).useMlPerDay(),
            "mL a day",
            "(leaves + medium) x factor",
            ""));
    return steps;
  }

  private List<Step> leaf(int pot) {
    double crown = days.cover().crownCm2(pot, 0);
    if (crown <= 0) {
      return List.of();
    }
    MoistAir air = days.air().at(0, NOON);
    double lamp = days.light().lampUmol(pot, 0, NOON);
    double day = days.light().daylightUmol(pot, 0, NOON);
    double leaf = days.cover().leafCm2(pot, 0);
    Canopy canopy = Canopy.inRoom(lamp, day, leaf / crown, bench.around(0).boundarySM());
    LeafBalance balance = LeafBalance.exact(canopy, air);
    return List.of(
        new Step("leaf area", leaf, "cm²", "growth model, what you weighed and picked", "crop"),
        new Step("crown", crown, "cm²", "ground its leaves cover on their site", "crop"),
        new Step(
            "leaf area index",
            canopy.leafAreaIndex(),
            "",
            "leaf / crown, 3 at most: deeper leaves hardly exchange water",
            GRAAMANS),
        new Step("air at noon", air.temperatureC(), "°C", "room.air and your readings", FILE),
        new Step("its humidity", air.humidityPercent(), "%", "likewise", FILE),
        new Step("lamp light at noon", lamp, "µmol/m²/s", "see sallet light", ""),
        new Step("daylight at noon", day, "µmol/m²/s", "see sallet light", ""),
        new Step(
            "absorbed",
            canopy.absorbedWm2(),
            "W/m²",
            "0.95 (lamp/4.9 + 1.3 daylight/4.57)",
            GRAAMANS + "; McCree 1972; 1.3: judgement"),
        new Step(
            "leaf pores",
            canopy.stomataSM(),
            "s/m",
            "60 (1500 + PPFD)/(200 + PPFD)",
            GRAAMANS + ", equation 9"),
        new Step("air at the leaf", canopy.boundarySM(), "s/m", "200 still, 100 fan", GRAAMANS),
        new Step(
            "leaf warmer than air",
            balance.leafMinusAirC(),
            "K",
            "absorbed - long-wave - warmth given off - water's heat = 0",
            GRAAMANS + ", equations 4 to 7; long-wave 5.7 W/m²/K added"),
        new Step(
            "leaves at noon",
            balance.waterGM2H() * crown / 1e4,
            "mL/h",
            "LAI (χ leaf - χ air)/(rs + ra) x crown",
            GRAAMANS + ", equation 6"));
  }

  List<Step> floods(int pot) {
    double perDay = sheet.pots().get(pot).floodsPerDay();
    double allowed = bench.water(pot).allowedMl();
    return List.of(
        new Step(
            "use to be safe for",
            perDay * allowed,
            "mL a day",
            "each hour as thirsty as on the thirstiest of seven days, at a factor of %.2f that is not passed 9 times in 10"
                .formatted(sheet.learned().factor().quantile(BenchFloods.SAFE)),
            "see pots[%d].useMlPerDay".formatted(pot)),
        new Step("may go", allowed, "mL", "see pots[%d].allowedMl".formatted(pot), ""),
        new Step("floods it alone would need", perDay, "a day", "use / may go", ""));
  }

  List<Step> survives(int pot) {
    PotWater water = bench.water(pot);
    return List.of(
        new Step("full", water.fullMl(), "mL", "see pots[%d].fullMl".formatted(pot), ""),
        new Step("wilts at", water.wiltMl(), "mL", "θ at 100 cm of pull x volume", "judgement"),
        new Step(
            "time until it wilts",
            sheet.pots().get(pot).survivesHours(),
            "h",
            "from a flood at the worst hour, hour by hour, at a use not passed 9 times in 10; 72 at most",
            "balance of volumes"));
  }
}
