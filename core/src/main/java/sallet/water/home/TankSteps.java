package sallet.water.home;

import java.util.ArrayList;
import java.util.List;
import sallet.household.Watering;
import sallet.units.Step;
import sallet.water.caution.Cleaning;
import sallet.water.caution.CleaningDose;
import sallet.water.learn.Interval;
import sallet.water.learn.UseFactor;
import sallet.water.reservoir.Demand;
import sallet.water.reservoir.Tank;
import sallet.water.reservoir.TankForecast;
import sallet.water.reservoir.TopUp;
import sallet.water.transpiration.HourlyUse;

/** How level, salt and use of the reservoir come about. */
final class TankSteps {
  private static final String FILE = FloodSteps.FILE;
  private static final String BALANCE = "balance of masses";

  private final HomeBench bench;
  private final HourlyUse use;
  private final TankNow now;
  private final WaterSheet sheet;

  TankSteps(HomeBench bench, HourlyUse use, TankNow now, WaterSheet sheet) {
    this.bench = bench;
    this.use = use;
    this.now = now;
    this.sheet = sheet;
  }

  List<Step> level() {
    Watering w = bench.household().watering();
    String how =
        w.tank().levelL().isPresent()
            ? "reservoir.level"
            : w.readings().levels().isEmpty()
                ? "full: no level was read"
                : "your last reading, what was poured in since, less the learned use since";
    return List.of(new Step("level now", sheet.tank().startL(), "L", how, FILE));
  }

  List<Step> usable() {
    Tank t = sheet.tank().tank();
    List<Step> steps = new ArrayList<>(level());
    steps.add(new Step("one flood", t.floodL(), "L", "see flood.volumeL", ""));
    steps.add(new Step("below the pump", t.sumpL(), "L", "reservoir.sump x its base", FILE));
    steps.add(new Step("in hose and tray", t.hoseL(), "L", "reservoir.hose", FILE));
    steps.add(
        new Step(
            "may go",
            t.usableL(sheet.tank().startL()),
            "L",
            "level - flood - sump - hose: the last flood must still be whole",
            BALANCE));
    return steps;
  }

  List<Step> use(int day) {
    double factor = sheet.learned().factor().median();
    double leaves = use.leavesL(day);
    double open = use.openL(day);
    return List.of(
        new Step(
            "leaves",
            leaves,
            "L",
            "heat balance of every pot and hour, summed",
            "Graamans et al. 2017; see pots[0].useMlPerDay"),
        new Step(
            "wet medium",
            use.potsL(day) - leaves,
            "L",
            "open tops of the pots, 300 s/m in the shade",
            "judgement"),
        new Step("open water", open, "L", "wet tray, and the reservoir without a lid", "judgement"),
        new Step("computed use", use.dayL(day), "L", "sum", ""),
        new Step("factor", factor, "", "see use.factor.median", ""),
        new Step(
            "use", sheet.tank().days().get(day).useL(), "L", "computed use x factor, median", ""));
  }

  private Step used(int day) {
    return new Step(
        "used by that evening", sheet.tank().usedL(day), "L", "days' use summed, median", "");
  }

  List<Step> level(int day) {
    return List.of(
        level().get(0),
        used(day),
        new Step("level", today(day).levelL(), "L", "level now - used, not below 0", BALANCE));
  }

  private TankForecast.Day today(int day) {
    return sheet.tank().days().get(day);
  }

  private List<Step> spread(int day) {
    Demand demand = Demand.of(sheet.tank().usedL(day), sheet.learned().factor().logSd());
    return List.of(
        used(day),
        new Step(
            "spread of the factor",
            sheet.learned().factor().logSd(),
            "",
            "standard deviation of its logarithm",
            "see use.factor.median"),
        new Step(
            "spread of the use",
            demand.logSd(),
            "",
            "√(factor² + 0.15² weather + 0.10² growth)",
            "judgement"));
  }

  List<Step> low(int day) {
    List<Step> steps = new ArrayList<>(List.of(level().get(0)));
    steps.addAll(spread(day));
    steps.add(
        new Step(
            "level that holds 9 times in 10",
            today(day).lowL(),
            "L",
            "level now - used x exp(1.2816 spread), not below 0",
            "lognormal use"));
    return steps;
  }

  List<Step> lasts(int day) {
    List<Step> steps = new ArrayList<>(spread(day));
    steps.add(
        new Step(
            "may go",
            sheet.tank().tank().usableL(sheet.tank().startL()),
            "L",
            "see reservoir.usableL",
            ""));
    steps.add(
        new Step(
            "probability",
            today(day).lasts(),
            "",
            "Φ(ln(may go / used) / spread)",
            "lognormal use"));
    return steps;
  }

  List<Step> conductivity(int day) {
    return List.of(
        new Step("conductivity now", now.msCm(), "mS/cm", "read, or reservoir.ec", FILE),
        level().get(0),
        used(day),
        new Step(
            "salt that goes with a litre",
            sheet.learned().uptake().msCm(),
            "mS/cm",
            "see use.uptakeMsCm",
            ""),
        new Step(
            "conductivity",
            today(day).ecMsCm(),
            "mS/cm",
            "[V0 EC0 - u (V0 - V)] / V",
            BALANCE + "; conductivity as a stand-in for salt"));
  }

  private List<Step> beforePouring() {
    TopUp pour = sheet.topUp().pour();
    double full = sheet.tank().tank().fullL();
    return List.of(
        new Step("full", full, "L", "reservoir.volume", FILE),
        new Step(
            "level by then",
            full - pour.litres(),
            "L",
            "level now - use up to " + sheet.topUp().by() + ", median",
            "the last day on which it is in time 9 times in 10"));
  }

  List<Step> pour() {
    List<Step> steps = new ArrayList<>(beforePouring());
    steps.add(new Step("to pour in", sheet.topUp().pour().litres(), "L", "full - level", BALANCE));
    return steps;
  }

  List<Step> pourStrength() {
    List<Step> steps = new ArrayList<>(pour());
    steps.add(
        new Step(
            "wanted", bench.household().watering().tank().ecMsCm(), "mS/cm", "reservoir.ec", FILE));
    steps.add(
        new Step(
            "strength of what is poured in",
            sheet.topUp().pour().msCm(),
            "mS/cm",
            "(wanted x full - conductivity then x level) / to pour in; below 0.15 plain water",
            BALANCE + "; limit: judgement"));
    return steps;
  }

  private List<Step> bleach(double mgL, double bleachMl) {
    Cleaning c = sheet.cleaning();
    String label = c.told() ? "reservoir.bleach" : "an example: look at the label";
    return List.of(
        new Step(
            "plain water",
            c.litres(),
            "L",
            "flood depth x tray without pots, and what stays below the pump and in the hose; a full reservoir at most",
            ""),
        new Step("chlorine wanted", mgL, "mg/L", "100 to 200", "common practice"),
        new Step("chlorine of the bleach", c.bleachPercent(), "% w/v", label, FILE),
        new Step("bleach", bleachMl, "mL", "mg/L x L / (10 x %)", "1 % w/v is 10 g/L"));
  }

  List<Step> bleachLeast() {
    return bleach(CleaningDose.LEAST_MG_L, sheet.cleaning().leastMl());
  }

  List<Step> bleachMost() {
    return bleach(CleaningDose.MOST_MG_L, sheet.cleaning().mostMl());
  }

  List<Step> factor() {
    UseFactor prior = UseFactor.prior();
    UseFactor f = sheet.learned().factor();
    List<Step> steps = new ArrayList<>();
    steps.add(new Step("before any reading", prior.median(), "", "median", "judgement"));
    steps.add(
        new Step(
            "its spread", prior.logSd(), "", "standard deviation of the logarithm", "judgement"));
    List<Interval> intervals = sheet.learned().intervals();
    for (int i = 0; i < intervals.size(); i++) {
      Interval one = intervals.get(i);
      String name = "interval " + (i + 1);
      steps.add(
          new Step(
              name + ": the level fell by",
              one.lossL(),
              "L",
              "in %.0f days".formatted(one.days()),
              "your readings"));
      steps.add(
          new Step(
              name + ": measured / computed",
              one.ratio(),
              "",
              "computed %.1f L at factor 1; spread %.2f"
                  .formatted(one.computedL(), one.logSd(f.median())),
              "spread of a reading: judgement"));
    }
    steps.add(
        new Step(
            "spread now",
            f.logSd(),
            "",
            "1/√(1/prior² + Σ 1/interval²), widened by 0.03 √days from interval to interval and since the last; less where one reading ends an interval and begins the next, for its error goes out of their sum",
            "normal beliefs about a logarithm (Rasmussen and Williams 2006, eq. 2.24)"));
    steps.add(
        new Step(
            "factor",
            f.median(),
            "",
            "exp of the mean of the logarithms, each weighed by how sure it is; %d readings, pots on the scales with 0.35"
                .formatted(f.readings()),
            "normal beliefs about a logarithm (Rasmussen and Williams 2006, eq. 2.23)"));
    return steps;
  }

  List<Step> uptake() {
    var uptake = sheet.learned().uptake();
    return List.of(
        new Step(
            "before any reading",
            sallet.water.learn.Uptake.prior().msCm(),
            "mS/cm",
            "1.7 to 3.3 g of dry mass a litre, about 3 meq a gram",
            "after Langenfeld et al. 2022; tissue from memory"),
        new Step("its spread now", uptake.sd(), "mS/cm", "meter ± 0.05 mS/cm", "judgement"),
        new Step(
            "salt that goes with a litre",
            uptake.msCm(),
            "mS/cm",
            "(V0 EC0 + poured - V EC) / (V0 + poured - V) of your readings, weighed with what was thought before; %d balances"
                .formatted(uptake.readings()),
            BALANCE));
  }
}
