package sallet.light;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * One kind of warning gathered over a year and a bench.
 *
 * @param worst the warning of the place and month that is worst
 * @param worstPot name of that place
 * @param worstMonth number of that month
 * @param pots names of the pots that have it in any month
 * @param months numbers of the months that have it, 0 for the first of the year
 */
public record LightWatch(
    LightWarning worst, String worstPot, int worstMonth, List<String> pots, List<Integer> months) {
  public LightWatch {
    pots = List.copyOf(pots);
    months = List.copyOf(months);
  }

  private record Case(LightWarning warning, int month, int pot, double dliMol) {}

  /** What to watch in a year, each kind once, the strong ones first. */
  public static List<LightWatch> of(LightYear year) {
    List<Case> cases = new ArrayList<>();
    for (int m = 0; m < year.months().size(); m++) {
      for (int pot = 0; pot < year.light().places(); pot++) {
        for (LightWarning warning : year.warnings(m, pot)) {
          cases.add(new Case(warning, m, pot, year.months().get(m).dliMol(pot)));
        }
      }
    }
    List<LightWatch> watches = new ArrayList<>();
    for (LightWarning.Kind kind : LightWarning.Kind.values()) {
      List<Case> some = cases.stream().filter(c -> c.warning.kind() == kind).toList();
      if (!some.isEmpty()) {
        watches.add(gathered(year, kind, some));
      }
    }
    watches.sort(Comparator.comparing((LightWatch w) -> w.worst.grade()).reversed());
    return watches;
  }

  private static LightWatch gathered(LightYear year, LightWarning.Kind kind, List<Case> cases) {
    boolean darkIsWorse =
        kind == LightWarning.Kind.STRETCHING || kind == LightWarning.Kind.WEAK_LAMP;
    Comparator<Case> byLight = Comparator.comparingDouble(Case::dliMol);
    Case worst = cases.stream().max(darkIsWorse ? byLight.reversed() : byLight).orElseThrow();
    Set<Integer> months = new TreeSet<>();
    Set<Integer> pots = new TreeSet<>();
    cases.forEach(
        c -> {
          months.add(c.month);
          pots.add(c.pot);
        });
    List<String> names =
        pots.stream().map(i -> year.household().bench().pots().get(i).name()).toList();
    String worstPot = year.household().bench().pots().get(worst.pot).name();
    return new LightWatch(worst.warning, worstPot, worst.month, names, List.copyOf(months));
  }
}
