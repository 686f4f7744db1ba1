package sallet.feed.home;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import sallet.feed.caution.Caution;
import sallet.feed.dose.PhDose;
import sallet.feed.ion.Composition;
import sallet.feed.ion.Nutrient;
import sallet.feed.meter.MeterReading;
import sallet.feed.product.Product;
import sallet.feed.recipe.Recipe;
import sallet.feed.reservoir.EcCorrection;
import sallet.feed.reservoir.TankWeek;
import sallet.feed.reservoir.UptakePrior;
import sallet.feed.solution.Mineral;
import sallet.feed.stock.StockPlan;
import sallet.feed.stock.TraceStock;
import sallet.feed.target.TargetSolution;
import sallet.feed.water.SourceWater;

/**
 * Everything a person needs at the sink.
 *
 * @param litres volume to mix, L
 * @param target the solution aimed at, at its strength
 * @param strength strength against the published solution
 * @param water the water mixed with
 * @param blend how it was blended, when there are two waters
 * @param acid acid against the water's alkalinity, when it has too much
 * @param main the main salts
 * @param trace the trace salts, when there are any on the shelf
 * @param traceStock the bottle they are made up in
 * @param stock concentrates of the main salts, when asked for
 * @param perLitre the finished solution
 * @param cost what its salts cost, when prices are stated
 * @param state what it is like
 * @param settling acid or base for the day after, when pH does not settle where it should
 * @param running what was asked about the running reservoir
 * @param notes what to know about this recipe
 * @param cautions safety texts that belong to it
 */
public record FeedSheet(
    double litres,
    TargetSolution target,
    double strength,
    SourceWater water,
    Optional<WaterBlend> blend,
    Optional<PhDose> acid,
    Recipe main,
    Optional<Recipe> trace,
    Optional<TraceStock> traceStock,
    Optional<StockPlan> stock,
    Composition perLitre,
    Optional<Cost> cost,
    State state,
    Optional<PhDose> settling,
    Running running,
    List<String> notes,
    List<Caution> cautions) {

  /**
   * What the finished solution is like.
   *
   * @param ecMsCm conductivity at 25 °C
   * @param meterShowsMsCm what the household's own meter shows for it
   * @param phLater pH at 20 °C once it has stood in air
   * @param alkalinityMeq alkalinity, meq/L
   * @param osmoticKPa pull against the roots
   * @param bufferMeqPerPh base that lifts pH by one, meq/L
   * @param saturation saturation index of each solid at 20 °C; above 0 it can fall out
   */
  public record State(
      double ecMsCm,
      double meterShowsMsCm,
      double phLater,
      double alkalinityMeq,
      double osmoticKPa,
      double bufferMeqPerPh,
      Map<Mineral, Double> saturation) {
    public State {
      saturation = Collections.unmodifiableMap(new EnumMap<>(saturation));
    }
  }

  /**
   * One meaning of a reading.
   *
   * @param strength strength it stands for, 1 being this recipe
   */
  public record Reading(MeterReading.Meaning meaning, double strength) {}

  /**
   * What to add to the running reservoir.
   *
   * @param asked what was measured
   * @param words what to do
   * @param dose the acid or base, when pH is off
   * @param strength water or stock, when EC is off
   * @param salts what brings the same as the stock, weighed dry
   * @param traceMl trace stock that goes with those salts, mL
   */
  public record Correction(
      String asked,
      String words,
      Optional<PhDose> dose,
      Optional<EcCorrection> strength,
      List<Recipe.Dose> salts,
      double traceMl) {
    public Correction {
      salts = List.copyOf(salts);
    }
  }

  /**
   * What was asked about the running reservoir.
   *
   * @param readings what a reading could mean, when one is given
   * @param correction what to add, when something measured is to be mended
   * @param plants what drinks, as learned
   * @param weeks the reservoir week by week, when it is to be followed
   * @param hungry the same weeks with the least water for a kilogram of dry mass
   * @param thirsty the same weeks with the most
   */
  public record Running(
      List<Reading> readings,
      Optional<Correction> correction,
      UptakePrior plants,
      List<TankWeek> weeks,
      List<TankWeek> hungry,
      List<TankWeek> thirsty) {
    public Running {
      readings = List.copyOf(readings);
      weeks = List.copyOf(weeks);
      hungry = List.copyOf(hungry);
      thirsty = List.copyOf(thirsty);
    }

    /** Least and greatest concentration at the end of a week (from 0), mg/L. */
    public Range range(int week, Nutrient nutrient) {
      double one = hungry.get(week).ledger().perLitre().mg(nutrient);
      double other = thirsty.get(week).ledger().perLitre().mg(nutrient);
      return new Range(Math.min(one, other), Math.max(one, other));
    }
  }

  /**
   * Between the 10 and the 90 % point of what plants drink.
   *
   * @param low mg/L
   * @param high mg/L
   */
  public record Range(double low, double high) {}

  /** What is taken from the shelf, main salts first. */
  public List<Product> products() {
    return Stream.concat(Stream.of(main), trace.stream())
        .flatMap(recipe -> recipe.doses().stream())
        .map(Recipe.Dose::product)
        .toList();
  }

  public FeedSheet {
    notes = List.copyOf(notes);
    cautions = List.copyOf(cautions);
  }
}
