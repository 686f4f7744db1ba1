package sallet.water.absence;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import sallet.crop.RoomDays;
import sallet.crop.Stay;
import sallet.household.Pot;
import sallet.household.PotSites;
import sallet.light.HourlyLight;
import sallet.water.home.HomeBench;
import sallet.water.transpiration.StandingPlant;

/** Which plants that do not outlive a missed flood to move to dimmer pots that are free. */
final class Moving {
  /** A place is worth the move when it has at most this share of the light. Judgement. */
  private static final double DIMMER = 0.85;

  private final Scene start;
  private final HomeBench bench;
  private final HourlyLight light;
  private final LocalDate from;

  Moving(Scene start, HomeBench bench, HourlyLight light) {
    this.start = start;
    this.bench = bench;
    this.light = light;
    this.from = light.from();
  }

  /** The move; empty when there is nowhere to go. */
  Optional<Lever> lever(List<String> atRisk) {
    List<Integer> free = new ArrayList<>(free());
    Map<Integer, Integer> to = new HashMap<>();
    List<String> words = new ArrayList<>();
    List<Pot> pots = start.household().bench().pots();
    for (String name : atRisk) {
      int pot = bench.indexOf(name);
      Optional<Integer> place =
          free.stream()
              .filter(f -> bench.water(f).equals(bench.water(pot)))
              .filter(f -> mol(f) <= DIMMER * mol(pot))
              .findFirst();
      if (place.isPresent()) {
        free.remove(place.get());
        to.put(pot, place.get());
        words.add(name + " to the place of " + pots.get(place.get()).name());
      }
    }
    return to.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Lever(
                Step.Kind.MOVE,
                "Swap pots so that thirsty plants stand dimmer: "
                    + String.join(", ", words)
                    + "; growth slows there.",
                1 + to.size(),
                scene -> moved(scene, to)));
  }

  /** Pots in which nothing stands on any day away, dimmest first. */
  private List<Integer> free() {
    return IntStream.range(0, bench.size())
        .filter(pot -> start.plants().stream().noneMatch(p -> p.pot() == pot && standsOnce(p)))
        .boxed()
        .sorted(Comparator.comparingDouble(this::mol))
        .toList();
  }

  private boolean standsOnce(StandingPlant plant) {
    return IntStream.range(0, light.days()).anyMatch(day -> plant.stands(from.plusDays(day)));
  }

  private double mol(int pot) {
    return IntStream.range(0, light.days()).mapToDouble(day -> light.dliMol(pot, day)).sum();
  }

  private Scene moved(Scene scene, Map<Integer, Integer> to) {
    List<Double> sites = PotSites.siteCm2(start.household().bench());
    return scene.withPlants(
        scene.plants().stream()
            .map(
                plant -> {
                  Integer pot = to.get(plant.pot());
                  return pot == null || !standsOnce(plant)
                      ? plant
                      : plant
                          .moved(
                              pot,
                              new Stay(
                                  plant.onBench().isAfter(from) ? plant.onBench() : from,
                                  RoomDays.atPlace(light, pot, start.household().room().air()),
                                  Math.min(sites.get(pot), plant.siteCm2())))
                          .standingUntil(earlier(plant.until(), from.plusDays(light.days())));
                })
            .toList());
  }

  private static LocalDate earlier(LocalDate a, LocalDate b) {
    return a.isBefore(b) ? a : b;
  }
}
