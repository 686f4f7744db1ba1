package sallet.plan.check;

import sallet.crop.PlaceDays;
import sallet.plan.SowingPlan.PotGroup;

/** What the places of a household offer a plant on every day of the plan. */
interface Surroundings {
  /** The nursery shelf, cells and places alike. */
  PlaceDays nursery();

  /** The mean of a group's pots. */
  PlaceDays bench(PotGroup group);
}
