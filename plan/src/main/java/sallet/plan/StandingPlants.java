package sallet.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import sallet.crop.Crop;
import sallet.crop.HarvestRule;
import sallet.crop.LifeDays;
import sallet.crop.PlantDay;
import sallet.crop.PlantParameters;
import sallet.crop.PlantState;

/**
 * Plants that stand already when the plan begins, equal in age, state and kind of place.
 *
 * @param batch the sowing they come from
 * @param crop index of the crop
 * @param count how many pots' worth, 1 or more
 * @param sown sowing day
 * @param emergence first day of growth, seen or expected
 * @param toNursery day they moved to the nursery, if they have
 * @param toBench day they moved to their pots, if they have
 * @param pots names of their pots, one each once they are there; all of one group
 * @param group group of these pots, or -1
 * @param vigour factor on assimilation of these plants
 * @param state state of one plant at the end of {@code firstDay} if it is up, else at emergence
 * @param firstDay the first day of the plan, or emergence if that is later
 * @param up whether it has come up by the first day of the plan
 * @param firstPick first day something may be taken again
 * @param standingGrams edible grams in each pot or cell now
 */
record StandingPlants(
    String batch,
    int crop,
    int count,
    LocalDate sown,
    LocalDate emergence,
    Optional<LocalDate> toNursery,
    Optional<LocalDate> toBench,
    List<String> pots,
    int group,
    double vigour,
    PlantState state,
    LocalDate firstDay,
    boolean up,
    LocalDate firstPick,
    double standingGrams) {
  /** Days after a pick before the next. Judgement: a bowl day may be a day or two early. */
  private static final int PICK_REST_DAYS = 5;

  StandingPlants {
    pots = List.copyOf(pots);
  }

  /** Points for each plant thrown away at once. */
  double discardPoints() {
    return Weights.WASTE * standingGrams;
  }

  /** The groups of plants, those in pots parted by group of pots. */
  static List<StandingPlants> of(
      Present present, List<Crop> crops, Surroundings at, LocalDate from) {
    List<StandingPlants> all = new ArrayList<>();
    for (Present.Plants plants : present.plants()) {
      int crop =
          IntStream.range(0, crops.size())
              .filter(k -> crops.get(k).name().equals(plants.crop()))
              .findFirst()
              .orElse(-1);
      if (crop < 0) {
        continue;
      }
      Crop grown = crops.get(crop);
      if (plants.toBench().isEmpty()) {
        all.add(group(plants, crop, grown, at, from, List.of(), -1));
      } else {
        Map<Integer, List<String>> byGroup = new TreeMap<>();
        for (String pot : plants.pots()) {
          byGroup.computeIfAbsent(at.groupOf(pot), g -> new ArrayList<>()).add(pot);
        }
        byGroup.forEach((g, pots) -> all.add(group(plants, crop, grown, at, from, pots, g)));
      }
    }
    return all;
  }

  private static StandingPlants group(
      Present.Plants p,
      int crop,
      Crop grown,
      Surroundings at,
      LocalDate from,
      List<String> pots,
      int group) {
    if (p.toBench().isPresent() && group < 0) {
      throw new IllegalArgumentException("the bench has no pot " + String.join(" ", pots));
    }
    boolean up = !p.emergence().isAfter(from);
    PlantParameters parameters = grown.growth().orElseThrow();
    PlantState state = up ? p.state() : PlantState.atEmergence(parameters);
    return new StandingPlants(
        p.batch(),
        crop,
        p.toBench().isPresent() ? pots.size() : p.count(),
        p.sown(),
        p.emergence(),
        p.toNursery(),
        p.toBench(),
        pots,
        group,
        p.vigour(),
        state,
        up ? from : p.emergence(),
        up,
        p.lastPick().map(day -> day.plusDays(PICK_REST_DAYS)).filter(from::isBefore).orElse(from),
        up ? edibleGrams(p, grown, at, from, group) : 0);
  }

  /** Edible grams in a pot, place or cell: dry matter as the growth model has it that day. */
  private static double edibleGrams(
      Present.Plants p, Crop crop, Surroundings at, LocalDate day, int group) {
    HarvestRule rule = crop.harvest().orElseThrow();
    PlantDay[] days =
        LifeDays.of(
            crop.growth().orElseThrow(),
            rule,
            p.vigour(),
            p.emergence(),
            at.stays(p, group),
            day.plusDays(1));
    return p.state().freshG(days[days.length - 1].dryMatterShare())
        * rule.plantsPerPot()
        * rule.edibleShare();
  }
}
