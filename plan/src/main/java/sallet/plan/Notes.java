package sallet.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import sallet.crop.Crop;
import sallet.weather.PlaceClimate;

/** Sentences beside a plan: whose climate was taken, which wanted crops are not sown and why. */
final class Notes {
  /** Daily light below which seedlings stretch, mol/m²/d. Judgement. */
  private static final double DIM_DLI_MOL = 6;

  /** Daily light below which hardly anything grows, mol/m²/d. Judgement. */
  private static final double DARK_DLI_MOL = 2;

  /** A kind counts in a bowl from here on, g. Judgement. */
  private static final double KIND_FROM_G = 10;

  private static final String NO_NATIVE_SOLVER =
      "The fast solver has no library for this system; the slower one in plain Java found the plan,"
          + " so it may be less good for the time it took.";

  private final Instance instance;
  private final List<Course> courses;

  Notes(Instance instance, List<Course> courses) {
    this.instance = instance;
    this.courses = courses;
  }

  List<String> of(List<Sowing> standing, List<Sowing> sowings, List<BowlWeek> weeks) {
    List<String> notes = new ArrayList<>();
    notes.add(start(sowings));
    darkness().ifPresent(notes::add);
    fewKinds(weeks).ifPresent(notes::add);
    unusedPots(sowings).ifPresent(notes::add);
    reserve(standing).ifPresent(notes::add);
    if (instance.solver().usable() != instance.solver()) {
      notes.add(NO_NATIVE_SOLVER);
    }
    if (!instance.household().room().windows().isEmpty()) {
      notes.addAll(PlaceClimate.of(instance.household().place()).notes());
    }
    if (!instance.household().crops().want().isEmpty()) {
      Set<String> sown = sowings.stream().map(Sowing::crop).collect(Collectors.toSet());
      for (int k = 0; k < instance.sowable(); k++) {
        if (!sown.contains(instance.crops().get(k).name())) {
          notes.add(whyNot(k));
        }
      }
      sownInLongDays(sown).ifPresent(notes::add);
    }
    return notes;
  }

  private String start(List<Sowing> sowings) {
    String start =
        instance.standing().isEmpty()
            ? "The plan starts from an empty bench; plants that stand there now are counted when a"
                + " journal tells of them."
            : "The plan goes on from what stands by your journal.";
    return sowings.isEmpty()
        ? start
        : String.format(
            Locale.ROOT,
            "%s Its last sowing is on %s: what is sown later belongs to the next plan.",
            start,
            sowings.get(sowings.size() - 1).date());
  }

  private Optional<String> fewKinds(List<BowlWeek> weeks) {
    int wanted = instance.household().eaters().kinds();
    long bowls = weeks.stream().filter(w -> w.plannedGrams() > 0).count();
    long few =
        weeks.stream()
            .filter(w -> w.plannedGrams() > 0)
            .filter(w -> w.kinds().stream().filter(k -> k.grams() >= KIND_FROM_G).count() < wanted)
            .count();
    return few == 0
        ? Optional.empty()
        : Optional.of(
            String.format(
                Locale.ROOT,
                "%d of %d bowls have fewer than %d kinds of %.0f g or more.",
                few,
                bowls,
                wanted,
                KIND_FROM_G));
  }

  private Optional<String> unusedPots(List<Sowing> sowings) {
    Set<String> used =
        Stream.concat(
                sowings.stream().flatMap(s -> s.courses().stream()).flatMap(c -> c.pots().stream()),
                instance.standing().stream().flatMap(s -> s.pots().stream()))
            .collect(Collectors.toSet());
    List<String> unused =
        instance.at().groups().stream()
            .flatMap(g -> g.pots().stream())
            .filter(pot -> !used.contains(pot))
            .toList();
    return unused.isEmpty() || used.isEmpty()
        ? Optional.empty()
        : Optional.of(
            String.format(
                Locale.ROOT,
                "%d of %d pots stay free (%s): the bowls are filled without them.",
                unused.size(),
                unused.size() + used.size(),
                String.join(" ", unused)));
  }

  private Optional<String> reserve(List<Sowing> standing) {
    List<String> pots =
        standing.stream()
            .flatMap(s -> s.courses().stream())
            .filter(c -> c.spare(instance.calendar().from()))
            .flatMap(c -> c.pots().stream())
            .sorted()
            .toList();
    return pots.isEmpty()
        ? Optional.empty()
        : Optional.of(
            String.format(
                Locale.ROOT,
                "No bowl needs what stands in %s: it stays as a reserve, eat of it when you like.",
                String.join(" ", pots)));
  }

  private Optional<String> sownInLongDays(Set<String> sown) {
    List<Crop> early =
        instance.crops().stream().filter(c -> sown.contains(c.name()) && isDayTooLong(c)).toList();
    return early.isEmpty()
        ? Optional.empty()
        : Optional.of(
            String.format(
                Locale.ROOT,
                "In days of up to %.0f h these may run to seed early, and the plan ends their plants"
                    + " before: %s.",
                longestDayHours(),
                early.stream().map(Crop::name).collect(Collectors.joining("; "))));
  }

  private static String capital(Crop crop) {
    return crop.name().substring(0, 1).toUpperCase(Locale.ROOT) + crop.name().substring(1);
  }

  /** Leaves want 10 to 17 mol; below 6 seedlings stretch, below 2 hardly anything grows. */
  private Optional<String> darkness() {
    double best =
        instance.at().groups().stream().mapToDouble(Surroundings.Group::meanDliMol).max().orElse(0);
    if (best >= DIM_DLI_MOL) {
      return Optional.empty();
    }
    return Optional.of(
        String.format(
            Locale.ROOT,
            "The bench is %s: its best pots get %.1f mol/m² of light a day, leaves want 10 to 17;"
                + " a lamp, or a stronger one, would do more than any plan.",
            best < DARK_DLI_MOL ? "dark" : "dim",
            best));
  }

  private String whyNot(int k) {
    Crop crop = instance.crops().get(k);
    String start = capital(crop);
    double cellMeanC = instance.at().cellMeanC();
    if (crop.germination().daysAt(cellMeanC).isEmpty()) {
      return String.format(
          Locale.ROOT, "%s is not sown: it does not come up at %.0f °C.", start, cellMeanC);
    }
    List<Course> own = courses.stream().filter(c -> c.cropIndex == k).toList();
    if (own.isEmpty()) {
      return start
          + " is not sown: in this light and warmth it runs to seed before it gives a bowl"
          + longDay(crop);
    }
    if (Courses.firstBowl(own, instance.calendar().bowls()) >= instance.calendar().bowls()) {
      return start
          + " is not sown: it is near its end here before it is large enough to pick"
          + longDay(crop);
    }
    return start + " is not sown: other wanted crops give more for their pots" + longDay(crop);
  }

  /** The long day's part in it: one lamp is one day length for all crops. */
  private String longDay(Crop crop) {
    return isDayTooLong(crop)
        ? String.format(
            Locale.ROOT,
            "; it wants days of %.0f h or less and gets up to %.0f h.",
            crop.bolting().orElseThrow().criticalPhotoperiodHours(),
            longestDayHours())
        : ".";
  }

  private boolean isDayTooLong(Crop crop) {
    return crop.bolting()
        .filter(b -> longestDayHours() > b.criticalPhotoperiodHours() + 1)
        .isPresent();
  }

  private double longestDayHours() {
    return instance.at().groups().stream()
        .flatMapToDouble(
            g -> IntStream.range(0, g.days().days()).mapToDouble(g.days()::photoperiodHours))
        .max()
        .orElse(0);
  }
}
