package sallet.water.transpiration;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sallet.crop.Crop;
import sallet.crop.LifeDays;
import sallet.crop.PlantDay;
import sallet.crop.PlantModel;
import sallet.crop.PlantParameters;
import sallet.crop.PlantState;
import sallet.crop.Stay;

/**
 * A plant, or the clump that shares a pot, with the days it stands on the bench.
 *
 * @param pot index of its pot
 * @param crop what it is, plannable
 * @param vigour the household factor on assimilation
 * @param emergence first day of growth
 * @param stays where it grows, in order of time
 * @param picks leaves taken from it, in order of time
 * @param onBench first day in its pot
 * @param until day on which the pot is free again
 * @param known what it is known to have been, when readings tell; else it grows from a seedling
 */
public record StandingPlant(
    int pot,
    Crop crop,
    double vigour,
    LocalDate emergence,
    List<Stay> stays,
    List<Pick> picks,
    LocalDate onBench,
    LocalDate until,
    Optional<Known> known) {

  /** A plant of which only the model tells. */
  public StandingPlant(
      int pot,
      Crop crop,
      double vigour,
      LocalDate emergence,
      List<Stay> stays,
      List<Pick> picks,
      LocalDate onBench,
      LocalDate until) {
    this(pot, crop, vigour, emergence, stays, picks, onBench, until, Optional.empty());
  }

  /**
   * What one plant of the clump is known to have been. From its last state on the model tells.
   *
   * @param from day of the first state
   * @param states at the start of that day and of each day after, at least one, with all picks done
   *     by then
   */
  public record Known(LocalDate from, List<PlantState> states) {
    public Known {
      states = List.copyOf(states);
      if (states.isEmpty()) {
        throw new IllegalArgumentException("a known plant needs a state");
      }
    }

    /** Day of the last state. */
    public LocalDate last() {
      return from.plusDays(states.size() - 1L);
    }
  }

  /**
   * Leaves taken at the end of a day.
   *
   * @param share share of the leaf area
   */
  public record Pick(LocalDate day, double share) {}

  public StandingPlant {
    stays = List.copyOf(stays);
    picks = List.copyOf(picks);
  }

  /** Whether it stands in its pot on a day. */
  public boolean stands(LocalDate day) {
    return !day.isBefore(onBench) && day.isBefore(until);
  }

  /** The same plant with one more pick. */
  public StandingPlant picked(LocalDate day, double share) {
    List<Pick> more = new ArrayList<>(picks);
    more.add(new Pick(day, share));
    more.sort(java.util.Comparator.comparing(Pick::day));
    return new StandingPlant(pot, crop, vigour, emergence, stays, more, onBench, until, known);
  }

  /** The same plant without the picks on days between two, both included. */
  public StandingPlant unpicked(LocalDate from, LocalDate to) {
    List<Pick> rest =
        picks.stream().filter(p -> p.day().isBefore(from) || p.day().isAfter(to)).toList();
    return new StandingPlant(pot, crop, vigour, emergence, stays, rest, onBench, until, known);
  }

  /** The same plant with its pot free from another day on. */
  public StandingPlant standingUntil(LocalDate day) {
    return new StandingPlant(pot, crop, vigour, emergence, stays, picks, onBench, day, known);
  }

  /** The same plant in another pot from the last of its stays on. */
  public StandingPlant moved(int other, Stay stay) {
    List<Stay> more = new ArrayList<>(stays);
    more.add(stay);
    return new StandingPlant(other, crop, vigour, emergence, more, picks, onBench, until, known);
  }

  /** Ground the clump may fill where it stands last, cm². */
  public double siteCm2() {
    return stays.get(stays.size() - 1).siteCm2();
  }

  /**
   * State of one plant of the clump at the start of each day from {@link #firstDay} on, up to
   * {@link #until}.
   */
  List<PlantState> states() {
    List<PlantState> states = new ArrayList<>(known.map(Known::states).orElse(List.of()));
    LocalDate day = known.map(Known::last).orElse(emergence);
    PlantState state =
        states.isEmpty() ? PlantState.atEmergence(parameters()) : states.remove(states.size() - 1);
    state = picked(state, day.minusDays(1));
    List<PlantDay> days = days();
    for (; day.isBefore(until); day = day.plusDays(1)) {
      states.add(state);
      state = PlantModel.step(state, parameters(), days.get(index(day)));
      state = picked(state, day);
    }
    return states;
  }

  /** Day of the first state. */
  LocalDate firstDay() {
    return known.map(Known::from).orElse(emergence);
  }

  private int index(LocalDate day) {
    return (int) ChronoUnit.DAYS.between(emergence, day);
  }

  private List<PlantDay> days() {
    return List.of(
        LifeDays.of(parameters(), crop.harvest().orElseThrow(), vigour, emergence, stays, until));
  }

  /** After the picks of a day. */
  private PlantState picked(PlantState state, LocalDate day) {
    PlantState left = state;
    for (Pick pick : picks) {
      left = pick.day().equals(day) ? left.picked(pick.share()) : left;
    }
    return left;
  }

  /** Fresh mass of the whole clump at the start of a day it stands, g. */
  public double freshG(LocalDate day) {
    PlantState state = states().get((int) ChronoUnit.DAYS.between(firstDay(), day));
    double dryShare = days().get(Math.max(0, index(day) - 1)).dryMatterShare();
    return clump() * state.freshG(dryShare);
  }

  PlantParameters parameters() {
    return crop.growth().orElseThrow();
  }

  int clump() {
    return crop.harvest().orElseThrow().plantsPerPot();
  }

  /** Ground one plant of the clump may fill on a day, cm². */
  double siteCm2(LocalDate day) {
    Stay stay = stays.get(0);
    for (Stay later : stays) {
      if (!later.from().isAfter(day)) {
        stay = later;
      }
    }
    return stay.siteCm2() / clump();
  }
}
