package sallet.water.transpiration;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
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
 */
public record StandingPlant(
    int pot,
    Crop crop,
    double vigour,
    LocalDate emergence,
    List<Stay> stays,
    List<Pick> picks,
    LocalDate onBench,
    LocalDate until) {

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
    return new StandingPlant(pot, crop, vigour, emergence, stays, more, onBench, until);
  }

  /** The same plant without the picks on days between two, both included. */
  public StandingPlant unpicked(LocalDate from, LocalDate to) {
    List<Pick> rest =
        picks.stream().filter(p -> p.day().isBefore(from) || p.day().isAfter(to)).toList();
    return new StandingPlant(pot, crop, vigour, emergence, stays, rest, onBench, until);
  }

  /** The same plant with its pot free from another day on. */
  public StandingPlant standingUntil(LocalDate day) {
    return new StandingPlant(pot, crop, vigour, emergence, stays, picks, onBench, day);
  }

  /**
   * State of one plant of the clump at the start of each day from emergence on, up to {@link
   * #until}.
   */
  List<PlantState> states() {
    PlantParameters p = parameters();
    PlantDay[] days = LifeDays.of(p, crop.harvest().orElseThrow(), vigour, emergence, stays, until);
    List<PlantState> states = new ArrayList<>(days.length);
    PlantState state = PlantState.atEmergence(p);
    int next = 0;
    for (int i = 0; i < days.length; i++) {
      states.add(state);
      state = PlantModel.step(state, p, days[i]);
      for (; next < picks.size() && !picks.get(next).day().isAfter(emergence.plusDays(i)); next++) {
        state = state.picked(picks.get(next).share());
      }
    }
    return states;
  }

  /** Fresh mass of the whole clump at the start of a day it stands, g. */
  public double freshG(LocalDate day) {
    int at = (int) ChronoUnit.DAYS.between(emergence, day);
    return clump() * states().get(at).freshG(parameters().dryMatterShare());
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
