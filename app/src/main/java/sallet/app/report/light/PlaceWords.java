package sallet.app.report.light;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import sallet.app.report.Words;
import sallet.household.Household;
import sallet.household.Pot;
import sallet.light.LampWeek;
import sallet.light.LightNeed;
import sallet.light.LightTarget;
import sallet.light.LightYear;
import sallet.light.PlaceUse;
import sallet.units.Quantity;

/** Sentences about crops and their places: what they want, which pot suits which. */
final class PlaceWords {
  private PlaceWords() {}

  static String wanted(LightTarget target) {
    String mol = span(target.wanted().stream().mapToDouble(LightNeed::targetMol).toArray());
    return switch (target.origin()) {
      case PLAN -> "The crops of the plan want %s mol".formatted(mol);
      case WISHES -> "Your crops want %s mol".formatted(mol);
      case CALL -> "You want %s mol".formatted(mol);
    };
  }

  /** The least and the greatest of some numbers, once when they are alike. */
  private static String span(double... values) {
    String low = Quantity.plain(Arrays.stream(values).min().orElse(0));
    String high = Quantity.plain(Arrays.stream(values).max().orElse(0));
    return low.equals(high) ? low : low + " to " + high;
  }

  /** What the crops in the pots of a week want, mol; empty when there are none. */
  static String wantedMol(LampWeek week) {
    double[] mol =
        week.needs().stream().flatMap(Optional::stream).mapToDouble(LightNeed::targetMol).toArray();
    return mol.length == 0 ? "" : span(mol);
  }

  static String wanted(LampWeek week) {
    String mol = wantedMol(week);
    return mol.isEmpty() ? "no crop in the pots" : "wanted " + mol;
  }

  /** The most the pots together want in any month, mean over those with a crop, mol. */
  static double mostWanted(LightYear year) {
    return year.months().stream()
        .flatMapToDouble(month -> year.target().meanMol(month.middle()).stream())
        .max()
        .orElse(0);
  }

  /**
   * Where each wanted crop does best, from the most demanding on: the brightest pots for it. None
   * when a plan or one number for all has the say.
   */
  static List<String> crops(LightYear year, LightYear.Month month) {
    List<Pot> pots = year.household().bench().pots();
    List<LightNeed> needs =
        year.target().origin() == LightTarget.Origin.WISHES
            ? year.target().wanted().stream()
                .sorted(Comparator.comparingDouble(LightNeed::targetMol).reversed())
                .toList()
            : List.of();
    List<String> lines = new ArrayList<>();
    for (LightNeed need : needs) {
      List<Integer> own =
          IntStream.range(0, pots.size())
              .filter(i -> year.target().need(i, month.middle()).filter(need::equals).isPresent())
              .boxed()
              .toList();
      if (!own.isEmpty()) {
        lines.add(
            "%s, wants %s mol: %s (%s in %s)"
                .formatted(
                    Words.capital(need.crop()),
                    Quantity.plain(need.targetMol()),
                    String.join(", ", own.stream().map(i -> pots.get(i).name()).toList()),
                    got(own.stream().mapToDouble(month::dliMol).toArray()),
                    LightWords.month(month)));
      }
    }
    return lines;
  }

  private static String got(double[] mol) {
    String low = LightWords.mol(Arrays.stream(mol).min().orElse(0));
    String high = LightWords.mol(Arrays.stream(mol).max().orElse(0));
    return low.equals(high) ? low : low + " to " + high;
  }

  /** What the seed shelf gives and what seedlings want. */
  static List<String> nursery(LightYear year) {
    double given = year.seedlingMol();
    double wanted = year.wantedSeedlingMol();
    List<String> lines = new ArrayList<>();
    lines.add(
        "Seedlings get %s mol a day (%s µmol/m²/s for %s h); yours want about %s."
            .formatted(
                LightWords.mol(given),
                Quantity.plain(Math.rint(year.household().nursery().ppfdUmol())),
                Quantity.plain(year.household().nursery().hours()),
                LightWords.mol(wanted)));
    year.nursery()
        .ifPresent(
            shelf ->
                lines.add(
                    String.format(
                        Locale.ROOT,
                        "Under the shelf's lamp the darkest cell has %.0f µmol/m²/s, the mean %.0f,"
                            + " the brightest %.0f.",
                        shelf.evenness().minUmol(),
                        shelf.evenness().meanUmol(),
                        shelf.evenness().maxUmol())));
    return lines;
  }

  /** What the places are for in a month: one line for each use, brightest first. */
  static List<String> places(LightYear year, LightYear.Month month) {
    Household household = year.household();
    List<String> lines = new ArrayList<>();
    for (PlaceUse use : PlaceUse.values()) {
      List<String> pots =
          IntStream.range(0, household.bench().pots().size())
              .filter(i -> PlaceUse.of(month.dliMol(i), year.target().wanted()) == use)
              .mapToObj(i -> household.bench().pots().get(i).name())
              .toList();
      if (!pots.isEmpty()) {
        lines.add(
            "%s%s: %s"
                .formatted(
                    Words.capital(use.words()),
                    from(use, year.target().wanted()),
                    pots.size() == household.bench().pots().size()
                        ? "all pots"
                        : String.join(", ", pots)));
      }
    }
    return lines;
  }

  private static String from(PlaceUse use, List<LightNeed> wanted) {
    double least = use.fromMol(wanted).orElse(0);
    return least == 0 ? "" : " (%s mol and more)".formatted(Quantity.plain(least));
  }
}
