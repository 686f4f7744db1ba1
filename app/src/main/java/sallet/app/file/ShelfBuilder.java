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
        values.word("feed.target"),
        text("feed.ec"),
        values.word("feed.scale"),
        values.base("feed.coldest"),
        water(),
        items,
        values.word("feed.acid"),
        values.base("feed.acidStrength"));
  }

  private FeedShelf.Water water() {
    Map<String, String> entries = new LinkedHashMap<>();
    for (String name : ANALYSIS) {
      text("feed.water." + name).ifPresent(figure -> entries.put(name, figure));
    }
    Optional<Double> ph =
        values.written("feed.water.ph")
            ? Optional.of(values.number("feed.water.ph"))
            : Optional.empty();
    return new FeedShelf.Water(values.word("feed.water.kind"), entries, ph, text("feed.water.ec"));
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
