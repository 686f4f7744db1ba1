package sallet.plan.check;

/** What a valid plan keeps to; told at length in docs/plan-checker.md. */
public enum Rule {
  BOWL_DAYS("There is one bowl a week on bowl day, from the first day on, in order, without gaps."),
  TASK_DAYS("Task days are the household's weekdays on which somebody is at home."),
  DEMAND("A bowl's demand follows who is at home in the seven days from its bowl day."),
  GROUPS("Pot groups hold pots of the bench, each pot once, on no more than their own tray area."),
  BATCH("Batches have names of their own, stand in order of date and hold at least one plant."),
  CROP("Only crops that can be planned and that the household wants are sown."),
  SOWING_DAY("A batch is sown on a task day."),
  SEEDS("Seeds are the cells times the plants of a pot, and every plant has a cell."),
  CERTAINTY("Enough cells are sown to get the plants with nine chances in ten."),
  EMERGENCE("Seedlings emerge after the germination time at the nursery's mean temperature."),
  TO_NURSERY("Seedlings leave their cells on a task day after sowing, not before they emerge."),
  TO_BENCH("Plants move to their pots on a task day 14 to 40 days after emergence."),
  END("A plant stands in its pot for at least a day and leaves it within the plan."),
  CLEARING("A plant that is not eaten is cleared on a task day or the plan's last day."),
  LAST_DAY("No plant stands on the bench past its age limit or into bolting."),
  CELLS("No more cells are in use than the nursery has."),
  PLACES("No more nursery places are in use than there are."),
  POT_NAMES("Each plant has a pot of its own, out of its group."),
  POT_TAKEN("A pot holds one plant at a time."),
  PICK_DAY("Plants are picked on bowl days on which somebody is at home, while they stand."),
  PICK_KIND("Leaves are picked only from crops that stand it."),
  PICK_AGE("No leaves are picked before 22 days after emergence."),
  PICK_MASS("No leaves are picked from a pot that stands at less than 12 g."),
  PICK_SHARE("A pick takes at most 40 percent of the leaf area."),
  PICK_INTERVAL("Picks of one plant are at least seven days apart and in order."),
  LIFT("A lifted plant is taken whole on its last day, once."),
  LEAF_FLOOR("A pick leaves at least five leaves on the plant."),
  LIFT_MASS(
      "A plant is lifted only when it has reached the mass of its crop or may be picked by leaf."),
  PICK_GRAMS("Grams picked are what the growth model gives for that life."),
  CLEARED_GRAMS(
      "Grams cleared away are what the growth model leaves standing, or none at the last bowl."),
  STANDING("Every plant that stands already goes on or is cleared, once, and no other is told."),
  STAYS("Standing plants stay in their pots, and days that are over do not change."),
  REST("Standing plants are not picked within five days of their last pick."),
  HARVEST("A bowl day's harvest is the sum of its picks."),
  KINDS("The kinds of a bowl are named once each, most first, and add up to the bowl."),
  SUPPLY("Nothing is eaten that was not picked that day, or a week before where the crop keeps."),
  BOWL_SIZE("No bowl holds more than the demand with the plan's margin."),
  REACHABLE("A bowl is called out of reach while nothing sown could serve it, and is then empty."),
  OBJECTIVE("The terms of what a plan costs follow from its bowls and batches and add up.");

  private final String sentence;

  Rule(String sentence) {
    this.sentence = sentence;
  }

  /** The rule in one sentence. */
  public String sentence() {
    return sentence;
  }
}
