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
import sallet.feed.meter.MeterReading;
import sallet.feed.product.Product;
import sallet.feed.recipe.Recipe;
import sallet.feed.reservoir.TankWeek;
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
   */
  public record Correction(String asked, String words, Optional<PhDose> dose) {}

  /**
   * What was asked about the running reservoir.
   *
   * @param readings what a reading could mean, when one is given
   * @param correction what to add, when something measured is to be mended
   * @param weeks the reservoir week by week, when it is to be followed
   */
  public record Running(
      List<Reading> readings, Optional<Correction> correction, List<TankWeek> weeks) {
    public Running {
      readings = List.copyOf(readings);
      weeks = List.copyOf(weeks);
    }
  }

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
