package sallet.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import sallet.crop.SeedCount;

/** Writes whole plants out as a sowing plan: batches, seeds, pots, bowls. */
final class PlanDraft {
  /** A bowl is called short when this share of it is missing. Judgement. */
  private static final double SHORT_SHARE = 0.02;

  private final Instance instance;
  private final List<BlendedLife> lives;

  PlanDraft(Instance instance, List<BlendedLife> lives) {
    this.instance = instance;
    this.lives =
        lives.stream()
            .sorted(
                Comparator.comparingInt((BlendedLife l) -> l.skeleton().course().sowSlot)
                    .thenComparing(l -> l.skeleton().course().cropIndex)
                    .thenComparing(l -> l.skeleton().course().benchSlot)
                    .thenComparing(l -> l.skeleton().course().group)
                    .thenComparing(l -> l.skeleton().end()))
            .toList();
  }

  SowingPlan write(
      double bound, double seconds, List<String> steps, Prices prices, List<Course> courses) {
    List<Sowing> sowings = sowings();
    Served served = Served.of(instance, lives);
    SowingPlan.Objective objective = objective(served, bound);
    TaskCalendar calendar = instance.calendar();
    return new SowingPlan(
        calendar.from(),
        calendar.slots(),
        instance.margin(),
        weeks(served, new Occupancy(instance, sowings)),
        sowings,
        objective,
        new SowingPlan.SolverReport(status(objective), seconds, steps),
        groups(),
        marginals(prices),
        new Notes(instance, courses).of(sowings));
  }

  private String status(SowingPlan.Objective objective) {
    if (lives.isEmpty()) {
      return "empty";
    }
    double worth = Planner.WORTH_A_DIVE * instance.calendar().bowls();
    return objective.value() - objective.gridBound() <= worth ? "proven" : "good";
  }

  private List<Sowing> sowings() {
    List<List<String>> pots = PotAssignment.of(lives, instance.at());
    Map<String, List<Integer>> batches = new LinkedHashMap<>();
    for (int i = 0; i < lives.size(); i++) {
      Course c = lives.get(i).skeleton().course();
      batches.computeIfAbsent(batchName(c), b -> new ArrayList<>()).add(i);
    }
    List<Sowing> sowings = new ArrayList<>();
    batches.forEach(
        (name, members) -> {
          Course c = lives.get(members.get(0)).skeleton().course();
          int plants = members.stream().mapToInt(i -> lives.get(i).count()).sum();
          int cells =
              Math.min(SeedCount.cellsFor(plants, c.rule.usableShare()), instance.at().cells());
          sowings.add(
              new Sowing(
                  name,
                  instance.calendar().slot(c.sowSlot),
                  c.crop.name(),
                  cells * c.rule.plantsPerPot(),
                  cells,
                  c.emergence,
                  members.stream().map(i -> course(lives.get(i), pots.get(i))).toList()));
        });
    return sowings;
  }

  private String batchName(Course c) {
    LocalDate day = instance.calendar().slot(c.sowSlot);
    String crop = c.crop.name().toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    return String.format(
        Locale.ROOT,
        "%s-%02d-%02d",
        crop.replaceAll("(^-)|(-$)", ""),
        day.getMonthValue(),
        day.getDayOfMonth());
  }

  private Sowing.Course course(BlendedLife life, List<String> pots) {
    Course c = life.skeleton().course();
    TaskCalendar calendar = instance.calendar();
    List<Sowing.Pick> picks = new ArrayList<>();
    for (int t = 0; t < life.shares().size(); t++) {
      if (life.shares().get(t) > 0) {
        picks.add(
            new Sowing.Pick(
                calendar.bowl(c.bowls[t]), life.shares().get(t), life.gramsEach().get(t)));
      }
    }
    return new Sowing.Course(
        life.count(),
        calendar.slot(c.nurserySlot),
        calendar.slot(c.benchSlot),
        c.group,
        pots,
        picks,
        calendar.slot(life.skeleton().endSlot()),
        life.lifted(),
        life.clearedGrams());
  }

  private List<BowlWeek> weeks(Served served, Occupancy occupancy) {
    List<BowlWeek> weeks = new ArrayList<>();
    for (int w = 0; w < instance.calendar().bowls(); w++) {
      double demand = instance.calendar().demandGrams(w);
      double planned = served.kinds().get(w).stream().mapToDouble(BowlWeek.Kind::grams).sum();
      boolean isShort = instance.reachable().get(w) && planned < (1 - SHORT_SHARE) * demand;
      weeks.add(
          new BowlWeek(
              instance.calendar().bowl(w),
              demand,
              instance.reachable().get(w),
              served.harvestGrams().get(w),
              planned,
              served.kinds().get(w),
              isShort ? occupancy.fullBefore(w) : List.of()));
    }
    return weeks;
  }

  private SowingPlan.Objective objective(Served served, double bound) {
    double seeds =
        lives.stream()
            .mapToDouble(l -> l.count() * Weights.seedsPerPot(l.skeleton().course().rule))
            .sum();
    double cleared = lives.stream().mapToDouble(l -> l.count() * l.clearedGrams()).sum();
    double waste = served.wastedGrams() + cleared;
    double value =
        Weights.SHORT * served.missingGrams()
            + Weights.WASTE * waste
            + Weights.ONE_KIND * served.excessGrams()
            + Weights.CARRIED * served.carriedGrams()
            + Weights.SEED * seeds;
    return new SowingPlan.Objective(
        value,
        bound,
        served.missingGrams(),
        waste,
        served.excessGrams(),
        served.carriedGrams(),
        seeds);
  }

  private List<SowingPlan.PotGroup> groups() {
    List<Surroundings.Group> groups = instance.at().groups();
    List<SowingPlan.PotGroup> named = new ArrayList<>();
    for (int g = 0; g < groups.size(); g++) {
      Surroundings.Group group = groups.get(g);
      named.add(
          new SowingPlan.PotGroup(
              GROUP_NAMES.get(groups.size() - 1).get(g),
              group.pots(),
              group.meanDliMol(),
              group.siteCm2()));
    }
    return named;
  }

  private List<SowingPlan.Marginal> marginals(Prices prices) {
    List<SowingPlan.Marginal> all = new ArrayList<>();
    all.add(marginal("cell", prices.cellPoints()));
    all.add(marginal("nursery place", prices.nurseryPoints()));
    List<String> names = GROUP_NAMES.get(instance.at().groups().size() - 1);
    for (int g = 0; g < names.size(); g++) {
      String pot = names.size() == 1 ? "pot" : "pot like the " + names.get(g);
      all.add(marginal(pot, prices.potPoints(g)));
    }
    all.sort(Comparator.comparingDouble(SowingPlan.Marginal::gramsPerWeek).reversed());
    return all;
  }

  private SowingPlan.Marginal marginal(String place, double points) {
    return new SowingPlan.Marginal(place, points / Weights.SHORT / instance.calendar().bowls());
  }

  private static final List<List<String>> GROUP_NAMES =
      List.of(List.of("all"), List.of("better", "weaker"), List.of("best", "middle", "weakest"));
}
