package sallet.app.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sallet.household.FeedShelf;

/** Makes the feed shelf of a file's values. */
final class ShelfBuilder {
  /** Keys of the water's analysis. */
  static final List<String> ANALYSIS =
      List.of(
          "calcium",
          "magnesium",
          "potassium",
          "sodium",
          "ammonium",
          "nitrate",
          "chloride",
          "sulfate",
          "phosphate",
          "boron",
          "alkalinity",
          "hardness");

  /** Keys of concentrations wanted otherwise than published. */
  static final List<String> WANTED =
      List.of(
          "nitrogen",
          "ammonium",
          "phosphorus",
          "potassium",
          "calcium",
          "magnesium",
          "sulfur",
          "silicon",
          "iron",
          "manganese",
          "zinc",
          "copper",
          "boron",
          "molybdenum");

  private final Values values;

  ShelfBuilder(Values values) {
    this.values = values;
  }

  FeedShelf shelf() {
    List<FeedShelf.Item> items = new ArrayList<>();
    for (int i = 0; i < values.count("feed.shelf"); i++) {
      items.add(item("feed.shelf[" + i + "]."));
    }
    return new FeedShelf(
        new FeedShelf.Goal(
            values.word("feed.target"), texts("feed.wanted", WANTED), text("feed.ec")),
        values.word("feed.scale"),
        values.base("feed.coldest"),
        water("feed.water"),
        second(),
        items,
        new FeedShelf.Acid(
            values.word("feed.acid"), values.base("feed.acidStrength"), text("feed.acidDensity")),
        meter(),
        running());
  }

  private FeedShelf.Water water(String at) {
    Optional<Double> ph =
        values.written(at + ".ph") ? Optional.of(values.number(at + ".ph")) : Optional.empty();
    return new FeedShelf.Water(
        values.word(at + ".kind"), texts(at, ANALYSIS), ph, text(at + ".ec"));
  }

  private Optional<FeedShelf.Second> second() {
    if (!values.written("feed.secondWater")) {
      return Optional.empty();
    }
    Optional<Double> share =
        values.written("feed.secondWaterShare")
            ? Optional.of(values.share("feed.secondWaterShare"))
            : Optional.empty();
    return Optional.of(new FeedShelf.Second(water("feed.secondWater"), share));
  }

  private FeedShelf.Meter meter() {
    String at = "feed.meter.";
    List<FeedShelf.Fresh> fresh = new ArrayList<>();
    for (int i = 0; i < values.count(at + "fresh"); i++) {
      String one = at + "fresh[" + i + "].";
      fresh.add(new FeedShelf.Fresh(words(one + "computed"), words(one + "read")));
    }
    Optional<FeedShelf.Standard> standard =
        values.written(at + "standard")
            ? Optional.of(
                new FeedShelf.Standard(
                    values.word(at + "standard.strength"),
                    values.base(at + "standard.temperature"),
                    words(at + "standard.read")))
            : Optional.empty();
    return new FeedShelf.Meter(
        text(at + "ppmFactor"), values.base(at + "reference"), standard, fresh);
  }

  private FeedShelf.Running running() {
    Optional<Double> drunk =
        values.written("feed.running.drunk")
            ? Optional.of(values.base("feed.running.drunk"))
            : Optional.empty();
    List<FeedShelf.Seen> seen = new ArrayList<>();
    for (int i = 0; i < values.count("feed.running.seen"); i++) {
      String one = "feed.running.seen[" + i + "].";
      seen.add(
          new FeedShelf.Seen(
              values.base(one + "poured"), values.share(one + "strength"), words(one + "read")));
    }
    return new FeedShelf.Running(
        values.word("feed.running.plants"),
        drunk,
        values.base("feed.running.evaporated"),
        values.word("feed.running.topUp"),
        seen);
  }

  private Map<String, String> texts(String at, List<String> names) {
    Map<String, String> texts = new LinkedHashMap<>();
    for (String name : names) {
      text(at + "." + name).ifPresent(figure -> texts.put(name, figure));
    }
    return texts;
  }

  /** A required text; blank when it is missing or faulty, which is told elsewhere. */
  private String words(String path) {
    return text(path).orElse("");
  }

  private FeedShelf.Item item(String at) {
    return new FeedShelf.Item(
        text(at + "salt"),
        text(at + "label"),
        text(at + "name"),
        values.share(at + "purity"),
        text(at + "left"),
        values.number(at + "pricePerKg"));
  }

  private Optional<String> text(String path) {
    return values.get(path, String.class);
  }
}
