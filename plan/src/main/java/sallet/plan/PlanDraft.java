package sallet.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Writes whole plants out as a sowing plan: batches, seeds, pots, bowls. */
final class PlanDraft {
  /** A bowl is called short when this share of it is missing. Judgement. */
  private static final double SHORT_SHARE = 0.02;

  private final Instance instance;
  private final List<BlendedLife> lives;
  private final List<Course> courses;

  /**
   * @param courses all courses there were to choose from
   */
  PlanDraft(Instance instance, List<BlendedLife> lives, List<Course> courses) {
    this.instance = instance;
    this.courses = courses;
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

  /**
   * @param proven whether no plan of the grid is 0.1 g a bowl better, tidying apart
   */
  SowingPlan write(
      double bound, boolean proven, double seconds, List<String> steps, Optional<Prices> prices) {
    List<List<String>> pots = PotAssignment.of(lives, instance);
    List<Sowing> sowings = sowings(pots);
    List<Sowing> standing = standing(pots);
    Served served = Served.of(instance, lives);
    SowingPlan.Objective objective = objective(served, bound);
    TaskCalendar calendar = instance.calendar();
    List<BowlWeek> weeks = weeks(served, new Occupancy(instance, standing, sowings));
    return new SowingPlan(
        calendar.from(),
        calendar.slots(),
        instance.margin(),
        weeks,
        standing,
        sowings,
        new PicksNow(
                instance, Stream.concat(standing.stream(), sowings.stream()).toList(), lives, pots)
            .of(),
        objective,
        new SowingPlan.SolverReport(
            lives.isEmpty() ? "empty" : proven ? "proven" : "good", seconds, steps),
        groups(),
        prices.map(p -> p.marginals(instance)).orElse(List.of()),
        new Notes(instance, courses).of(standing, sowings, weeks));
  }

  private List<Sowing> sowings(List<List<String>> pots) {
    Map<String, List<Integer>> batches = new LinkedHashMap<>();
    for (int i = 0; i < lives.size(); i++) {
      Course c = lives.get(i).skeleton().course();
      if (c.standing == Course.NEW) {
        batches.computeIfAbsent(batchName(c), b -> new ArrayList<>()).add(i);
      }
    }
    List<Sowing> sowings = new ArrayList<>();
    batches.forEach(
        (name, members) -> {
          Course c = lives.get(members.get(0)).skeleton().course();
          int plants = members.stream().mapToInt(i -> lives.get(i).count()).sum();
          int cells = Weights.batchCells(plants, c.rule, instance.at().cells());
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

  /** What becomes of the plants that stand already; those no life goes on with are cleared. */
  private List<Sowing> standing(List<List<String>> pots) {
    Map<String, List<Integer>> batches = new LinkedHashMap<>();
    for (int s = 0; s < instance.standing().size(); s++) {
      batches.computeIfAbsent(instance.standing().get(s).batch(), b -> new ArrayList<>()).add(s);
    }
    return batches.values().stream().map(groups -> standing(groups, pots)).toList();
  }

  private Sowing standing(List<Integer> groups, List<List<String>> pots) {
    StandingPlants first = instance.standing().get(groups.get(0));
    return new Sowing(
        first.batch(),
        first.sown(),
        instance.crops().get(first.crop()).name(),
        0,
        0,
        first.emergence(),
        groups.stream().flatMap(s -> courses(s, pots).stream()).toList());
  }

  private List<Sowing.Course> courses(int s, List<List<String>> pots) {
    StandingPlants plants = instance.standing().get(s);
    List<Sowing.Course> own = new ArrayList<>();
    List<String> left = new ArrayList<>(plants.pots());
    for (int i = 0; i < lives.size(); i++) {
      if (lives.get(i).skeleton().course().standing == s) {
        own.add(course(lives.get(i), pots.get(i)));
        left.removeAll(pots.get(i));
      }
    }
    int gone = discarded(s);
    if (gone > 0) {
      own.add(spare(plants, gone, left));
    }
    return own;
  }

  private int discarded(int s) {
    int kept =
        lives.stream()
            .filter(l -> l.skeleton().course().standing == s)
            .mapToInt(BlendedLife::count)
            .sum();
    return instance.standing().get(s).count() - kept;
  }

  /** Plants no bowl needs: their places are free from the first day on. */
  private Sowing.Course spare(StandingPlants plants, int count, List<String> pots) {
    LocalDate today = instance.calendar().from();
    return new Sowing.Course(
        count,
        plants.toNursery().orElse(today),
        plants.toBench().orElse(today),
        Math.max(0, plants.group()),
        pots,
        List.of(),
        today,
        false,
        plants.standingGrams());
  }

  private String batchName(Course c) {
    LocalDate day = instance.calendar().slot(c.sowSlot);
    String crop = c.crop.name().toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    String name =
        String.format(
            Locale.ROOT,
            "%s-%02d-%02d",
            crop.replaceAll("(^-)|(-$)", ""),
            day.getMonthValue(),
            day.getDayOfMonth());
    boolean taken = instance.standing().stream().anyMatch(s -> s.batch().equals(name));
    return taken ? name + "-more" : name;
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
        plants(c).flatMap(StandingPlants::toNursery).orElse(calendar.slot(c.nurserySlot)),
        plants(c).flatMap(StandingPlants::toBench).orElse(calendar.slot(c.benchSlot)),
        c.group,
        pots,
        picks,
        calendar.slot(life.skeleton().endSlot()),
        life.lifted(),
        life.clearedGrams());
  }

  private Optional<StandingPlants> plants(Course c) {
    return c.standing == Course.NEW
        ? Optional.empty()
        : Optional.of(instance.standing().get(c.standing));
  }

  private List<BowlWeek> weeks(Served served, Occupancy occupancy) {
    List<BowlWeek> weeks = new ArrayList<>();
    for (int w = 0; w < instance.calendar().bowls(); w++) {
      double demand = instance.calendar().demandGrams(w);
      double planned = served.kinds().get(w).stream().mapToDouble(BowlWeek.Kind::grams).sum();
      boolean isShort = instance.reachable(w) && planned < (1 - SHORT_SHARE) * demand;
      weeks.add(
          new BowlWeek(
              instance.calendar().bowl(w),
              demand,
              instance.reachable(w),
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
            .filter(l -> l.skeleton().course().standing == Course.NEW)
            .mapToDouble(l -> l.count() * Weights.seedsPerPot(l.skeleton().course().rule))
            .sum();
    double cleared = lives.stream().mapToDouble(l -> l.count() * l.clearedGrams()).sum();
    double discarded =
        IntStream.range(0, instance.standing().size())
            .mapToDouble(s -> discarded(s) * instance.standing().get(s).standingGrams())
            .sum();
    double waste = served.wastedGrams() + cleared + discarded;
    int changes =
        new Promises(instance, courses)
            .changes(
                lives.stream()
                    .collect(
                        Collectors.toMap(BlendedLife::skeleton, BlendedLife::count, Integer::sum)));
    double value =
        Weights.SHORT * served.missingGrams()
            + Weights.WASTE * waste
            + Weights.ONE_KIND * served.excessGrams()
            + Weights.CARRIED * served.carriedGrams()
            + Weights.SEED * seeds
            + instance.changePoints() * changes;
    return new SowingPlan.Objective(
        value,
        bound,
        served.missingGrams(),
        waste,
        served.excessGrams(),
        served.carriedGrams(),
        seeds,
        changes);
  }

  private List<SowingPlan.PotGroup> groups() {
    List<Surroundings.Group> groups = instance.at().groups();
    List<String> names = instance.at().groupNames();
    List<SowingPlan.PotGroup> named = new ArrayList<>();
    for (int g = 0; g < groups.size(); g++) {
      Surroundings.Group group = groups.get(g);
      named.add(
          new SowingPlan.PotGroup(
              names.get(g), group.alike(), group.meanDliMol(), group.siteCm2()));
    }
    return named;
  }
}
