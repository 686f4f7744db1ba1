package sallet.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import sallet.crop.Crop;
import sallet.weather.PlaceClimate;

/** Sentences beside a plan: whose climate was taken, which wanted crops are not sown and why. */
final class Notes {
  /** Daily light below which seedlings stretch, mol/m²/d. Judgement. */
  private static final double DIM_DLI_MOL = 6;

  /** Daily light below which hardly anything grows, mol/m²/d. Judgement. */
  private static final double DARK_DLI_MOL = 2;

  private final Instance instance;
  private final List<Course> courses;

  Notes(Instance instance, List<Course> courses) {
    this.instance = instance;
    this.courses = courses;
  }

  List<String> of(List<Sowing> sowings) {
    List<String> notes = new ArrayList<>();
    notes.add(emptyBench(sowings));
    darkness().ifPresent(notes::add);
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
    }
    return notes;
  }

  private static String emptyBench(List<Sowing> sowings) {
    String start =
        "The plan starts from an empty bench; plants that stand there now are not counted.";
    return sowings.isEmpty()
        ? start
        : String.format(
            Locale.ROOT,
            "%s Its last sowing is on %s: what is sown later belongs to the next plan.",
            start,
            sowings.get(sowings.size() - 1).date());
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
    String start = crop.name().substring(0, 1).toUpperCase(Locale.ROOT) + crop.name().substring(1);
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
    double longest =
        instance.at().groups().stream()
            .mapToDouble(g -> g.days().photoperiodHours(0))
            .max()
            .orElse(0);
    Optional<Double> critical = crop.bolting().map(b -> b.criticalPhotoperiodHours());
    return critical.isPresent() && longest > critical.get() + 1
        ? String.format(
            Locale.ROOT,
            "; it wants days of %.0f h or less and gets %.0f h.",
            critical.get(),
            longest)
        : ".";
  }
}
