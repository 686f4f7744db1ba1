package sallet.light;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * What the plants of a bench are to get.
 *
 * @param origin who says so
 * @param wanted needs of the crops the household wants, at least one
 * @param standings which crop stands in which pot and when; a pot without one is empty
 * @param mostHours longest day, sun and lamp together, h
 */
public record LightTarget(
    Origin origin, List<LightNeed> wanted, List<Standing> standings, double mostHours) {

  /** Where a target comes from. */
  public enum Origin {
    /** A sowing plan tells what stands where. */
    PLAN,
    /** The crops the household wants. */
    WISHES,
    /** One number for all pots. */
    CALL
  }

  /**
   * Light of a day of leafy crops, mol/m²: Plants 2024, 13(5):652 (12 mol at least), Cornell (17
   * mol).
   */
  public static final double LEAFY_MOL = 14;

  /** Longest day of most work on leafy crops that these cite, h. */
  public static final double MOST_HOURS = 18;

  /** Leafy crops of no certain kind. */
  public static final LightTarget LEAFY = same(LEAFY_MOL, MOST_HOURS);

  public LightTarget {
    wanted = List.copyOf(wanted);
    standings = List.copyOf(standings);
    if (wanted.isEmpty()) {
      throw new IllegalArgumentException("a target needs at least one crop");
    }
  }

  /**
   * A crop in a pot.
   *
   * @param pot its place in the household's list
   * @param from first day in the pot
   * @param until last day in the pot
   */
  public record Standing(int pot, LocalDate from, LocalDate until, LightNeed need) {
    boolean in(int asked, LocalDate first, LocalDate last) {
      return pot == asked && !from.isAfter(last) && !until.isBefore(first);
    }
  }

  /** The same light for every pot, mol/m² a day. */
  public static LightTarget same(double dliMol, double mostHours) {
    return new LightTarget(Origin.CALL, List.of(LightNeed.leafy(dliMol)), List.of(), mostHours);
  }

  /** The crops a household wants, none in its place yet. */
  public static LightTarget wanted(List<LightNeed> wanted, double mostHours) {
    return new LightTarget(Origin.WISHES, wanted, List.of(), mostHours);
  }

  /**
   * With a place for every wanted crop, all alike in number, for the days from first to last: the
   * pots with most light go to the crops that want most. A plan keeps its own places.
   *
   * @param dliMol mean light of each pot, mol/m² a day
   */
  LightTarget placed(List<Double> dliMol, LocalDate first, LocalDate last) {
    if (origin == Origin.PLAN) {
      return this;
    }
    List<LightNeed> needs =
        wanted.stream().sorted(Comparator.comparingDouble(LightNeed::targetMol)).toList();
    List<Integer> pots =
        IntStream.range(0, dliMol.size())
            .boxed()
            .sorted(Comparator.comparingDouble(dliMol::get))
            .toList();
    List<Standing> places = new ArrayList<>();
    for (int i = 0; i < pots.size(); i++) {
      LightNeed need = needs.get(Math.floorDiv(i * needs.size(), pots.size()));
      places.add(new Standing(pots.get(i), first, last, need));
    }
    return new LightTarget(origin, wanted, places, mostHours);
  }

  /** What stands in a pot on a day. */
  public Optional<LightNeed> need(int pot, LocalDate day) {
    return needs(pot, day, day).stream().findFirst();
  }

  /** All that stands in a pot on any of some days. */
  public List<LightNeed> needs(int pot, LocalDate first, LocalDate last) {
    return standings.stream()
        .filter(standing -> standing.in(pot, first, last))
        .map(Standing::need)
        .distinct()
        .toList();
  }

  /** Mean of what is to be got by all that stands in the pots on a day; empty for a bare bench. */
  public OptionalDouble meanMol(LocalDate day) {
    return standings.stream()
        .filter(standing -> standing.in(standing.pot, day, day))
        .mapToDouble(standing -> standing.need.targetMol())
        .average();
  }
}
