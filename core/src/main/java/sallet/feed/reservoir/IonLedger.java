package sallet.feed.reservoir;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import sallet.feed.FeedFault;
import sallet.feed.ion.Composition;
import sallet.feed.ion.Ion;
import sallet.feed.ion.Nutrient;
import sallet.feed.solution.Carbon;
import sallet.feed.solution.Conductivity;
import sallet.feed.solution.Speciation;

/**
 * The books of a reservoir: every ion that goes in and out. EC alone cannot see sodium, chloride
 * and sulfate pile up while nitrogen, phosphorus and potassium go down.
 *
 * @param day days since the solution was fresh
 * @param litres volume, L
 * @param perLitre content, mmol/L
 * @param fresh content of the fresh solution, mmol/L
 * @param addedLitres water and solution added since, L
 * @param takenMmol total taken up since, mmol
 */
public record IonLedger(
    double day,
    double litres,
    Composition perLitre,
    Composition fresh,
    double addedLitres,
    Composition takenMmol) {
  private static final double OLDEST_DAYS = 28;
  private static final double MOST_TURNOVERS = 2.5;
  private static final double USED_UP = 0.4;
  private static final double PILED_UP = 2.5;
  private static final double SODIUM_MG_L = 50;
  private static final double IDLE_SHARE = 0.3;

  /** A reservoir below this share is as good as dry. */
  private static final double LEAST_LEFT = 0.05;

  /** A fresh solution. */
  public static IonLedger fresh(Composition perLitre, double litres) {
    if (!(litres > 0 && litres <= 10_000)) {
      throw new FeedFault("The reservoir must hold above 0 to 10000 L, was %s L".formatted(litres));
    }
    return new IonLedger(0, litres, perLitre, perLitre, 0, Composition.EMPTY);
  }

  /**
   * Some days of growth: plants drink, water evaporates.
   *
   * @param drunkL water through the plants, L
   * @param evaporatedL water lost to the air, L
   */
  public IonLedger drunk(double days, double drunkL, double evaporatedL, UptakePrior plants) {
    double left = litres - drunkL - evaporatedL;
    if (!(left > LEAST_LEFT * litres)) {
      throw new FeedFault(
          "The plants and the air would take %.1f L of the %.1f L in the reservoir"
              .formatted(drunkL + evaporatedL, litres));
    }
    Composition wanted = plants.drunkWith(perLitre).times(drunkL);
    EnumMap<Ion, Double> kept = new EnumMap<>(Ion.class);
    EnumMap<Ion, Double> taken = new EnumMap<>(Ion.class);
    perLitre
        .mmol()
        .forEach(
            (ion, mmol) -> {
              double take = Math.min(wanted.mmol(ion), mmol * litres);
              taken.put(ion, take);
              kept.put(ion, mmol * litres - take);
            });
    return new IonLedger(
        day + days,
        left,
        new Composition(kept).times(1 / left),
        fresh,
        addedLitres,
        takenMmol.plus(new Composition(taken)));
  }

  /**
   * With water or solution poured in.
   *
   * @param topUp what is poured in, per litre
   * @param topUpL how much, L
   */
  public IonLedger toppedUp(Composition topUp, double topUpL) {
    return new IonLedger(
        day,
        litres + topUpL,
        Composition.mix(perLitre, litres, topUp, topUpL),
        fresh,
        addedLitres + topUpL,
        takenMmol);
  }

  /** The same with acid, base or salts added, mmol for the whole tank. */
  public IonLedger plus(Composition addedMmol) {
    return new IonLedger(
        day, litres, perLitre.plus(addedMmol.times(1 / litres)), fresh, addedLitres, takenMmol);
  }

  /** Conductivity at 25 °C, mS/cm. */
  public double ecMsCm() {
    return Conductivity.msCm25(perLitre, Carbon.OPEN);
  }

  /** pH in contact with air. */
  public double ph(double temperatureC) {
    return Speciation.at(temperatureC).solve(perLitre, Carbon.OPEN).ph();
  }

  /** Strength of the top-up, 0 to 2, that brings the tank back to an EC at its full volume. */
  public static double topUpStrength(
      IonLedger low, Composition water, Composition salts, double topUpL, double ecMsCm) {
    double least = 0;
    double most = 2;
    for (int i = 0; i < 40; i++) {
      double strength = (least + most) / 2;
      Composition topUp = water.plus(salts.times(strength));
      Composition mixed = Composition.mix(low.perLitre, low.litres, topUp, topUpL);
      if (Conductivity.msCm25(mixed, Carbon.OPEN) < ecMsCm) {
        least = strength;
      } else {
        most = strength;
      }
    }
    return (least + most) / 2;
  }

  /** Share of the charge carried by what plants hardly use: sodium, chloride, excess sulfate. */
  public double idleShare() {
    double excessSulfate = Math.max(0, perLitre.mmol(Ion.SULFATE) - fresh.mmol(Ion.SULFATE));
    double idle = perLitre.mmol(Ion.SODIUM) + perLitre.mmol(Ion.CHLORIDE) + 2 * excessSulfate;
    return idle / (perLitre.cationsMeq() + perLitre.anionsMeq() + 1e-9);
  }

  /** Why the solution should be renewed; empty while it need not be. */
  public List<String> reasonsToRenew() {
    List<String> reasons = new ArrayList<>();
    if (day >= OLDEST_DAYS) {
      reasons.add("It is %.0f days old".formatted(day));
    }
    if (addedLitres > MOST_TURNOVERS * litres) {
      reasons.add("%.1f times its volume has been added".formatted(addedLitres / litres));
    }
    if (perLitre.mg(Nutrient.SODIUM) > SODIUM_MG_L + fresh.mg(Nutrient.SODIUM)) {
      reasons.add("Sodium has piled up to %.0f mg/L".formatted(perLitre.mg(Nutrient.SODIUM)));
    }
    if (idleShare() > IDLE_SHARE) {
      reasons.add("%.0f %% of the salt is of no use to plants".formatted(100 * idleShare()));
    }
    for (Nutrient n : List.of(Nutrient.NITROGEN, Nutrient.PHOSPHORUS, Nutrient.POTASSIUM)) {
      if (perLitre.mg(n) < USED_UP * fresh.mg(n)) {
        reasons.add("%s is down to %.0f %%".formatted(n.symbol(), percent(n)));
      }
    }
    for (Nutrient n : TankWeek.TOLD.subList(1, 6)) {
      if (perLitre.mg(n) > PILED_UP * fresh.mg(n) && fresh.mg(n) > 0) {
        reasons.add("%s has piled up to %.0f %%".formatted(n.symbol(), percent(n)));
      }
    }
    return reasons;
  }

  private double percent(Nutrient nutrient) {
    return 100 * perLitre.mg(nutrient) / fresh.mg(nutrient);
  }
}
