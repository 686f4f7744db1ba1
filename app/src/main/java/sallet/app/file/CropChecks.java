package sallet.app.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import sallet.crop.Catalogue;
import sallet.crop.Crop;
import sallet.household.CropWishes;

/** The crops of the file by their catalogue names; names that are none become faults. */
final class CropChecks {
  /** Longest text that is looked up. */
  private static final int LONGEST = 100;

  private final Values values;
  private final Faults faults;
  private final Catalogue catalogue;

  CropChecks(Values values, Faults faults, Catalogue catalogue) {
    this.values = values;
    this.faults = faults;
    this.catalogue = catalogue;
  }

  CropWishes check() {
    List<String> avoid = named("crops.avoid", false, List.of());
    List<String> want = named("crops.want", true, avoid);
    boolean nothingLeft =
        catalogue.all().stream()
            .filter(Crop::plannable)
            .allMatch(crop -> avoid.contains(crop.name()));
    if (nothingLeft && want.isEmpty()) {
      faults.add(
          "crops.avoid",
          values.line("crops.avoid"),
          "avoids every crop that can be planned; leave at least one");
    }
    return new CropWishes(want, avoid);
  }

  private List<String> named(String path, boolean toPlan, List<String> avoid) {
    List<String> words =
        IntStream.range(0, values.count(path))
            .mapToObj(i -> values.get(path + "[" + i + "]", String.class).orElse(""))
            .toList();
    List<String> names = new ArrayList<>();
    for (int i = 0; i < words.size(); i++) {
      String at = path + "[" + i + "]";
      if (words.get(i).isEmpty()) {
        continue;
      }
      Optional<Crop> found = find(words.get(i));
      if (found.isEmpty()) {
        faults.add(at, values.line(at), unknown(words, i));
        continue;
      }
      Crop crop = found.get();
      if (toPlan && !crop.plannable()) {
        faults.add(
            at,
            values.line(at),
            crop.name() + " cannot be planned (" + crop.whyNotPlannable() + "); take it out");
      } else if (avoid.contains(crop.name())) {
        faults.add(
            at, values.line(at), crop.name() + " is both wanted and avoided; take it out of one");
      } else if (!names.contains(crop.name())) {
        names.add(crop.name());
      }
    }
    return names;
  }

  private Optional<Crop> find(String word) {
    return word.length() > LONGEST ? Optional.empty() : catalogue.find(word);
  }

  private String unknown(List<String> words, int i) {
    String word = words.get(i);
    if (word.length() > LONGEST) {
      return Scalars.quoted(word) + " is too long to be the name of a crop";
    }
    for (int first = Math.max(0, i - 1); first <= i && first + 1 < words.size(); first++) {
      String joined = words.get(first) + ", " + words.get(first + 1);
      if (find(joined).isPresent()) {
        return Scalars.quoted(word)
            + " is half of a crop's name: put a name with a comma in quotes, or leave the comma out";
      }
    }
    return UnknownCrop.sentence(catalogue, word);
  }
}
