package sallet.feed.home;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import sallet.feed.FeedFault;
import sallet.feed.dose.Bottle;
import sallet.feed.ion.Nutrient;
import sallet.feed.meter.MeterReading;
import sallet.feed.product.Label;
import sallet.feed.product.Product;
import sallet.feed.product.Reagent;
import sallet.feed.product.Salt;
import sallet.feed.product.Use;
import sallet.feed.recipe.Bag;
import sallet.feed.recipe.WeighingScale;
import sallet.feed.reservoir.TankHabit;
import sallet.feed.reservoir.UptakePrior;
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

  private static final Map<String, Double> MILLILITRES =
      Map.of("l", 1000.0, "ml", 1.0, "fl oz", 29.5735295625, "gal", 3785.411784);

  private static final Pattern DENSITY = Pattern.compile("([0-9]+(?:\\.[0-9]+)?)\\s*(?:g/mL|kg/L)");

  /** A density this far from the handbook's belongs to another strength. */
  private static final double DENSITY_OFF = 0.05;

  /** Water a full bench of leaf drinks, L a day for each m² of tray (judgement: 1 to 3). */
  private static final double USUAL_L_PER_M2 = 1.5;

  /** What is dosed by pH or only checks meters. */
  private static final Set<Use> NO_FEED = Set.of(Use.ACID, Use.BASE, Use.STANDARD);

  /** Four main salts and the usual trace salts (judgement). */
  private static final List<String> USUAL =
      List.of(
          "can4", "kno3", "mgso4", "mkp", "feedta", "mnso4", "znso4", "cuso4", "h3bo3", "na2moo4");

  private HomeShelf() {}

  /** The published solution to start from. */
  public static TargetSolution published(FeedShelf shelf) {
    return TargetSolution.find(shelf.goal().solution())
        .orElseThrow(
            () ->
                new FeedFault(
                    "\"%s\" is no solution Sallet knows; it knows %s"
                        .formatted(
                            shelf.goal().solution(),
                            String.join(
                                ", ",
                                TargetSolution.catalogue().stream()
                                    .map(TargetSolution::id)
                                    .toList()))));
  }

  /** The solution to aim at: as published, with what the household wants otherwise. */
  public static TargetSolution target(FeedShelf shelf) {
    TargetSolution published = published(shelf);
    Map<Nutrient, Double> changed = wanted(shelf.goal().changed());
    return changed.isEmpty() ? published : published.changed(changed);
  }

  private static Map<Nutrient, Double> wanted(Map<String, String> texts) {
    Map<Nutrient, Double> mgL = new EnumMap<>(Nutrient.class);
    List<String> faults = new ArrayList<>();
    texts.forEach(
        (name, text) -> {
          Nutrient nutrient =
              name.equals("ammonium")
                  ? Nutrient.AMMONIUM_NITROGEN
                  : Nutrient.valueOf(name.toUpperCase(Locale.ROOT));
          Optional<WaterReport.Value> value = figure(text);
          if (value.isPresent() && value.get().unit().countsMatter()) {
            mgL.put(
                nutrient,
                value.get().number() * value.get().unit().mgPerUnit(nutrient.element().weight()));
          } else {
            faults.add(unreadable(name, text, "120 mg/L or 3 mmol/L"));
          }
        });
    refuse(faults);
    return mgL;
  }

  /** The wanted conductivity, mS/cm at 25 °C. */
  public static Optional<Double> ecMsCm(FeedShelf shelf) {
    return shelf.goal().ec().map(text -> sureEc(text, 0.2, 4));
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
    return amount(text, GRAMS, "\"%s\" is no mass; write it like 0.1 g");
  }

  private static double millilitres(String text) {
    return amount(text, MILLILITRES, "\"%s\" is no volume; write it like 500 mL");
  }

  private static double amount(String text, Map<String, Double> units, String otherwise) {
    Matcher m = FIGURE.matcher(text.strip());
    Double factor = m.matches() ? units.get(m.group(2).toLowerCase(Locale.ROOT)) : null;
    if (factor == null) {
      throw new FeedFault(otherwise.formatted(text));
    }
    return Double.parseDouble(m.group(1)) * factor;
  }

  /** The acid at hand. */
  public static Bottle acid(FeedShelf shelf) {
    FeedShelf.Acid acid = shelf.acid();
    Reagent reagent =
        Arrays.stream(Reagent.values())
            .filter(r -> r.isAcid() && r.plainName().equals(acid.name()))
            .findFirst()
            .orElseThrow(
                () -> new FeedFault("\"%s\" is no acid Sallet doses".formatted(acid.name())));
    Bottle usual = Bottle.of(reagent, acid.percent());
    return acid.density().map(text -> dense(usual, text)).orElse(usual);
  }

  private static Bottle dense(Bottle usual, String text) {
    Matcher m = DENSITY.matcher(text.strip());
    if (!m.matches()) {
      throw new FeedFault("\"%s\" is no density; write it like 1.05 g/mL".formatted(text));
    }
    Bottle bottle = new Bottle(usual.reagent(), usual.percent(), Double.parseDouble(m.group(1)));
    if (Math.abs(bottle.densityGmL() / usual.densityGmL() - 1) > DENSITY_OFF) {
      throw new FeedFault(
          "%s of %s %% has about %.3f g/mL, not %s: strength and density do not belong together"
              .formatted(
                  usual.reagent().plainName(), usual.percent(), usual.densityGmL(), text.strip()));
    }
    return bottle;
  }

  /** The source water. */
  public static SourceWater water(FeedShelf.Water water) {
    boolean tap = water.kind().equals("tap");
    if (!water.entries().isEmpty()) {
      return WaterBalance.of(
          new WaterReport(
              water.kind() + " water",
              !tap,
              entries(water.entries()),
              water.ph(),
              water.ec().map(text -> sureEc(text, 0, 20))));
    }
    if (tap) {
      throw new FeedFault(
          "Tap water differs from street to street: state at least hardness and alkalinity, the water company tells them");
    }
    SourceWater typical =
        water.kind().equals("rain") ? SourceWater.rain() : SourceWater.reverseOsmosis();
    water.ec().ifPresent(text -> WaterBalance.checkPure(typical.name(), sureEc(text, 0, 20)));
    return typical;
  }

  private static Map<WaterEntry, WaterReport.Value> entries(Map<String, String> texts) {
    Map<WaterEntry, WaterReport.Value> entries = new EnumMap<>(WaterEntry.class);
    List<String> faults = new ArrayList<>();
    texts.forEach(
        (name, text) ->
            figure(text)
                .ifPresentOrElse(
                    value -> entries.put(WaterEntry.valueOf(name.toUpperCase(Locale.ROOT)), value),
                    () -> faults.add(unreadable(name, text, "52 mg/L, 1.3 mmol/L or 7 °dH"))));
    refuse(faults);
    return entries;
  }

  private static Optional<WaterReport.Value> figure(String text) {
    Matcher m = FIGURE.matcher(text.strip());
    return m.matches()
        ? AnalysisUnit.of(m.group(2))
            .map(unit -> new WaterReport.Value(Double.parseDouble(m.group(1)), unit))
        : Optional.empty();
  }

  private static String unreadable(String name, String text, String example) {
    return text.strip().matches("[-−][0-9].*")
        ? "%s must not be negative, was %s".formatted(name, text.strip())
        : "%s: cannot read \"%s\"; write it like %s".formatted(name, text, example);
  }

  private static void refuse(List<String> faults) {
    if (!faults.isEmpty()) {
      throw new FeedFault(faults);
    }
  }

  /** How the reservoir is run; the plants drink by the tray's size when nothing is written. */
  public static TankHabit habit(FeedShelf shelf, double trayM2) {
    FeedShelf.Running running = shelf.running();
    UptakePrior plants =
        UptakePrior.find(running.plants())
            .orElseThrow(
                () ->
                    new FeedFault(
                        "\"%s\" is no kind of plant whose thirst Sallet knows"
                            .formatted(running.plants())));
    return new TankHabit(
        plants,
        running.drunkLPerDay().orElse(USUAL_L_PER_M2 * trayM2),
        running.evaporatedLPerDay(),
        TankHabit.TopUp.of(running.topUp()),
        acid(shelf));
  }

  /** Everything on the shelf; the usual salts when nothing is written. */
  public static List<Bag> bags(FeedShelf shelf) {
    return shelf.shelf().isEmpty()
        ? USUAL.stream().map(id -> Bag.of(Salt.find(id).orElseThrow().product(1))).toList()
        : shelf.shelf().stream().map(HomeShelf::bag).toList();
  }

  /** One bag. */
  public static Bag bag(FeedShelf.Item item) {
    Product product = product(item);
    boolean liquid = product.measure() == Product.Measure.MILLILITRE;
    double left =
        item.left()
            .map(text -> liquid ? millilitres(text) : grams(text))
            .orElse(Double.POSITIVE_INFINITY);
    return new Bag(product, left, item.pricePerKg());
  }

  private static Product product(FeedShelf.Item item) {
    if (item.salt().isPresent() == item.label().isPresent()) {
      throw new FeedFault("A bag is either a salt or a fertiliser by its label; write one of them");
    }
    if (item.label().isPresent()) {
      String grade = item.label().get();
      Label label = Label.grade(item.name().orElse(grade), grade);
      return label.product(label.isTrace() ? Use.TRACE : Use.MACRO);
    }
    String text = item.salt().orElse("");
    Salt salt =
        Salt.find(text)
            .or(() -> byFormula(text))
            .orElseThrow(
                () ->
                    new FeedFault(
                        "\"%s\" is no salt Sallet knows; write its formula with its water, like MgSO4.7H2O"
                            .formatted(text)));
    if (NO_FEED.contains(salt.use())) {
      throw new FeedFault(
          "%s is nothing to mix a recipe from: acids stand under feed.acid, bases are dosed by a pH reading (--correct)"
              .formatted(salt.name()));
    }
    return salt.product(item.purity());
  }

  private static Optional<Salt> byFormula(String text) {
    try {
      return Salt.withWaterOf(text);
    } catch (FeedFault e) {
      return Optional.empty(); // No formula, so no salt: told by who asked.
    }
  }
}
