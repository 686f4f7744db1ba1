package sallet.feed.target;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sallet.feed.EmbeddedTable;
import sallet.feed.FeedFault;
import sallet.feed.ion.Composition;
import sallet.feed.ion.Ion;
import sallet.feed.ion.Nutrient;
import sallet.feed.solution.Carbon;
import sallet.feed.solution.Conductivity;

/**
 * A nutrient solution to aim at.
 *
 * @param id short name
 * @param name in words
 * @param mgL concentration of each stated nutrient, mg/L; what is not stated is free
 * @param source who published it
 * @param knownAs published, memory or judgement
 */
public record TargetSolution(
    String id, String name, Map<Nutrient, Double> mgL, String source, String knownAs) {
  private static final List<TargetSolution> CATALOGUE =
      EmbeddedTable.rows("solutions.csv").stream().map(TargetSolution::of).toList();

  /** What a leafy bench starts with. */
  public static final String USUAL_ID = "lettuce-raft";

  private static final double STRONGEST = 3;

  public TargetSolution {
    EnumMap<Nutrient, Double> copy = new EnumMap<>(Nutrient.class);
    copy.putAll(mgL);
    copy.forEach(
        (nutrient, value) -> {
          if (!(value >= 0 && value <= 2000)) {
            throw new FeedFault(
                "Target %s must be 0 to 2000 mg/L, was %s".formatted(nutrient.symbol(), value));
          }
        });
    mgL = Collections.unmodifiableMap(copy);
  }

  /** All published solutions Sallet knows. */
  public static List<TargetSolution> catalogue() {
    return CATALOGUE;
  }

  /** The solution of an id or name, without regard to case. */
  public static Optional<TargetSolution> find(String text) {
    return CATALOGUE.stream()
        .filter(t -> t.id.equalsIgnoreCase(text.strip()) || t.name.equalsIgnoreCase(text.strip()))
        .findFirst();
  }

  private static TargetSolution of(Map<String, String> row) {
    EnumMap<Nutrient, Double> mgL = new EnumMap<>(Nutrient.class);
    for (Nutrient nutrient : Nutrient.values()) {
      String cell = row.getOrDefault(nutrient.symbol(), "");
      if (!cell.isBlank()) {
        mgL.put(nutrient, Double.valueOf(cell));
      }
    }
    return new TargetSolution(
        EmbeddedTable.text(row, "id"),
        EmbeddedTable.text(row, "name"),
        mgL,
        EmbeddedTable.text(row, "source"),
        EmbeddedTable.text(row, "knownAs"));
  }

  /** All nitrogen, mg/L. */
  public double nitrogenMgL() {
    return mgL.getOrDefault(Nutrient.NITROGEN, 0.0)
        + mgL.getOrDefault(Nutrient.NITRATE_NITROGEN, 0.0)
        + mgL.getOrDefault(Nutrient.AMMONIUM_NITROGEN, 0.0);
  }

  /** Positive minus negative charge of the stated nutrients, meq/L; nitrogen as stated. */
  public double chargeGapMeq() {
    return ions().alkalinityMeq();
  }

  private Composition ions() {
    EnumMap<Ion, Double> mmol = new EnumMap<>(Ion.class);
    mgL.forEach(
        (nutrient, value) ->
            mmol.merge(nutrient.ions().get(0), value / nutrient.element().weight(), Double::sum));
    mmol.remove(Ion.IRON);
    return new Composition(mmol);
  }

  /**
   * The solution as ions with the charge closed: by sulfate where sulfur is free, else by unnamed
   * ions.
   */
  public Composition composition() {
    Composition ions = ions();
    double gap = ions.alkalinityMeq();
    if (gap > 0 && !mgL.containsKey(Nutrient.SULFUR)) {
      return ions.with(Ion.SULFATE, gap / 2);
    }
    return gap > 0 ? ions.with(Ion.OTHER_ANION, gap) : ions.with(Ion.OTHER_CATION, -gap);
  }

  /** Conductivity at full strength in pure water, mS/cm at 25 °C. */
  public double ecMsCm() {
    return Conductivity.msCm25(composition(), Carbon.OPEN);
  }

  /**
   * The solution with some concentrations changed. All nitrogen is split into what is ammonium and
   * nitrate for the rest.
   *
   * @param wantedMgL concentrations wanted instead, mg/L
   */
  public TargetSolution changed(Map<Nutrient, Double> wantedMgL) {
    EnumMap<Nutrient, Double> all = new EnumMap<>(Nutrient.class);
    all.putAll(mgL);
    all.putAll(wantedMgL);
    Double nitrogen = all.remove(Nutrient.NITROGEN);
    if (nitrogen != null) {
      double ammonium = all.getOrDefault(Nutrient.AMMONIUM_NITROGEN, 0.0);
      if (ammonium > nitrogen) {
        throw new FeedFault(
            "Ammonium nitrogen (%.1f mg/L) is more than all nitrogen (%.1f mg/L)"
                .formatted(ammonium, nitrogen));
      }
      all.put(Nutrient.NITRATE_NITROGEN, nitrogen - ammonium);
    }
    return new TargetSolution(id, name + ", changed", all, source + "; changed by you", knownAs);
  }

  /** All nutrients times a strength. */
  public TargetSolution atStrength(double strength) {
    if (!(strength > 0 && strength <= STRONGEST)) {
      throw new FeedFault(
          "The strength must be above 0 to %.0f times the published solution, was %.2f"
              .formatted(STRONGEST, strength));
    }
    EnumMap<Nutrient, Double> scaled = new EnumMap<>(Nutrient.class);
    mgL.forEach((nutrient, value) -> scaled.put(nutrient, value * strength));
    return new TargetSolution(id, name, scaled, source, knownAs);
  }

  /** The strength whose conductivity in pure water is as wanted. */
  public double strengthForEc(double msCm) {
    if (!(msCm > 0 && msCm <= 4)) {
      throw new FeedFault("EC must be above 0 to 4 mS/cm, was %s".formatted(msCm));
    }
    Composition full = composition();
    double low = 0;
    double high = 4 * STRONGEST;
    for (int i = 0; i < 50; i++) {
      double middle = (low + high) / 2;
      if (Conductivity.msCm25(full.times(middle), Carbon.OPEN) < msCm) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /** Main nutrients (false) or trace nutrients (true) as stated. */
  public List<Nutrient> nutrients(boolean trace) {
    List<Nutrient> chosen = new ArrayList<>();
    mgL.keySet().stream().filter(n -> n.isTrace() == trace).forEach(chosen::add);
    return chosen;
  }
}
