package sallet.learn;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import sallet.cases.CaseFolder;
import sallet.cases.CaseRow;
import sallet.cases.Checks;
import sallet.cases.Outcome;
import sallet.cases.RowCheck;
import sallet.crop.SeedCount;
import sallet.crop.SeedLot;
import sallet.learn.EmergencePace.Look;
import sallet.learn.LinearGaussian.Posterior;
import sallet.learn.LinearGaussian.Reading;
import sallet.learn.LinearGaussian.Term;

/** Learning from counts, weighings and looks against its check file. */
public final class PlanChecks implements Checks {
  private static final Pattern NAMED = Pattern.compile("(\\w+) ?= ?([-+.\\w]+(?:,[-+.\\d]+)*)");
  private static final Pattern INTERVAL = Pattern.compile("\\(([-.\\d]+),([-.\\w]+)\\)");
  private static final Pattern LOT =
      Pattern.compile("Beta\\((\\d+),(\\d+)\\) (?:obs (\\d+)/(\\d+)|no obs) need (\\d+) q=(.*)");

  @Override
  public Map<String, RowCheck> byFile() {
    return Map.of("plan/learn_checks.csv", PlanChecks::check);
  }

  private static List<Outcome> check(CaseRow row, CaseFolder folder) {
    return switch (row.text("method")) {
      case "normal_known_sd_log_rate" -> compare(row, normal(row.text("input")));
      case "linear_gaussian_hierarchical" -> compare(row, hierarchical(row.text("input")));
      case "interval_censored_lognormal_time" -> compare(row, censored(row.text("input")));
      case "min_seeds_binomial" -> compare(row, seeds(row.text("input")));
      case "beta_binomial_germination" -> compare(row, lot(row.text("input")));
      case "sbc_chi2" ->
          List.of(
              Outcome.relative(
                  "chi square",
                  row.number("expected"),
                  CalibrationRanks.LARGEST_CHI_SQUARE,
                  row.number("tolerance")));
      // Nothing in Sallet decides by a newsvendor's ratio: the margin follows the regrowth seen.
      case "newsvendor" -> List.of();
      default -> throw new IllegalArgumentException("unknown method " + row.text("method"));
    };
  }

  private static List<Outcome> compare(CaseRow row, Map<String, List<Double>> ours) {
    List<Outcome> outcomes = new ArrayList<>();
    named(row.text("expected"))
        .forEach(
            (name, expected) -> {
              List<Double> found = ours.getOrDefault(name, List.of());
              for (int i = 0; i < expected.size(); i++) {
                outcomes.add(
                    Outcome.relative(
                        name + (i == 1 ? " sd" : ""),
                        expected.get(i),
                        i < found.size() ? found.get(i) : Double.NaN,
                        row.number("tolerance")));
              }
            });
    return outcomes;
  }

  private static Map<String, List<Double>> named(String text) {
    Map<String, List<Double>> values = new LinkedHashMap<>();
    Matcher one = NAMED.matcher(text);
    while (one.find()) {
      values.put(
          one.group(1), Arrays.stream(one.group(2).split(",", -1)).map(Double::valueOf).toList());
    }
    return values;
  }

  private static double one(Map<String, List<Double>> values, String name) {
    return values.getOrDefault(name, List.of(Double.NaN)).get(0);
  }

  private static Map<String, List<Double>> normal(String input) {
    Map<String, List<Double>> given = named(input);
    double before = one(given, "m0");
    LinearGaussian unknowns = new LinearGaussian();
    List<Term> term = List.of(new Term(unknowns.unknown(one(given, "s0")), 1));
    Posterior after =
        unknowns.after(
            given.getOrDefault("obs", List.of()).stream()
                .map(obs -> new Reading(term, obs - before, one(given, "s")))
                .toList());
    return Map.of("mean", List.of(before + after.mean(term)), "sd", List.of(sd(after, term)));
  }

  private static double sd(Posterior after, List<Term> term) {
    return Math.sqrt(after.variance(term));
  }

  /**
   * Room, crops, batches and the two kinds of light as unknowns of one system; a crop is told with
   * its room.
   */
  private static Map<String, List<Double>> hierarchical(String input) {
    Map<String, List<Double>> given = named(input.substring(0, input.indexOf(';')));
    LinearGaussian unknowns = new LinearGaussian();
    Map<String, Integer> numbers = new HashMap<>();
    numbers.put("mu", unknowns.unknown(one(given, "smu")));
    numbers.put("kday", unknowns.unknown(one(given, "skappa")));
    numbers.put("klamp", unknowns.unknown(one(given, "skappa")));
    Set<String> crops = new HashSet<>();
    List<Reading> readings = new ArrayList<>();
    for (String row : input.substring(input.lastIndexOf(": ") + 2).split("\\|", -1)) {
      String[] cells = row.split(" ", -1);
      double day = Double.parseDouble(cells[3]) * one(given, "elasticity");
      crops.add(cells[0]);
      numbers.computeIfAbsent(cells[0], crop -> unknowns.unknown(one(given, "tau")));
      numbers.computeIfAbsent(cells[1], batch -> unknowns.unknown(one(given, "sbatch")));
      readings.add(
          new Reading(
              List.of(
                  term(numbers, "mu", 1),
                  term(numbers, cells[0], 1),
                  term(numbers, cells[1], 1),
                  term(numbers, "kday", day),
                  term(numbers, "klamp", one(given, "elasticity") - day)),
              Double.parseDouble(cells[2]),
              one(given, "seps")));
    }
    Posterior after = unknowns.after(readings);
    Map<String, List<Double>> ours = new HashMap<>();
    ours.put("logml", List.of(after.logEvidence()));
    numbers.forEach(
        (name, number) -> {
          List<Term> own = List.of(new Term(number, 1));
          boolean crop = crops.contains(name);
          List<Term> term = crop ? List.of(term(numbers, "mu", 1), own.get(0)) : own;
          ours.put(name, List.of(after.mean(term), sd(after, term)));
        });
    return ours;
  }

  private static Term term(Map<String, Integer> numbers, String name, double weight) {
    return new Term(numbers.getOrDefault(name, -1), weight);
  }

  private static Map<String, List<Double>> censored(String input) {
    Map<String, List<Double>> given = named(input.substring(0, input.indexOf("intervals")));
    List<Look> looks = new ArrayList<>();
    Matcher interval = INTERVAL.matcher(input);
    while (interval.find()) {
      double by =
          interval.group(2).equals("inf")
              ? Double.POSITIVE_INFINITY
              : Double.parseDouble(interval.group(2));
      looks.add(new Look(one(given, "T0"), Double.parseDouble(interval.group(1)), by));
    }
    EmergencePace.Pace pace = EmergencePace.of(looks, one(given, "s0"), one(given, "s"));
    return Map.of("mean", List.of(pace.mean()), "sd", List.of(pace.sd()));
  }

  /** A share known exactly is a lot believed with immense strength. */
  private static Map<String, List<Double>> seeds(String input) {
    Map<String, List<Double>> given = named(input);
    int plants = (int) one(given, "m");
    double share = one(given, "p");
    int n = SeedCount.cellsForKnownShare(plants, share, one(given, "q"));
    SeedLot sure = new SeedLot(1e12 * share, 1e12 * (1 - share));
    return Map.of("n", List.of((double) n), "P", List.of(sure.atLeast(plants, n)));
  }

  private static Map<String, List<Double>> lot(String input) {
    Matcher given = LOT.matcher(input);
    if (!given.matches() || Double.parseDouble(given.group(6)) != SeedCount.CERTAINTY) {
      throw new IllegalArgumentException("not a lot of seed at the usual certainty: " + input);
    }
    SeedLot lot =
        new SeedLot(Double.parseDouble(given.group(1)), Double.parseDouble(given.group(2)));
    if (given.group(3) != null) {
      lot = lot.seen(Integer.parseInt(given.group(3)), Integer.parseInt(given.group(4)));
    }
    int plants = Integer.parseInt(given.group(5));
    int n = SeedCount.cellsFor(plants, lot);
    return Map.of(
        "mean", List.of(lot.mean()),
        "lo05", List.of(LearnedShare.quantile(lot, 0.05)),
        "hi95", List.of(LearnedShare.quantile(lot, 0.95)),
        "n", List.of((double) n),
        "P", List.of(lot.atLeast(plants, n)));
  }
}
