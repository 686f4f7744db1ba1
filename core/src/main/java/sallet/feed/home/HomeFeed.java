package sallet.feed.home;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sallet.feed.caution.Caution;
import sallet.feed.dose.Buffer;
import sallet.feed.dose.PhDose;
import sallet.feed.ion.Composition;
import sallet.feed.ion.Ion;
import sallet.feed.ion.Nutrient;
import sallet.feed.meter.MeterReading;
import sallet.feed.product.Use;
import sallet.feed.recipe.Bag;
import sallet.feed.recipe.Recipe;
import sallet.feed.recipe.RecipeFinder;
import sallet.feed.recipe.RecipeQuestion;
import sallet.feed.recipe.SafeSolution;
import sallet.feed.recipe.SolutionLimits;
import sallet.feed.recipe.WeighingScale;
import sallet.feed.reservoir.Strength;
import sallet.feed.solution.Carbon;
import sallet.feed.solution.Conductivity;
import sallet.feed.solution.Mineral;
import sallet.feed.solution.OsmoticPressure;
import sallet.feed.solution.SolutionState;
import sallet.feed.solution.Speciation;
import sallet.feed.stock.StockPlan;
import sallet.feed.stock.TraceStock;
import sallet.feed.target.TargetSolution;
import sallet.feed.water.SourceWater;
import sallet.household.FeedShelf;

/** From the household's water and shelf to the sheet at the sink. */
public final class HomeFeed {
  /** Alkalinity above which acid goes in first, and what is left of it, meq/L (common practice). */
  private static final double MUCH_ALKALINITY = 1.0;

  private static final double ALKALINITY_LEFT = 0.5;
  private static final double TEMPERATURE_C = 20;

  /** Rounds in which the strength follows the wanted conductivity. */
  private static final int EC_ROUNDS = 4;

  private static final int TRACE_FACTOR = 1000;
  private static final double TRACE_BOTTLE_L = 1;

  private final FeedShelf shelf;
  private final FeedWish wish;
  private final SourceWater water;
  private final Optional<PhDose> acid;
  private final Composition treated;
  private final WeighingScale scale;
  private final List<Bag> bags;

  private HomeFeed(FeedShelf shelf, FeedWish wish) {
    this.shelf = shelf;
    this.wish = wish;
    water = HomeShelf.water(shelf);
    acid = acid();
    treated = acid.map(PhDose::after).orElse(water.composition());
    scale = HomeShelf.scale(shelf);
    bags = HomeShelf.bags(shelf);
  }

  /**
   * The sheet.
   *
   * @throws sallet.feed.FeedFault when something written cannot be read
   * @throws sallet.feed.UnsafeDose when the answer would leave safe limits
   */
  public static FeedSheet sheet(FeedShelf shelf, FeedWish wish) {
    return new HomeFeed(shelf, wish).sheet();
  }

  private Optional<PhDose> acid() {
    double alkalinity = water.alkalinityMeq();
    if (alkalinity <= MUCH_ALKALINITY) {
      return Optional.empty();
    }
    double left = Math.max(ALKALINITY_LEFT, (1 - PhDose.SAFE_SHARE) * alkalinity * 1.001);
    return Optional.of(
        PhDose.toAlkalinity(
            water.composition(), wish.litres(), left, HomeShelf.acid(shelf), shelf.acidPercent()));
  }

  private FeedSheet sheet() {
    TargetSolution published = HomeShelf.target(shelf);
    Optional<Double> wantedEc = HomeShelf.ecMsCm(shelf);
    double strength = wantedEc.map(published::strengthForEc).orElse(1.0);
    Recipe main = main(published.atStrength(strength));
    for (int i = 0; i < EC_ROUNDS && wantedEc.isPresent(); i++) {
      double got = Conductivity.msCm25(main.perLitre(), Carbon.OPEN);
      strength = Math.max(0.05, Math.min(3, strength * Strength.fromEc(wantedEc.get(), got)));
      main = main(published.atStrength(strength));
    }
    TargetSolution target = published.atStrength(strength);
    Optional<Recipe> trace = trace(target);
    Composition finished = finished(main, trace);
    SafeSolution.check(finished);
    FeedSheet.State state = state(finished);
    return new FeedSheet(
        wish.litres(),
        target,
        strength,
        water,
        acid,
        main,
        trace,
        trace.map(t -> TraceStock.of(t, TRACE_FACTOR, TRACE_BOTTLE_L, scale)),
        stock(main),
        finished,
        state,
        readings(state.ecMsCm()),
        wish.correct()
            .map(text -> Correcting.of(text, finished, treated, this.wish.litres(), wish)),
        notes(target, main, trace, state),
        cautions(main, trace));
  }

  private Recipe main(TargetSolution target) {
    List<Bag> macros = bags.stream().filter(b -> b.product().use() != Use.TRACE).toList();
    return RecipeFinder.find(
        new RecipeQuestion(
            RecipeQuestion.goals(target, false),
            treated,
            wish.litres(),
            macros,
            Optional.of(scale),
            SolutionLimits.usual(),
            Optional.empty()));
  }

  private Optional<Recipe> trace(TargetSolution target) {
    List<Bag> traces = bags.stream().filter(b -> b.product().use() == Use.TRACE).toList();
    if (traces.isEmpty() || target.nutrients(true).isEmpty()) {
      return Optional.empty();
    }
    SolutionLimits limits = new SolutionLimits(1, 1000, 1000);
    return Optional.of(
        RecipeFinder.find(
            new RecipeQuestion(
                RecipeQuestion.goals(target, true),
                traceOf(treated),
                1,
                traces,
                Optional.empty(),
                limits,
                Optional.of(traces.size()))));
  }

  /** The part of a composition that trace salts can change. */
  private static Composition traceOf(Composition all) {
    EnumMap<Ion, Double> traces = new EnumMap<>(Ion.class);
    for (Nutrient nutrient : Nutrient.values()) {
      if (nutrient.isTrace()) {
        nutrient.ions().forEach(ion -> traces.put(ion, all.mmol(ion)));
      }
    }
    return new Composition(traces);
  }

  private Composition finished(Recipe main, Optional<Recipe> trace) {
    Composition sum = main.perLitre();
    if (trace.isPresent()) {
      for (Recipe.Dose dose : trace.get().doses()) {
        sum = sum.plus(dose.product().perUnit().times(dose.amount()));
      }
    }
    return sum;
  }

  private static FeedSheet.State state(Composition finished) {
    SolutionState state = Speciation.at(TEMPERATURE_C).solve(finished, Carbon.OPEN);
    Map<Mineral, Double> saturation = new EnumMap<>(Mineral.class);
    for (Mineral mineral : Mineral.values()) {
      saturation.put(mineral, mineral.saturationIndex(state));
    }
    return new FeedSheet.State(
        Conductivity.msCm25(finished, Carbon.OPEN),
        state.ph(),
        state.alkalinityMeq(),
        OsmoticPressure.kPa(state),
        Buffer.meqPerPh(finished, 6, TEMPERATURE_C),
        saturation);
  }

  private Optional<StockPlan> stock(Recipe main) {
    return wish.stockFactor().map(factor -> StockPlan.of(main, factor, shelf.coldestTankC()));
  }

  private List<FeedSheet.Reading> readings(double fullEc) {
    if (wish.reading().isEmpty()) {
      return List.of();
    }
    double waterEc = Conductivity.msCm25(treated, Carbon.OPEN);
    return MeterReading.parse(wish.reading().get()).meanings().stream()
        .map(
            m ->
                new FeedSheet.Reading(
                    m,
                    Strength.fromEc(
                        Math.max(0, m.msCm() - waterEc), Math.max(0.05, fullEc - waterEc))))
        .toList();
  }

  private List<String> notes(
      TargetSolution target, Recipe main, Optional<Recipe> trace, FeedSheet.State state) {
    List<String> notes = new ArrayList<>(water.notes());
    double gap = target.chargeGapMeq();
    if (Math.abs(gap) > 0.05 * target.composition().cationsMeq()) {
      notes.add(
          "The published target is not balanced in charge (%+.1f meq/L), so it cannot be met exactly"
              .formatted(gap));
    }
    notes.addAll(main.notes());
    main.doses().forEach(d -> notes.addAll(d.product().notes()));
    trace.ifPresentOrElse(
        t -> notes.addAll(t.notes()),
        () -> notes.add("No trace salts are on the shelf: leaves pale within weeks without iron"));
    notes.add(Buffer.words(state.bufferMeqPerPh()));
    state
        .saturation()
        .forEach(
            (mineral, index) -> {
              if (index > 0 && mineral != Mineral.CALCITE) {
                notes.add(
                    "%s can fall out at this pH (saturation index %+.1f): keep pH below 6.5"
                        .formatted(capital(mineral.plainName()), index));
              }
            });
    chelateNote(state, trace).ifPresent(notes::add);
    return notes.stream().distinct().toList();
  }

  private static Optional<String> chelateNote(FeedSheet.State state, Optional<Recipe> trace) {
    boolean edta =
        trace.stream()
            .flatMap(t -> t.doses().stream())
            .anyMatch(d -> d.product().perUnit().mmol(Ion.IRON_EDTA) > 0);
    return edta && state.phLater() > 6.5
        ? Optional.of(
            "pH settles above 6.5, where iron EDTA lets go of its iron: lower pH or use DTPA or EDDHA")
        : Optional.empty();
  }

  private static String capital(String text) {
    return Character.toUpperCase(text.charAt(0)) + text.substring(1);
  }

  private List<Caution> cautions(Recipe main, Optional<Recipe> trace) {
    List<Caution> cautions = new ArrayList<>();
    if (acid.isPresent() || wish.correct().isPresent()) {
      cautions.add(Caution.ACID);
      cautions.add(Caution.CHLORINE);
    }
    if (main.doses().stream().anyMatch(d -> d.product().perUnit().mmol(Ion.NITRATE) > 0)) {
      cautions.add(Caution.NITRATE);
    }
    if (trace.isPresent()) {
      cautions.add(Caution.TRACE);
    }
    cautions.add(Caution.NOT_TO_DRINK);
    cautions.add(Caution.WASTE);
    cautions.add(Caution.MAINS);
    return cautions;
  }
}
