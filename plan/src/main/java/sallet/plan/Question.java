package sallet.plan;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import sallet.crop.Catalogue;
import sallet.crop.Crop;
import sallet.crop.PlaceDays;
import sallet.crop.RoomDays;
import sallet.household.CropWishes;
import sallet.household.Household;
import sallet.household.Nursery;
import sallet.household.PotSites;
import sallet.light.HourlyLight;
import sallet.light.RoomLight;

/** Turns a household into what its places offer and which crops may grow there. */
final class Question {
  /** Factor on assimilation until own weighings exist: median of the prior. Judgement. */
  static final double VIGOUR = 0.85;

  private static final int MOST_GROUPS = 3;

  /** A leaf plant fills no more than a square of 30 cm, cm². Common practice. */
  private static final double WIDEST_PLANT_CM2 = 900;

  /** Pots differ noticeably when light times site differs by more than this share. Judgement. */
  private static final double NEARLY_EQUAL = 0.1;

  private Question() {}

  /** What the places offer from before the oldest standing plant was sown to the last bowl. */
  static Surroundings surroundings(Planner.Request request) {
    LocalDate first =
        request.present().plants().stream()
            .map(Present.Plants::sown)
            .min(Comparator.naturalOrder())
            .filter(day -> day.isBefore(request.from()))
            .orElse(request.from());
    TaskCalendar calendar = calendar(request);
    int before = (int) ChronoUnit.DAYS.between(first, calendar.from());
    return surroundings(request.household(), first, before, before + calendar.days());
  }

  private static TaskCalendar calendar(Planner.Request request) {
    Household household = request.household();
    return new TaskCalendar(
        household.eaters(), household.absences(), request.from(), request.weeks());
  }

  /** The question a request asks, before it is known which bowls anything can serve. */
  static Instance of(Planner.Request request, Surroundings places) {
    Household household = request.household();
    Present present = request.present();
    Surroundings at = places.without(takenPots(present, request.catalogue()));
    TaskCalendar calendar = calendar(request);
    List<Crop> sowable = crops(household.crops(), request.catalogue());
    List<Crop> crops =
        Stream.concat(
                sowable.stream(),
                present.plants().stream().flatMap(p -> request.catalogue().find(p.crop()).stream()))
            .filter(Crop::plannable)
            .distinct()
            .map(c -> learned(c, present))
            .toList();
    List<String> names = crops.stream().map(Crop::name).toList();
    List<StandingPlants> standing = StandingPlants.of(present, crops, at, request.from());
    return new Instance(
        household,
        crops,
        sowable.size(),
        calendar,
        at,
        standing,
        takenCells(present, calendar),
        names.stream().map(n -> present.inHandGrams().getOrDefault(n, 0.0)).toList(),
        present.promises(),
        present.firm() ? Weights.FIRM_CHANGE : Weights.CHANGE,
        names.stream().map(n -> present.growthFactors().getOrDefault(n, VIGOUR)).toList(),
        request.margin(),
        0,
        request.solver());
  }

  /** Pots held by plants the plan knows nothing of or that have no growth model. */
  private static List<String> takenPots(Present present, Catalogue catalogue) {
    Stream<String> unknown =
        present.plants().stream()
            .filter(p -> catalogue.find(p.crop()).filter(Crop::plannable).isEmpty())
            .flatMap(p -> p.pots().stream());
    return Stream.concat(present.otherPots().stream(), unknown).toList();
  }

  private static Crop learned(Crop crop, Present present) {
    Double share = present.usableShares().get(crop.name());
    return share == null ? crop : crop.withUsableShare(share);
  }

  private static List<Integer> takenCells(Present present, TaskCalendar calendar) {
    int[] taken = new int[calendar.slots().size()];
    Set<String> counted = new HashSet<>();
    for (Present.Plants p : present.plants()) {
      if (p.toNursery().isEmpty() && p.toBench().isEmpty() && counted.add(p.batch())) {
        int until = calendar.slotFrom(p.emergence().plusDays(1));
        for (int i = 0; i < (until < 0 ? taken.length : until); i++) {
          taken[i] += p.cells();
        }
      }
    }
    return Arrays.stream(taken).boxed().toList();
  }

  /** The crops wanted, or all that can be planned, without those avoided. */
  static List<Crop> crops(CropWishes wishes, Catalogue catalogue) {
    return catalogue.wanted(wishes);
  }

  /**
   * Light, air and sites of the nursery and of up to three groups of pots.
   *
   * @param first first day whose light is wanted, not after the first of the plan
   * @param before days before those by whose light pots are grouped
   * @param days all days
   */
  static Surroundings surroundings(Household household, LocalDate first, int before, int days) {
    HourlyLight bench = RoomLight.atPots(household, first, days);
    Nursery n = household.nursery();
    PlaceDays nursery =
        RoomDays.inNursery(RoomLight.inNursery(household, first, days), n, household.room().air());
    List<Double> sites =
        PotSites.siteCm2(household.bench()).stream()
            .map(site -> Math.min(site, WIDEST_PLANT_CM2))
            .toList();
    List<PotLight> pots = new ArrayList<>();
    for (int i = 0; i < sites.size(); i++) {
      pots.add(new PotLight(i, meanDliMol(bench, i, before), sites.get(i)));
    }
    List<Surroundings.Group> groups =
        groups(pots).stream().map(g -> group(household, bench, g)).toList();
    return new Surroundings(
        nursery,
        n.cellAreaCm2(),
        n.placeAreaCm2(),
        nursery.meanC(before),
        n.cells(),
        n.places(),
        groups);
  }

  private static double meanDliMol(HourlyLight light, int place, int from) {
    return IntStream.range(from, light.days())
        .mapToDouble(d -> light.dliMol(place, d))
        .average()
        .orElse(0);
  }

  private record PotLight(int index, double dliMol, double siteCm2) {
    /** What growth on the pot goes with: light on its site. */
    double offer() {
      return Math.log(Math.max(0.01, dliMol) * siteCm2);
    }
  }

  private static Surroundings.Group group(
      Household household, HourlyLight bench, List<PotLight> pots) {
    List<Integer> places = pots.stream().map(PotLight::index).sorted().toList();
    return new Surroundings.Group(
        places.stream().map(i -> household.bench().pots().get(i).name()).toList(),
        RoomDays.mean(bench, places, household.room().air()),
        pots.stream().mapToDouble(PotLight::siteCm2).average().orElseThrow(),
        pots.stream().mapToDouble(PotLight::dliMol).average().orElseThrow());
  }

  /** The fewest groups whose pots are nearly equal, at most three; the best offer first. */
  private static List<List<PotLight>> groups(List<PotLight> pots) {
    List<PotLight> sorted =
        pots.stream().sorted(Comparator.comparingDouble(PotLight::offer).reversed()).toList();
    for (int count = 1; ; count++) {
      List<List<PotLight>> cut = cut(sorted, count);
      boolean equal =
          cut.stream()
              .allMatch(
                  g -> g.get(0).offer() - g.get(g.size() - 1).offer() <= Math.log1p(NEARLY_EQUAL));
      if (equal || count == MOST_GROUPS || count == sorted.size()) {
        return cut;
      }
    }
  }

  /** Cuts a sorted list into runs with the least sum of squared spreads. */
  private static List<List<PotLight>> cut(List<PotLight> sorted, int count) {
    int n = sorted.size();
    if (count == 1) {
      return List.of(sorted);
    }
    double best = Double.POSITIVE_INFINITY;
    List<List<PotLight>> answer = List.of();
    for (int first = 1; first <= n - count + 1; first++) {
      List<List<PotLight>> rest = cut(sorted.subList(first, n), count - 1);
      List<List<PotLight>> all = new ArrayList<>();
      all.add(sorted.subList(0, first));
      all.addAll(rest);
      double spread = all.stream().mapToDouble(Question::squaredSpread).sum();
      if (spread < best) {
        best = spread;
        answer = all;
      }
    }
    return answer;
  }

  private static double squaredSpread(List<PotLight> run) {
    double mean = run.stream().mapToDouble(PotLight::offer).average().orElse(0);
    return run.stream().mapToDouble(p -> (p.offer() - mean) * (p.offer() - mean)).sum();
  }

  /** Day the seedlings of a sowing are expected, or empty where the crop does not come up. */
  static Optional<LocalDate> emergence(Crop crop, LocalDate sown, double cellMeanC) {
    OptionalDouble days = crop.germination().daysAt(cellMeanC);
    return days.isPresent()
        ? Optional.of(sown.plusDays((long) Math.ceil(days.getAsDouble() - 1e-9)))
        : Optional.empty();
  }
}
