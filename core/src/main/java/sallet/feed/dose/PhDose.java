package sallet.feed.dose;

import java.util.ArrayList;
import java.util.List;
import sallet.feed.FeedFault;
import sallet.feed.UnsafeDose;
import sallet.feed.ion.Composition;
import sallet.feed.ion.Ion;
import sallet.feed.product.Reagent;
import sallet.feed.solution.Carbon;
import sallet.feed.solution.SolutionState;
import sallet.feed.solution.Speciation;

/**
 * Acid or base for a volume of water or solution.
 *
 * @param bottle what to add
 * @param millilitres how much for the whole volume
 * @param meqL alkalinity it takes from each litre, meq/L; negative for a base
 * @param phNow pH read right after mixing, before carbon dioxide leaves
 * @param phLater pH once the solution has stood in air
 * @param alkalinityLeftMeqL alkalinity afterwards, meq/L
 * @param after what is in a litre afterwards
 * @param notes what to know
 */
public record PhDose(
    Bottle bottle,
    double millilitres,
    double meqL,
    double phNow,
    double phLater,
    double alkalinityLeftMeqL,
    Composition after,
    List<String> notes) {

  /** More is never taken away: the last tenth lets pH crash (judgement). */
  public static final double SAFE_SHARE = 0.9;

  /** A base dose beyond this is refused, meq/L (judgement). */
  private static final double MOST_BASE_MEQ = 1;

  /** Beyond pH 6.5 calcium phosphate starts to fall out of a full-strength solution. */
  private static final double HIGHEST_TARGET = 7;

  private static final double LOWEST_TARGET = 4.5;

  /** As near to the wanted pH as matters. */
  private static final double REACHED = 0.05;

  /** The unnamed ions change the ionic strength a little; so often it is taken up again. */
  private static final int ROUNDS = 6;

  public PhDose {
    notes = List.copyOf(notes);
  }

  /**
   * Dose that leaves a wanted alkalinity: the sound way to treat source water.
   *
   * @param wantedMeq alkalinity to leave, meq/L; 0.4 to 1.0 keeps pH steady
   */
  public static PhDose toAlkalinity(
      Composition water, double litres, double wantedMeq, Bottle bottle) {
    checkVolume(litres);
    double meq = water.alkalinityMeq() - wantedMeq;
    Reagent acid = bottle.reagent();
    if (!acid.isAcid()) {
      throw new FeedFault("Alkalinity is taken away with an acid, not with " + acid.plainName());
    }
    if (!(meq > 0)) {
      throw new FeedFault(
          "The water has %.2f meq/L of alkalinity, %.2f are to stay: no acid is needed"
              .formatted(water.alkalinityMeq(), wantedMeq));
    }
    refuseTooMuch(water, meq);
    return dose(water, litres, meq / acid.equivalents(), bottle, 25);
  }

  /**
   * Dose that brings a solution to a pH it keeps once carbon dioxide has left. Acid stops at the
   * safe share of the alkalinity; the rest is for the next day, after another reading.
   *
   * @param now what is in a litre; see {@link #measured} for a solution with a pH reading
   */
  public static PhDose toPh(
      Composition now, double litres, double targetPh, Bottle bottle, double temperatureC) {
    checkVolume(litres);
    Reagent reagent = bottle.reagent();
    if (!(targetPh >= LOWEST_TARGET && targetPh <= HIGHEST_TARGET)) {
      throw new FeedFault(
          "The wanted pH must be %.1f to %.1f, was %s"
              .formatted(LOWEST_TARGET, HIGHEST_TARGET, targetPh));
    }
    Speciation model = Speciation.at(temperatureC);
    double before = model.solve(now, Carbon.OPEN).ph();
    double direction = reagent.isAcid() ? -1 : 1;
    if (direction * (targetPh - before) <= 0) {
      throw new FeedFault(
          "pH settles at %.2f by itself; %s would lead away from %.2f"
              .formatted(before, reagent.plainName(), targetPh));
    }
    double low = 0;
    double high = safeMmol(now, reagent);
    for (int i = 0; i < 50; i++) {
      double middle = (low + high) / 2;
      double ph = model.solve(now.plus(reagent.perMole().times(middle)), Carbon.OPEN).ph();
      if (direction * (targetPh - ph) > 0) {
        low = middle;
      } else {
        high = middle;
      }
    }
    PhDose dose = dose(now, litres, low, bottle, temperatureC);
    boolean reached = direction * (targetPh - dose.phLater) < REACHED;
    if (reached) {
      return dose;
    }
    if (!reagent.isAcid()) {
      throw new UnsafeDose(
          "Refused: more than %.0f meq/L of base at once; renew the solution instead"
              .formatted(MOST_BASE_MEQ));
    }
    return dose.with(
        "This takes %.0f %% of the alkalinity, the most that is safe at once, and leads to pH %.1f; read pH again tomorrow and ask for the rest"
            .formatted(100 * SAFE_SHARE, dose.phLater));
  }

  /** What the dose brings, mmol for the whole volume. */
  public Composition addedMmol() {
    return bottle.reagent().perMole().times(millilitres * bottle.molarity());
  }

  /** Water to thin it in first, L; 0 when it is thin enough. */
  public double thinningL() {
    return bottle.percent() > PhRange.ACID_PERCENT ? thinningL(bottle, millilitres) : 0;
  }

  private static double thinningL(Bottle bottle, double millilitres) {
    return Math.max(0.1, millilitres * bottle.percent() / PhRange.ACID_PERCENT / 1000);
  }

  /** With a further note. */
  PhDose with(String note) {
    List<String> more = new ArrayList<>(notes);
    more.add(note);
    return new PhDose(bottle, millilitres, meqL, phNow, phLater, alkalinityLeftMeqL, after, more);
  }

  /** The most that may be added at once, mmol/L. */
  private static double safeMmol(Composition now, Reagent reagent) {
    double meq = reagent.isAcid() ? SAFE_SHARE * Math.max(0, now.alkalinityMeq()) : MOST_BASE_MEQ;
    return meq / Math.abs(reagent.equivalents());
  }

  /**
   * The composition of a solution whose pH was measured: unnamed ions carry the acid or base that
   * the books do not know of.
   *
   * @param ph as read
   */
  public static Composition measured(Composition booked, double ph, double temperatureC) {
    Speciation model = Speciation.at(temperatureC);
    Composition seen = booked;
    for (int i = 0; i < ROUNDS; i++) {
      SolutionState state = model.solveAtPh(seen, Carbon.OPEN, ph);
      double unknown = state.alkalinityMeq() - booked.alkalinityMeq();
      Ion carrier = unknown > 0 ? Ion.OTHER_CATION : Ion.OTHER_ANION;
      seen =
          booked
              .with(Ion.CARBON, state.totals().mmol(Ion.CARBON))
              .plus(Composition.of(carrier, Math.abs(unknown)));
    }
    return seen;
  }

  private static void checkVolume(double litres) {
    if (!(litres > 0 && litres <= 10_000)) {
      throw new FeedFault("The volume must be above 0 to 10000 L, was %s L".formatted(litres));
    }
  }

  private static PhDose dose(
      Composition before, double litres, double mmolL, Bottle bottle, double temperatureC) {
    Reagent reagent = bottle.reagent();
    double meqL = mmolL * reagent.equivalents();
    Composition after = before.plus(reagent.perMole().times(mmolL));
    Speciation model = Speciation.at(temperatureC);
    SolutionState now = model.solve(after, Carbon.CLOSED);
    SolutionState later = model.solve(after, Carbon.OPEN);
    double millilitres =
        AcidVolume.millilitres(
            Math.abs(meqL) * litres, bottle.molarity(), Math.abs(reagent.equivalents()));
    return new PhDose(
        bottle,
        millilitres,
        meqL,
        now.ph(),
        later.ph(),
        later.alkalinityMeq(),
        after,
        notes(bottle, millilitres, now.ph(), later.ph()));
  }

  private static void refuseTooMuch(Composition before, double meqL) {
    if (meqL > SAFE_SHARE * before.alkalinityMeq()) {
      throw new UnsafeDose(
          "Refused: this would take %.2f of the %.2f meq/L of alkalinity; past %.0f %% a few drops too many make pH crash below 4"
              .formatted(meqL, Math.max(0, before.alkalinityMeq()), 100 * SAFE_SHARE));
    }
  }

  private static List<String> notes(
      Bottle bottle, double millilitres, double phNow, double phLater) {
    Reagent reagent = bottle.reagent();
    double percent = bottle.percent();
    List<String> notes = new ArrayList<>();
    notes.add(reagent.caution());
    if (percent > PhRange.ACID_PERCENT) {
      notes.add(
          "First pour the %.0f mL into %.1f L of water, then that into the reservoir while stirring"
              .formatted(millilitres, thinningL(bottle, millilitres)));
    }
    if (percent > reagent.publicLimitPercent()) {
      notes.add(
          "In the EU the general public needs a licence for %s above %.0f %%; other countries have their own rules"
              .formatted(reagent.plainName(), reagent.publicLimitPercent()));
    }
    if (phLater - phNow > 0.2) {
      notes.add(
          "The meter will read %.1f at once and %.1f when the carbon dioxide has left: do not chase it with more acid"
              .formatted(phNow, phLater));
    }
    return notes;
  }
}
