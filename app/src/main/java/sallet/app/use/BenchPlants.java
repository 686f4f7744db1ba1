package sallet.app.use;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import sallet.crop.Catalogue;
import sallet.crop.Crop;
import sallet.crop.Stay;
import sallet.household.Household;
import sallet.learn.BenchLife;
import sallet.learn.GrowingPlaces;
import sallet.learn.Stage;
import sallet.learn.Standing;
import sallet.learn.StandingBatch;
import sallet.learn.StandingGroup;
import sallet.plan.Sowing;
import sallet.plan.SowingPlan;
import sallet.water.transpiration.StandingPlant;
import sallet.water.transpiration.StandingPlant.Known;

/** The plants of the bench, each in its own pot's light: those a journal tells, and a plan's. */
final class BenchPlants {
  private final Household household;
  private final Catalogue catalogue;
  private final Standing standing;
  private final LocalDate last;
  private final GrowingPlaces places;

  private BenchPlants(
      Household household, Catalogue catalogue, Standing standing, LocalDate from, LocalDate last) {
    this.household = household;
    this.catalogue = catalogue;
    this.standing = standing;
    this.last = last;
    this.places = GrowingPlaces.of(household, from, (int) ChronoUnit.DAYS.between(from, last) + 1);
  }

  /**
   * All plants that stand or stood on the bench, and those of a plan that will.
   *
   * @param plan made from its first day on for what stands then
   * @param standing what stands that day, and what stood before
   * @param until first day that need not be known any more
   */
  static List<StandingPlant> of(
      SowingPlan plan,
      Household household,
      Catalogue catalogue,
      Standing standing,
      LocalDate until) {
    LocalDate last =
        plan.batches().stream()
            .flatMap(s -> s.courses().stream())
            .map(Sowing.Course::end)
            .max(LocalDate::compareTo)
            .filter(until::isBefore)
            .orElse(until);
    LocalDate from =
        standing.lives().stream()
            .map(BenchLife::emergence)
            .min(LocalDate::compareTo)
            .filter(plan.from()::isAfter)
            .orElse(plan.from());
    for (StandingBatch batch : standing.batches()) {
      from = batch.sown().isBefore(from) ? batch.sown() : from;
    }
    BenchPlants bench = new BenchPlants(household, catalogue, standing, from, last);
    List<StandingPlant> plants = new ArrayList<>(bench.told(plan));
    for (Sowing sowing : plan.sowings()) {
      for (Sowing.Course course : sowing.courses()) {
        course.pots().forEach(pot -> plants.add(bench.sown(sowing, course, pot)));
      }
    }
    return plants;
  }

  /**
   * Plants the journal tells, going on as the plan has it. Those it leaves out stay, and so do
   * those no bowl needs until their pot gets another plant: water is not reckoned on plants being
   * thrown away.
   */
  private List<StandingPlant> told(SowingPlan plan) {
    List<StandingPlant> plants = new ArrayList<>();
    Set<BenchLife> planned = new HashSet<>();
    for (Sowing batch : plan.standing()) {
      for (Sowing.Course course : batch.courses()) {
        for (String pot : course.pots()) {
          Optional<BenchLife> life = life(batch.batch(), pot);
          life.ifPresent(planned::add);
          plants.add(
              life.map(l -> lived(l, picks(course), end(plan, course, pot)))
                  .orElseGet(() -> raised(batch, course, pot)));
        }
      }
    }
    standing.lives().stream()
        .filter(life -> !planned.contains(life))
        .forEach(life -> plants.add(lived(life, List.of(), life.gone().orElse(last))));
    return plants;
  }

  private LocalDate end(SowingPlan plan, Sowing.Course course, String pot) {
    return course.spare(plan.from())
        ? plan.batches().stream()
            .flatMap(batch -> batch.courses().stream())
            .filter(c -> c.pots().contains(pot) && c.toBench().isAfter(plan.from()))
            .map(Sowing.Course::toBench)
            .min(LocalDate::compareTo)
            .orElse(last)
        : course.end();
  }

  private Optional<BenchLife> life(String batch, String pot) {
    return standing.lives().stream()
        .filter(l -> l.gone().isEmpty() && l.batch().equals(batch) && l.pot().equals(pot))
        .findFirst();
  }

  private StandingPlant lived(BenchLife life, List<StandingPlant.Pick> picks, LocalDate end) {
    return new StandingPlant(
        indexOf(life.pot()),
        life.crop(),
        group(life).map(this::vigour).orElseGet(() -> vigour(life.crop())),
        life.emergence(),
        List.of(
            new Stay(life.emergence(), places.nursery(), places.placeCm2()),
            inPot(life.pot(), life.onBench())),
        picks,
        life.onBench(),
        end,
        Optional.of(new Known(life.emergence().plusDays(1), life.evenings())));
  }

  private Optional<StandingGroup> group(BenchLife life) {
    return standing.batches().stream()
        .filter(batch -> batch.batch().equals(life.batch()))
        .flatMap(batch -> batch.groups().stream())
        .filter(group -> group.pots().contains(life.pot()) && life.gone().isEmpty())
        .findFirst();
  }

  /** A plant of the seed shelf that will come into a pot. */
  private StandingPlant raised(Sowing batch, Sowing.Course course, String pot) {
    Optional<StandingGroup> group =
        standing.batches().stream()
            .filter(b -> b.batch().equals(batch.batch()))
            .flatMap(b -> b.groups().stream())
            .filter(g -> onShelf(g, course))
            .findFirst();
    LocalDate tomorrow = standing.today().plusDays(1);
    boolean up = batch.emergence().isBefore(tomorrow);
    StandingPlant plant = sown(batch, course, pot);
    return new StandingPlant(
        plant.pot(),
        plant.crop(),
        group.map(this::vigour).orElse(plant.vigour()),
        plant.emergence(),
        plant.stays(),
        plant.picks(),
        plant.onBench(),
        plant.until(),
        group.filter(g -> up).map(g -> new Known(tomorrow, List.of(g.plant()))));
  }

  private boolean onShelf(StandingGroup group, Sowing.Course course) {
    boolean inNursery = course.toNursery().isBefore(standing.today());
    return group.stage() != Stage.BENCH && inNursery == (group.stage() == Stage.NURSERY);
  }

  /** A plant of a batch that is grown from seed. */
  private StandingPlant sown(Sowing sowing, Sowing.Course course, String pot) {
    Crop crop = catalogue.find(sowing.crop()).orElseThrow();
    List<Stay> stays = new ArrayList<>();
    stays.add(new Stay(sowing.date(), places.nursery(), places.cellCm2()));
    if (course.throughNursery()) {
      stays.add(new Stay(course.toNursery(), places.nursery(), places.placeCm2()));
    }
    stays.add(inPot(pot, course.toBench()));
    return new StandingPlant(
        indexOf(pot),
        crop,
        vigour(crop),
        sowing.emergence(),
        stays,
        picks(course),
        course.toBench(),
        course.end());
  }

  private Stay inPot(String pot, LocalDate from) {
    GrowingPlaces.PotPlace place = Objects.requireNonNull(places.pots().get(pot), pot);
    return new Stay(from, place.days(), place.siteCm2());
  }

  private static List<StandingPlant.Pick> picks(Sowing.Course course) {
    return course.picks().stream()
        .filter(pick -> pick.share() > 0 && pick.share() < 1)
        .map(pick -> new StandingPlant.Pick(pick.date(), pick.share()))
        .toList();
  }

  private double vigour(Crop crop) {
    return standing.learned().growthOf(crop).median();
  }

  private double vigour(StandingGroup group) {
    return group.vigour() * Math.pow(standing.learned().regrowth().median(), group.picks().size());
  }

  private int indexOf(String name) {
    return IntStream.range(0, household.bench().pots().size())
        .filter(i -> household.bench().pots().get(i).name().equals(name))
        .findFirst()
        .orElseThrow();
  }
}
