package sallet.app.file;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import sallet.crop.Bolting;
import sallet.crop.Cardinals;
import sallet.crop.Catalogue;
import sallet.crop.Crop;
import sallet.crop.OwnCrop;
import sallet.units.Quantity;

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
      faults.add(
          at + "like", values.line(at + "like"), UnknownCrop.sentence(catalogue, like.get()));
      return Optional.empty();
    }
    return own(at, name.get(), relative.get());
  }

  private Optional<Crop> own(String at, String name, Crop relative) {
    double speed = values.number(at + "speed");
    double emergence = values.number(at + "emergence");
    Optional<Cardinals> germination =
        cardinals(at + "germination", relative, relative.seed().temperatures());
    Optional<Cardinals> growth = growth(at + "growth", relative);
    Optional<Bolting> bolting = bolting(at + "bolting", relative);
    if (!(speed > 0 && emergence > 0)) {
      return Optional.empty();
    }
    OwnCrop own =
        new OwnCrop(
            name,
            relative,
            speed,
            emergence,
            share(at + "dryMatter"),
            number(at + "liftGrams"),
            whole(at + "oldestDays"),
            share(at + "usable"),
            share(at + "edible"),
            germination,
            growth,
            bolting);
    return Optional.of(own.crop());
  }

  private Optional<Cardinals> growth(String at, Crop relative) {
    if (relative.growth().isEmpty()) {
      if (values.written(at)) {
        faults.add(
            at,
            values.line(at),
            "%s has no growth parameters that this could change; take it out"
                .formatted(relative.name()));
      }
      return Optional.empty();
    }
    return cardinals(at, relative, relative.growth().get().temperatures());
  }

  /** Those written, the others as the relative has them. */
  private Optional<Cardinals> cardinals(String at, Crop relative, Cardinals theirs) {
    if (!values.written(at) || !values.sound(at)) {
      return Optional.empty();
    }
    double coldestC = quantity(at + ".coldest").orElse(theirs.coldestC());
    double bestFromC = quantity(at + ".bestFrom").orElse(theirs.bestFromC());
    double bestToC = quantity(at + ".bestTo").orElse(theirs.bestToC());
    double warmestC = quantity(at + ".warmest").orElse(theirs.warmestC());
    if (Cardinals.rise(coldestC, bestFromC, bestToC, warmestC)) {
      return Optional.of(new Cardinals(coldestC, bestFromC, bestToC, warmestC));
    }
    faults.add(
        at,
        values.line(at),
        "temperatures must rise from coldest over bestFrom and bestTo to warmest, were %s, %s, %s and %s °C; those not written are as of %s"
            .formatted(
                Quantity.plain(coldestC),
                Quantity.plain(bestFromC),
                Quantity.plain(bestToC),
                Quantity.plain(warmestC),
                relative.name()));
    return Optional.empty();
  }

  private Optional<Bolting> bolting(String at, Crop relative) {
    if (!values.written(at) || !values.sound(at)) {
      return Optional.empty();
    }
    OptionalDouble sumCd = number(at + ".sum");
    OptionalDouble dayHours = quantity(at + ".day");
    Optional<Bolting> theirs = relative.bolting();
    if (theirs.isEmpty() && (sumCd.isEmpty() || dayHours.isEmpty())) {
      faults.add(
          at,
          values.line(at),
          "needs both sum and day: %s is not known to run to seed".formatted(relative.name()));
      return Optional.empty();
    }
    return Optional.of(
        new Bolting(
            sumCd.orElseGet(() -> theirs.orElseThrow().halfSumCd()),
            dayHours.orElseGet(() -> theirs.orElseThrow().criticalPhotoperiodHours())));
  }

  private OptionalDouble share(String path) {
    double share = values.share(path);
    return Double.isNaN(share) ? OptionalDouble.empty() : OptionalDouble.of(share);
  }

  private OptionalDouble quantity(String path) {
    double base = values.base(path);
    return Double.isNaN(base) ? OptionalDouble.empty() : OptionalDouble.of(base);
  }

  private OptionalDouble number(String path) {
    double number = values.number(path);
    return Double.isNaN(number) ? OptionalDouble.empty() : OptionalDouble.of(number);
  }

  private OptionalInt whole(String path) {
    return values.get(path, Integer.class).map(OptionalInt::of).orElse(OptionalInt.empty());
  }
}
