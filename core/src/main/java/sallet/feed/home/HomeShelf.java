package sallet.feed.home;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import sallet.feed.FeedFault;
import sallet.feed.meter.MeterReading;
import sallet.feed.product.Label;
import sallet.feed.product.Product;
import sallet.feed.product.Reagent;
import sallet.feed.product.Salt;
import sallet.feed.product.Use;
import sallet.feed.recipe.Bag;
import sallet.feed.recipe.WeighingScale;
import sallet.feed.target.TargetSolution;
import sallet.feed.water.AnalysisUnit;
import sallet.feed.water.SourceWater;
import sallet.feed.water.WaterBalance;
import sallet.feed.water.WaterEntry;
import sallet.feed.water.WaterReport;
import sallet.household.FeedShelf;

/**
 * Reads the texts of a {@link FeedShelf}; every text that cannot be read is a {@link FeedFault}.
 */
public final class HomeShelf {
  private static final Pattern FIGURE = Pattern.compile("([0-9]+(?:\\.[0-9]+)?)\\s*(\\S.*)");
  private static final Map<String, Double> GRAMS =
      Map.of("kg", 1000.0, "g", 1.0, "mg", 0.001, "oz", 28.349523125, "lb", 453.59237);

  /** Four main salts and the usual trace salts (judgement). */
  private static final List<String> USUAL =
      List.of(
          "can4", "kno3", "mgso4", "mkp", "feedta", "mnso4", "znso4", "cuso4", "h3bo3", "na2moo4");

  private HomeShelf() {}

  /** The solution to aim at, as published. */
  public static TargetSolution target(FeedShelf shelf) {
    return TargetSolution.find(shelf.target())
        .orElseThrow(
            () ->
                new FeedFault(
                    "\"%s\" is no solution Sallet knows; it knows %s"
                        .formatted(
                            shelf.target(),
                            String.join(
                                ", ",
                                TargetSolution.catalogue().stream()
                                    .map(TargetSolution::id)
                                    .toList()))));
  }

  /** The wanted conductivity, mS/cm at 25 °C. */
  public static Optional<Double> ecMsCm(FeedShelf shelf) {
    return shelf.ec().map(text -> sureEc(text, 0.2, 4));
  }

  private static double sureEc(String text, double least, double most) {
    MeterReading reading = MeterReading.parse(text);
    if (reading.meanings().size() > 1) {
      throw new FeedFault(
          "\"%s\" could mean several conductivities; write it in mS/cm".formatted(text));
    }
    double msCm = reading.meanings().get(0).msCm();
    if (!(msCm >= least && msCm <= most)) {
      throw new FeedFault(
          "%s lies outside what is allowed (%s to %s mS/cm)".formatted(text, least, most));
    }
    return msCm;
  }

  /** The kitchen scale. */
  public static WeighingScale scale(FeedShelf shelf) {
    return new WeighingScale(grams(shelf.scale()));
  }

  private static double grams(String text) {
    Matcher m = FIGURE.matcher(text.strip());
    Double factor = m.matches() ? GRAMS.get(m.group(2).toLowerCase(Locale.ROOT)) : null;
    if (factor == null) {
      throw new FeedFault("\"%s\" is no mass; write it like 0.1 g".formatted(text));
    }
    return Double.parseDouble(m.group(1)) * factor;
  }

  /** The acid at hand. */
  public static Reagent acid(FeedShelf shelf) {
    return Arrays.stream(Reagent.values())
        .filter(r -> r.isAcid() && r.plainName().equals(shelf.acid()))
        .findFirst()
        .orElseThrow(() -> new FeedFault("\"%s\" is no acid Sallet doses".formatted(shelf.acid())));
  }

  /** The source water. */
  public static SourceWater water(FeedShelf shelf) {
    FeedShelf.Water water = shelf.water();
    boolean tap = water.kind().equals("tap");
    if (water.entries().isEmpty()) {
      if (tap) {
        throw new FeedFault(
            "Tap water differs from street to street: state at least hardness and alkalinity, the water company tells them");
      }
      SourceWater typical =
          water.kind().equals("rain") ? SourceWater.rain() : SourceWater.reverseOsmosis();
      water
          .ec()
          .ifPresent(
              text ->
                  WaterBalance.of(
                      new WaterReport(
                          typical.name(),
                          true,
                          Map.of(WaterEntry.CHLORIDE, new WaterReport.Value(0, AnalysisUnit.MG_L)),
                          Optional.empty(),
                          Optional.of(sureEc(text, 0, 20)))));
      return typical;
    }
    return WaterBalance.of(
        new WaterReport(
            water.kind() + " water",
            !tap,
            entries(water.entries()),
            water.ph(),
            water.ec().map(text -> sureEc(text, 0, 20))));
  }

  private static Map<WaterEntry, WaterReport.Value> entries(Map<String, String> texts) {
    Map<WaterEntry, WaterReport.Value> entries = new EnumMap<>(WaterEntry.class);
    List<String> faults = new ArrayList<>();
    texts.forEach(
        (name, text) -> {
          Matcher m = FIGURE.matcher(text.strip());
          Optional<AnalysisUnit> unit =
              m.matches() ? AnalysisUnit.of(m.group(2)) : Optional.empty();
          if (unit.isEmpty()) {
            faults.add(
                "%s: cannot read \"%s\"; write it like 52 mg/L, 1.3 mmol/L or 7 °dH"
                    .formatted(name, text));
          } else {
            WaterEntry entry = WaterEntry.valueOf(name.toUpperCase(Locale.ROOT));
            entries.put(entry, new WaterReport.Value(Double.parseDouble(m.group(1)), unit.get()));
          }
        });
    if (!faults.isEmpty()) {
      throw new FeedFault(faults);
    }
    return entries;
  }

  /** Everything on the shelf; the usual salts when nothing is written. */
  public static List<Bag> bags(FeedShelf shelf) {
    return shelf.shelf().isEmpty()
        ? USUAL.stream().map(id -> Bag.of(Salt.find(id).orElseThrow().product(1))).toList()
        : shelf.shelf().stream().map(HomeShelf::bag).toList();
  }

  /** One bag. */
  public static Bag bag(FeedShelf.Item item) {
    double left = item.left().map(HomeShelf::grams).orElse(Double.POSITIVE_INFINITY);
    return new Bag(product(item), left, item.pricePerKg());
  }

  private static Product product(FeedShelf.Item item) {
    if (item.salt().isPresent() == item.label().isPresent()) {
      throw new FeedFault("A bag is either a salt or a fertiliser by its label; write one of them");
    }
    if (item.label().isPresent()) {
      String grade = item.label().get();
      return Label.grade(item.name().orElse(grade), grade).product(Use.MACRO);
    }
    String text = item.salt().orElse("");
    Salt salt =
        Salt.find(text)
            .orElseThrow(
                () ->
                    new FeedFault(
                        "\"%s\" is no salt Sallet knows; write its formula with its water, like MgSO4.7H2O"
                            .formatted(text)));
    return salt.product(item.purity());
  }
}
