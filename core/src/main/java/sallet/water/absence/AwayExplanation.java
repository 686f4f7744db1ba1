package sallet.water.absence;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import sallet.household.Household;
import sallet.units.Step;
import sallet.water.WaterFault;
import sallet.water.home.HomeBench;
import sallet.water.reservoir.Demand;
import sallet.water.reservoir.Tank;

/** How the numbers of an absence come about, step by step, by their path in the JSON. */
public final class AwayExplanation {
  private static final String LOGNORMAL = "lognormal use";
  private static final String BALANCE = "balance of masses";
  private static final String FILE = "your file or our default";

  private final AwaySheet sheet;
  private final Tank tank;
  private final Map<String, Supplier<List<Step>>> told = new LinkedHashMap<>();

  private AwayExplanation(Household household, AwaySheet sheet) {
    this.sheet = sheet;
    this.tank = HomeBench.of(household).tank();
    told.put("departure.levelL", this::departure);
    told.put("departure.ecMsCm", this::departureStrength);
    outlook("asItStands.", sheet.asItStands(), true);
    outlook("prepared.", sheet.prepared(), sheet.verdict() == AwaySheet.Verdict.SAFE);
    for (int i = 0; i < sheet.steps().size(); i++) {
      sallet.water.absence.Step step = sheet.steps().get(i);
      if (step.useChange() != 0) {
        told.put("steps[" + i + "].gainL", () -> gain(step));
        told.put("steps[" + i + "].useChange", () -> change(step));
        told.put("steps[" + i + "].lastsAlone", () -> alone(step));
      }
    }
  }

  /**
   * How a number comes about.
   *
   * @param household the household of the sheet
   * @param path such as "asItStands.lastsProbability"
   * @throws WaterFault when nothing on the sheet has that path
   */
  public static List<Step> of(Household household, AwaySheet sheet, String path) {
    Map<String, Supplier<List<Step>>> told = new AwayExplanation(household, sheet).told;
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
                              told.keySet().stream()
                                  .filter(name -> !name.matches(".*\\[[1-9].*"))
                                  .toList())))));
    }
    return steps.get();
  }

  /** Its numbers, with the reservoir as it is now or as it is once prepared. */
  private void outlook(String at, Outlook o, boolean now) {
    told.put(at + "useL", () -> use(o));
    told.put(at + "useL95", () -> use95(o));
    told.put(at + "usableL", () -> usable(o, now ? sheet.departure().levelL() : sheet.startL()));
    told.put(at + "lastsProbability", () -> lasts(o, now));
    told.put(at + "returnMsCm", () -> salt(o, now));
  }

  private double used() {
    return sheet.departure().usedL().stream().mapToDouble(Double::doubleValue).sum();
  }

  private List<Step> departure() {
    Departure d = sheet.departure();
    String since =
        d.toppedUp().isEmpty()
            ? "today: read, stated or full"
            : "full on " + d.toppedUp().get(d.toppedUp().size() - 1) + ", a bowl day";
    return List.of(
        new Step("level to begin with", d.levelL() + used(), "L", since, FILE),
        new Step(
            "used until the morning of leaving",
            used(),
            "L",
            "heat balance of every pot and hour x factor, median, %d days"
                .formatted(d.usedL().size()),
            "Graamans et al. 2017"),
        new Step("level on leaving", d.levelL(), "L", "difference, not below 0", BALANCE));
  }

  private List<Step> departureStrength() {
    List<Step> steps = new ArrayList<>(departure());
    steps.add(uptake());
    steps.add(
        new Step(
            "conductivity on leaving",
            sheet.departure().msCm(),
            "mS/cm",
            "[V0 EC0 - u (V0 - V)] / V day by day; a top-up brings it back to reservoir.ec",
            BALANCE));
    return steps;
  }

  private Step uptake() {
    return new Step(
        "salt that goes with a litre",
        sheet.learned().uptake().msCm(),
        "mS/cm",
        "0.5 to 1.0 before readings",
        "see ./sallet water --explain use.uptakeMsCm");
  }

  private List<Step> use(Outlook o) {
    double factor = sheet.learned().factor().median();
    double median = o.demand().medianL();
    return List.of(
        new Step(
            "computed use",
            factor == 0 ? 0 : median / factor,
            "L",
            "heat balance of every pot and hour, wet medium and open water, over %d days"
                .formatted(sheet.days()),
            "Graamans et al. 2017"),
        new Step("factor", factor, "", "learned", "see ./sallet water --explain use.factor.median"),
        new Step("use", median, "L", "product, median", ""));
  }

  private Step spread(double logSd) {
    return new Step(
        "spread of the use", logSd, "", "√(factor² + 0.15² weather + 0.10² growth)", "judgement");
  }

  private List<Step> use95(Outlook o) {
    return List.of(
        new Step("use", o.demand().medianL(), "L", "median", "see useL"),
        spread(o.demand().logSd()),
        new Step(
            "enough 95 times in 100",
            o.demand().litresFor(Outlook.SAFE),
            "L",
            "use x exp(1.6449 spread)",
            LOGNORMAL));
  }

  private List<Step> usable(Outlook o, double levelL) {
    double brought = o.usableL() - tank.usableL(levelL);
    return List.of(
        new Step("level on leaving", levelL, "L", "see departure.levelL; full once filled", ""),
        new Step("one flood", tank.floodL(), "L", "must be whole to the end", FILE),
        new Step("below the pump and in the hose", tank.sumpL() + tank.hoseL(), "L", "", FILE),
        new Step("brought or connected", brought, "L", "visits or a second container", ""),
        new Step("may go", o.usableL(), "L", "level - flood - rest + brought", BALANCE));
  }

  private List<Step> lasts(Outlook o, boolean now) {
    if (!now && !sheet.visits().isEmpty()) {
      return List.of(
          new Step(
              "probability",
              o.lasts(),
              "",
              "least from one filling to the next, each Φ(ln(may go / used) / spread)",
              LOGNORMAL));
    }
    double before = now ? used() : 0;
    Demand since = Demand.of(before + o.demand().medianL(), sheet.learned().factor().logSd());
    return List.of(
        new Step("used before leaving", before, "L", "since the level was sure", ""),
        new Step("used while away", o.demand().medianL(), "L", "median", "see useL"),
        spread(since.logSd()),
        new Step(
            "may go",
            o.usableL() + before,
            "L",
            "level when it was sure - flood - rest + brought",
            "see usableL"),
        new Step(
            "probability", o.lasts(), "", "Φ(ln(may go / all that is used) / spread)", LOGNORMAL));
  }

  private List<Step> salt(Outlook o, boolean now) {
    double level = now ? sheet.departure().levelL() : sheet.startL();
    double msCm = now ? sheet.departure().msCm() : sheet.startMsCm();
    return List.of(
        new Step("level on leaving", level, "L", "", "see departure.levelL"),
        new Step("conductivity on leaving", msCm, "mS/cm", "", "see departure.ecMsCm"),
        new Step("used while away", o.demand().medianL(), "L", "median", "see useL"),
        new Step("brought or connected", o.usableL() - tank.usableL(level), "L", "plain water", ""),
        uptake(),
        new Step(
            "conductivity on return",
            o.returnMsCm(),
            "mS/cm",
            "[V0 EC0 - u (V0 + brought - V)] / V",
            BALANCE));
  }

  private List<Step> gain(sallet.water.absence.Step step) {
    double before = sheet.asItStands().demand().medianL();
    return List.of(
        new Step("use without it", before, "L", "median", "see asItStands.useL"),
        new Step("use with it", before - step.gainL(), "L", "the same reckoned again", ""),
        new Step("saved", step.gainL(), "L", "difference", ""));
  }

  private List<Step> change(sallet.water.absence.Step step) {
    List<Step> steps = new ArrayList<>(gain(step));
    steps.add(new Step("change", step.useChange(), "", "-saved / use without it", ""));
    return steps;
  }

  private List<Step> alone(sallet.water.absence.Step step) {
    Demand after =
        Demand.of(
            sheet.asItStands().demand().medianL() - step.gainL(), sheet.learned().factor().logSd());
    return List.of(
        new Step("use with it", after.medianL(), "L", "median", "see gainL"),
        spread(after.logSd()),
        new Step("may go", tank.usableL(tank.fullL()), "L", "from a full reservoir", BALANCE),
        new Step("probability", step.lastsAlone(), "", "Φ(ln(may go / used) / spread)", LOGNORMAL));
  }
}
