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
  private final Instance instance;
  private final List<Course> courses;

  Notes(Instance instance, List<Course> courses) {
    this.instance = instance;
    this.courses = courses;
  }

  List<String> of(List<Sowing> sowings) {
    List<String> notes = new ArrayList<>();
    if (!instance.household().room().windows().isEmpty()) {
      notes.addAll(PlaceClimate.of(instance.household().place()).notes());
    }
    if (!instance.household().crops().want().isEmpty()) {
      Set<String> sown = sowings.stream().map(Sowing::crop).collect(Collectors.toSet());
      for (int k = 0; k < instance.crops().size(); k++) {
        if (!sown.contains(instance.crops().get(k).name())) {
          notes.add(whyNot(k));
        }
      }
    }
    return notes;
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
      return start + " is not sown: it stays too small to pick in this light and warmth.";
    }
    return start
        + " is not sown: other wanted crops fill the bowl with fewer seeds and pots"
        + longDay(crop);
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
