package sallet.feed.home;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import sallet.feed.caution.Caution;
import sallet.feed.dose.Buffer;
import sallet.feed.dose.PhDose;
import sallet.feed.dose.PhRange;
import sallet.feed.ion.Composition;
import sallet.feed.ion.Ion;
import sallet.feed.ion.Nutrient;
import sallet.feed.product.Use;
import sallet.feed.recipe.Bag;
import sallet.feed.recipe.Recipe;
import sallet.feed.recipe.RecipeFinder;
import sallet.feed.recipe.RecipeQuestion;
import sallet.feed.recipe.SafeSolution;
import sallet.feed.recipe.SolutionLimits;
import sallet.feed.reservoir.IonLedger;
import sallet.feed.reservoir.Strength;
import sallet.feed.reservoir.TankHabit;
import sallet.feed.reservoir.TankWeek;
import sallet.feed.reservoir.UptakeLearning;
import sallet.feed.reservoir.UptakePrior;
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
  private static final double TEMPERATURE_C = 20;
  private static final int TRACE_FACTOR = 1000;
  private static final double TRACE_BOTTLE_L = 1;

  /** Salts' part of EC below which a share of it means nothing, mS/cm. */
  private static final double LEAST_MS_CM = 0.05;

  /** Trace salts are kept to their targets, not to the limits of main salts. */
  private static final SolutionLimits TRACE_LIMITS = new SolutionLimits(1, 1000, 1000);

  private final FeedShelf shelf;
  private final FeedWish wish;
  private final Optional<WaterBlend> blend;
  private final Mixture mixture;
  private final HomeMeter meter;
  private final List<Bag> bags;

  private HomeFeed(FeedShelf shelf, FeedWish wish) {
    this.shelf = shelf;
    this.wish = wish;
    SourceWater first = HomeShelf.water(shelf.water());
    Optional<SourceWater> second = shelf.second().map(s -> HomeShelf.water(s.water()));
    blend =
        second.map(
            other ->
                WaterBlend.of(
                    shelf, first, other, shelf.second().flatMap(s -> s.share()), wish.litres()));
    SourceWater water =
        blend.isPresent() && second.isPresent()
            ? first.blendedWith(second.get(), blend.get().share())
            : first;
    mixture = Mixture.of(shelf, water, wish.litres());
    meter = new HomeMeter(shelf.meter());
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

  private FeedSheet sheet() {
    TargetSolution target = HomeShelf.target(shelf).atStrength(mixture.strength());
    Recipe main = mixture.main();
    Optional<Recipe> trace = trace(target);
    Composition salts = salts(trace);
    Composition finished = mixture.treated().plus(salts);
    SafeSolution.check(finished);
    FeedSheet.State state = state(finished);
    Optional<TraceStock> traceStock =
        trace.map(t -> TraceStock.of(t, TRACE_FACTOR, TRACE_BOTTLE_L, HomeShelf.scale(shelf)));
    Optional<PhDose> settling =
        PhRange.mend(
            finished,
            state.phLater(),
            PhRange.FRESH_LOW,
            wish.litres(),
            HomeShelf.acid(shelf),
            TEMPERATURE_C);
    return new FeedSheet(
        wish.litres(),
        target,
        mixture.strength(),
        mixture.water(),
        blend,
        mixture.acid(),
        main,
        trace,
        traceStock,
        wish.stockFactor().map(factor -> StockPlan.of(main, factor, shelf.coldestTankC())),
        finished,
        Cost.of(bags, Stream.concat(Stream.of(main), trace.stream()).toList(), wish.litres()),
        state,
        settling,
        running(salts, settling, state, new Correcting(shelf, wish, mixture, traceStock, meter)),
        notes(target, trace, state),
        cautions(main, trace, settling));
  }

  private Optional<Recipe> trace(TargetSolution target) {
    List<Bag> traces = bags.stream().filter(b -> b.product().use() == Use.TRACE).toList();
    if (traces.isEmpty() || target.nutrients(true).isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        RecipeFinder.find(
            new RecipeQuestion(
                RecipeQuestion.goals(target, true),
                traceOf(mixture.treated()),
                1,
                traces,
                Optional.empty(),
                TRACE_LIMITS,
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

  /** What all salts bring to a litre. */
  private Composition salts(Optional<Recipe> trace) {
    Composition sum = mixture.salts();
    for (Recipe.Dose dose : trace.map(Recipe::doses).orElse(List.of())) {
      sum = sum.plus(dose.product().perUnit().times(dose.amount()));
    }
    return sum;
  }

  private FeedSheet.State state(Composition finished) {
    SolutionState state = Speciation.at(TEMPERATURE_C).solve(finished, Carbon.OPEN);
    Map<Mineral, Double> saturation = new EnumMap<>(Mineral.class);
    for (Mineral mineral : Mineral.values()) {
      saturation.put(mineral, mineral.saturationIndex(state));
    }
    double ec = Conductivity.msCm25(finished, Carbon.OPEN);
    return new FeedSheet.State(
        ec,
        meter.shows(ec),
        state.ph(),
        state.alkalinityMeq(),
        OsmoticPressure.kPa(state),
        Buffer.meqPerPh(finished, 6, TEMPERATURE_C),
        saturation);
  }

  private FeedSheet.Running running(
      Composition salts, Optional<PhDose> settling, FeedSheet.State state, Correcting correcting) {
    Composition treated = mixture.treated();
    Composition finished = treated.plus(salts);
    IonLedger fresh = IonLedger.fresh(settling.map(PhDose::after).orElse(finished), wish.litres());
    TankHabit habit = HomeShelf.habit(shelf, wish.trayM2());
    UptakePrior plants =
        UptakeLearning.learn(habit.plants(), fresh, treated, salts, meter.seen(shelf.running()));
    return new FeedSheet.Running(
        readings(state.ecMsCm(), treated),
        wish.correct().map(text -> correcting.of(text, finished)),
        plants,
        follow(fresh, salts, habit.with(plants)),
        follow(fresh, salts, habit.with(plants.hungry())),
        follow(fresh, salts, habit.with(plants.thirsty())));
  }

  private List<TankWeek> follow(IonLedger fresh, Composition salts, TankHabit habit) {
    return TankWeek.follow(fresh, mixture.treated(), salts, habit, wish.weeks());
  }

  private List<FeedSheet.Reading> readings(double fullEc, Composition treated) {
    if (wish.reading().isEmpty()) {
      return List.of();
    }
    double waterEc = Conductivity.msCm25(treated, Carbon.OPEN);
    double saltsEc = Math.max(LEAST_MS_CM, fullEc - waterEc);
    return meter.meanings(wish.reading().get()).stream()
        .map(
            m ->
                new FeedSheet.Reading(m, Strength.fromEc(Math.max(0, m.msCm() - waterEc), saltsEc)))
        .toList();
  }

  private List<String> notes(TargetSolution target, Optional<Recipe> trace, FeedSheet.State state) {
    Recipe main = mixture.main();
    List<String> notes = new ArrayList<>(mixture.water().notes());
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
    notes.addAll(meter.notes());
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

  private List<Caution> cautions(Recipe main, Optional<Recipe> trace, Optional<PhDose> settling) {
    List<Caution> cautions = new ArrayList<>();
    boolean doses = mixture.acid().isPresent() || settling.isPresent();
    if (doses || wish.correct().isPresent() || wish.weeks() > 0) {
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
    return cautions;
  }
}
