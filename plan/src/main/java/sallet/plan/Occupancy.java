package sallet.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** How full the places are, slot by slot, to say what a short bowl was short of. */
final class Occupancy {
  /** Places are called full when taken on this share of the days that count. Judgement. */
  private static final double MOSTLY = 0.6;

  /** Days before a bowl in which its plants stand in their pots, in the nursery, in their cells. */
  private record Window(int fromDays, int toDays) {}

  /** Judgement: a plant is picked from its fifth week on the bench back to the move. */
  private static final Window IN_POTS = new Window(35, 0);

  private static final Window IN_NURSERY = new Window(56, 21);
  private static final Window IN_CELLS = new Window(70, 35);

  private final Instance instance;
  private final int[] cells;
  private final int[] nursery;
  private final int[][] pots;

  Occupancy(Instance instance, List<Sowing> standing, List<Sowing> sowings) {
    this.instance = instance;
    TaskCalendar calendar = instance.calendar();
    int slots = calendar.slots().size();
    cells = new int[slots];
    nursery = new int[slots];
    pots = new int[instance.at().groups().size()][slots];
    for (Sowing s : Stream.concat(standing.stream(), sowings.stream()).toList()) {
      for (int i = 0; i < slots; i++) {
        LocalDate day = calendar.slot(i);
        if (!day.isBefore(s.date()) && day.isBefore(s.courses().get(0).toNursery())) {
          cells[i] += s.cells();
        }
        for (Sowing.Course c : s.courses()) {
          if (!day.isBefore(c.toNursery()) && day.isBefore(c.toBench())) {
            nursery[i] += c.plants();
          }
          if (!day.isBefore(c.toBench()) && day.isBefore(c.end())) {
            pots[c.group()][i] += c.plants();
          }
        }
      }
    }
  }

  /** Places that are full in the weeks that would have to feed a bowl. */
  List<String> fullBefore(int bowl) {
    List<String> full = new ArrayList<>();
    for (int g = 0; g < pots.length; g++) {
      Surroundings.Group group = instance.at().groups().get(g);
      if (mostly(pots[g], group.pots().size(), bowl, IN_POTS)) {
        full.add(
            pots.length == 1
                ? "all " + group.pots().size() + " pots"
                : "pots " + String.join(" ", group.pots()));
      }
    }
    if (mostly(nursery, instance.at().places(), bowl, IN_NURSERY)) {
      full.add("all " + instance.at().places() + " nursery places");
    }
    if (mostly(cells, instance.at().cells(), bowl, IN_CELLS)) {
      full.add("all " + instance.at().cells() + " cells");
    }
    return full;
  }

  private boolean mostly(int[] used, int capacity, int bowl, Window window) {
    LocalDate day = instance.calendar().bowl(bowl);
    int counted = 0;
    int taken = 0;
    for (int i = 0; i < used.length; i++) {
      LocalDate slot = instance.calendar().slot(i);
      if (!slot.isBefore(day.minusDays(window.fromDays))
          && slot.isBefore(day.minusDays(window.toDays))) {
        counted++;
        taken += used[i] >= capacity ? 1 : 0;
      }
    }
    return counted > 0 && taken >= MOSTLY * counted;
  }
}
