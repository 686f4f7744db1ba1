package sallet.crop.forecast;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import sallet.crop.Concern;
import sallet.crop.Crop;
import sallet.crop.CropGuide;
import sallet.crop.Emergence;
import sallet.crop.HarvestRule;
import sallet.crop.PlaceDays;
import sallet.crop.Span;
import sallet.crop.TrayYield;
import sallet.crop.risk.Risk;

/**
 * Whether a crop grows well at a place from a sowing on, and why not.
 *
 * @param crop the crop
 * @param grade how well
 * @param why reasons, the first the weightiest
 * @param potWeekG edible grams by pot and week on the bench, median; empty for crops without pots
 * @param readyDays days from sowing to the first harvest, median; empty when never
 * @param forecast what becomes of it; empty for trays, fruit and crops without parameters
 */
public record RoomVerdict(
    Crop crop,
    Grade grade,
    List<String> why,
    OptionalDouble potWeekG,
    OptionalDouble readyDays,
    Optional<GrowthForecast> forecast) {
  public RoomVerdict {
    why = List.copyOf(why);
  }

  /** How well a crop grows. */
  public enum Grade {
    WELL,
    FAIRLY,
    POORLY,
    NOT;

    Grade or(Grade other) {
      return compareTo(other) >= 0 ? this : other;
    }
  }

  /** Later than the handbook's latest day by these factors is fair and poor. Judgement. */
  private static final double FAIR = 1.15;

  private static final double POOR = 1.5;

  /** Days of light a tray or fruiting crop is judged by. */
  private static final int LIGHT_DAYS = 14;

  /** All crops, those that grow best first, of equal grade those that give most. */
  public static List<RoomVerdict> ofAll(
      List<Crop> crops, LocalDate sown, GrowingRoom room, Spread spread) {
    return crops.stream()
        .map(crop -> of(crop, sown, room, spread))
        .sorted(
            Comparator.comparing(RoomVerdict::grade).thenComparing(v -> -v.potWeekG().orElse(0)))
        .toList();
  }

  /** One crop, picked as hard as it bears. */
  public static RoomVerdict of(Crop crop, LocalDate sown, GrowingRoom room, Spread spread) {
    return of(crop, sown, room, spread, HarvestRule.LARGEST_PICK);
  }

  /** One crop with a weekly pick of a share of its leaf area, see {@link GrowthForecast}. */
  public static RoomVerdict of(
      Crop crop, LocalDate sown, GrowingRoom room, Spread spread, double pickShare) {
    return switch (crop.style()) {
      case LEAF_BY_LEAF, WHOLE_PLANT ->
          crop.plannable()
              ? ofPot(GrowthForecast.of(crop, sown, room, spread, pickShare))
              : byLight(crop, sown, room);
      case TRAY, FRUIT -> byLight(crop, sown, room);
    };
  }

  private static RoomVerdict ofPot(GrowthForecast forecast) {
    Crop crop = forecast.crop();
    if (forecast.course().isEmpty()) {
      return new RoomVerdict(
          crop,
          Grade.NOT,
          List.of(forecast.emergence().advice()),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          Optional.of(forecast));
    }
    GrowthForecast.Course course = forecast.course().get();
    double ready = course.readyDays().median();
    List<String> why = new ArrayList<>();
    Grade grade = byTime(crop, ready, course.nearSeed(), why);
    Emergence emergence = forecast.emergence();
    grade = grade.or(byConcern(emergence.concern(), emergence.advice(), why));
    for (Risk risk : course.risks()) {
      grade = grade.or(byConcern(gravity(risk), risk.says(), why));
    }
    return new RoomVerdict(
        crop,
        grade,
        why,
        OptionalDouble.of(course.potWeekG()),
        Double.isInfinite(ready) ? OptionalDouble.empty() : OptionalDouble.of(ready),
        Optional.of(forecast));
  }

  /** What spoils the taste does not make a crop grow poorly; damp air is a matter of the room. */
  private static Concern gravity(Risk risk) {
    return switch (risk.kind()) {
      case STRETCH, BOLTING, CHILLING, HEAT -> risk.concern();
      case TIP_BURN, BITTERNESS -> risk.concern() == Concern.ACT ? Concern.WATCH : Concern.NONE;
      case SLOW_DRYING, NITRATE -> Concern.NONE;
    };
  }

  private static Grade byConcern(Concern concern, String says, List<String> why) {
    if (concern != Concern.NONE) {
      why.add(says);
    }
    return switch (concern) {
      case NONE -> Grade.WELL;
      case WATCH -> Grade.FAIRLY;
      case ACT -> Grade.POORLY;
    };
  }

  private static Grade byTime(Crop crop, double ready, boolean nearSeed, List<String> why) {
    if (Double.isInfinite(ready) && nearSeed) {
      why.add("It runs to seed before it is large enough to harvest: only as baby leaf.");
      return Grade.POORLY;
    }
    if (Double.isInfinite(ready)) {
      why.add("Too little light or warmth: half of its plants are never large enough to harvest.");
      return Grade.NOT;
    }
    Optional<Span> usual = crop.guide().firstCutDays().or(() -> crop.guide().fullDays());
    double latest = usual.map(Span::high).orElse(ready);
    if (ready <= FAIR * latest) {
      return Grade.WELL;
    }
    why.add(
        "Slow here: first harvest after %d days, usual are %d."
            .formatted(Math.round(ready), Math.round(latest)));
    return ready <= POOR * latest ? Grade.FAIRLY : Grade.POORLY;
  }

  /** Crops without a growth forecast are judged by the handbook's light. */
  private static RoomVerdict byLight(Crop crop, LocalDate sown, GrowingRoom room) {
    CropGuide guide = crop.guide();
    double dliMol = meanDliMol(room.bench(), sown);
    List<String> why = new ArrayList<>();
    why.add(
        "%s mol a day; it wants %s, at least %s."
            .formatted(
                Math.round(dliMol),
                Math.round(guide.targetDliMol()),
                Math.round(guide.growDliMol().low())));
    if (crop.growth().isPresent() && crop.guide().tray().isEmpty()) {
      why.add(crop.whyNotPlannable());
    }
    Grade grade =
        dliMol < guide.growDliMol().low()
            ? Grade.NOT
            : dliMol < guide.targetDliMol() ? Grade.FAIRLY : Grade.WELL;
    guide
        .tray()
        .map(tray -> tray.gramsAt(dliMol, guide))
        .filter(OptionalDouble::isPresent)
        .ifPresent(
            grams ->
                why.add(
                    "A tray of 100 cm² gives about %d g (common practice)."
                        .formatted(Math.round(grams.getAsDouble()))));
    Emergence emergence = Emergence.of(crop, room.nursery().meanC(room.nursery().index(sown)));
    grade = grade.or(byConcern(emergence.concern(), emergence.advice(), why));
    return new RoomVerdict(
        crop,
        grade,
        why,
        OptionalDouble.empty(),
        crop.guide()
            .firstCutDays()
            .map(days -> OptionalDouble.of(days.high()))
            .orElse(OptionalDouble.empty()),
        Optional.empty());
  }

  /** Mean daily light of the first two weeks, mol/m²/d. */
  private static double meanDliMol(PlaceDays place, LocalDate from) {
    double sum = 0;
    int n = 0;
    for (LocalDate d = from; n < LIGHT_DAYS && place.holds(d); d = d.plusDays(1)) {
      sum += place.dliMol(place.index(d));
      n++;
    }
    return sum / n;
  }

  /** Grams of baby leaf by 100 cm² at a daily light. */
  public static OptionalDouble babyLeafG(Crop crop, double dliMol) {
    return crop.guide().babyLeafDays().isPresent()
        ? TrayYield.BABY_LEAF.gramsAt(dliMol, crop.guide())
        : OptionalDouble.empty();
  }
}
