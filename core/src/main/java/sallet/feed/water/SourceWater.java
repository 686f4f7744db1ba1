package sallet.feed.water;

import java.util.ArrayList;
import java.util.List;
import sallet.feed.ion.Composition;
import sallet.feed.ion.Ion;
import sallet.feed.solution.Carbon;
import sallet.feed.solution.Conductivity;
import sallet.feed.solution.SolutionState;
import sallet.feed.solution.Speciation;

/**
 * Water to mix with, balanced in charge.
 *
 * @param name what the grower calls it
 * @param composition ions per litre, with its dissolved carbon
 * @param notes what was assumed on the way from the analysis
 */
public record SourceWater(String name, Composition composition, List<String> notes) {
  public SourceWater {
    notes = List.copyOf(notes);
  }

  /**
   * Typical reverse-osmosis or distilled water: 0.15 mmol/L salt, 0.04 meq/L alkalinity (common
   * practice).
   */
  public static SourceWater reverseOsmosis() {
    return typical("reverse-osmosis water", 0.15, 0.02, 0.15);
  }

  /** Typical clean rain: 0.05 mmol/L salt, 0.04 meq/L alkalinity (common practice). */
  public static SourceWater rain() {
    return typical("rain water", 0.05, 0.02, 0.05);
  }

  private static SourceWater typical(String name, double na, double ca, double cl) {
    Composition ions = Composition.of(Ion.SODIUM, na).with(Ion.CALCIUM, ca).with(Ion.CHLORIDE, cl);
    return new SourceWater(
        name, ions.with(Ion.CARBON, ions.alkalinityMeq()), List.of("Typical values, not measured"));
  }

  /** Acid the water can swallow, meq/L. */
  public double alkalinityMeq() {
    return composition.alkalinityMeq();
  }

  /** Calcium and magnesium together, mmol/L. */
  public double hardnessMmol() {
    return composition.mmol(Ion.CALCIUM) + composition.mmol(Ion.MAGNESIUM);
  }

  /** The water as it comes, before carbon dioxide enters or leaves. */
  public SolutionState stateAsDrawn(double temperatureC) {
    return Speciation.at(temperatureC).solve(composition, Carbon.CLOSED);
  }

  /** Conductivity at 25 °C, mS/cm. */
  public double ecMsCm() {
    return Conductivity.msCm25(composition, Carbon.CLOSED);
  }

  /**
   * This water poured together with another.
   *
   * @param shareOfOther 0 to 1
   */
  public SourceWater blendedWith(SourceWater other, double shareOfOther) {
    if (!(shareOfOther >= 0 && shareOfOther <= 1)) {
      throw new IllegalArgumentException("share must be 0 to 1, was " + shareOfOther);
    }
    List<String> both = new ArrayList<>(notes);
    both.addAll(other.notes);
    return new SourceWater(
        "%.0f %% %s and %.0f %% %s"
            .formatted(100 * (1 - shareOfOther), name, 100 * shareOfOther, other.name),
        Composition.mix(composition, 1 - shareOfOther, other.composition, shareOfOther),
        both);
  }
}
