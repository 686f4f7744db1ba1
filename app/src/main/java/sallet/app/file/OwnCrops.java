package sallet.app.file;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import sallet.crop.Catalogue;
import sallet.crop.Crop;
import sallet.crop.OwnCrop;

/** The grower's own crops; one that is like no crop of the catalogue becomes a fault. */
final class OwnCrops {
  private final Values values;
  private final Faults faults;
  private final Catalogue catalogue;

  OwnCrops(Values values, Faults faults, Catalogue catalogue) {
    this.values = values;
    this.faults = faults;
    this.catalogue = catalogue;
  }

  /** The catalogue with the file's own crops. */
  Catalogue added() {
    Catalogue all = catalogue;
    for (int i = 0; i < values.count("crops.own"); i++) {
      String at = "crops.own[" + i + "].";
      Optional<Crop> own = own(at);
      all = own.isPresent() ? all.with(own.get()) : all;
    }
    return all;
  }

  private Optional<Crop> own(String at) {
    Optional<String> name = values.get(at + "name", String.class);
    Optional<String> like = values.get(at + "like", String.class);
    if (name.isEmpty() || like.isEmpty()) {
      return Optional.empty();
    }
    Optional<Crop> relative = catalogue.find(like.get());
    if (relative.isEmpty()) {
      faults.add(at + "like", values.line(at + "like"), unknown(like.get()));
      return Optional.empty();
    }
    double speed = values.number(at + "speed");
    double emergence = values.number(at + "emergence");
    boolean sound = speed > 0 && emergence > 0;
    return sound
        ? Optional.of(
            new OwnCrop(
                    name.get(),
                    relative.get(),
                    speed,
                    emergence,
                    share(at + "dryMatter"),
                    number(at + "liftGrams"),
                    whole(at + "oldestDays"),
                    share(at + "usable"),
                    share(at + "edible"))
                .crop())
        : Optional.empty();
  }

  private String unknown(String word) {
    String meant =
        catalogue.suggestions(word).stream()
            .findFirst()
            .map(near -> " (did you mean \"" + near + "\"?)")
            .orElse("");
    return Scalars.quoted(word)
        + " is not in the catalogue of crops"
        + meant
        + "; docs/crops.md lists their names";
  }

  private OptionalDouble share(String path) {
    double share = values.share(path);
    return Double.isNaN(share) ? OptionalDouble.empty() : OptionalDouble.of(share);
  }

  private OptionalDouble number(String path) {
    double number = values.number(path);
    return Double.isNaN(number) ? OptionalDouble.empty() : OptionalDouble.of(number);
  }

  private OptionalInt whole(String path) {
    return values.get(path, Integer.class).map(OptionalInt::of).orElse(OptionalInt.empty());
  }
}
