package sallet.app.report.crop;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import sallet.app.report.Markup;
import sallet.app.report.Words;
import sallet.crop.Concern;
import sallet.crop.Crop;
import sallet.crop.CropGuide;
import sallet.crop.Emergence;
import sallet.crop.FridgeLife;
import sallet.crop.HarvestRule;
import sallet.crop.Seed;
import sallet.crop.SeedCount;
import sallet.crop.SeedLot;
import sallet.crop.Span;
import sallet.crop.TomatoPlan;
import sallet.crop.forecast.Band;
import sallet.crop.forecast.DaysToMass;
import sallet.crop.forecast.GrowthForecast;
import sallet.crop.forecast.GrowthForecast.Course;
import sallet.crop.forecast.RoomVerdict;
import sallet.crop.risk.Risk;

/** What is said of crops, the same in the terminal and on the page. */
final class CropWords {
  /** A usual fridge, and one that is too warm, °C. */
  private static final List<Integer> FRIDGE_C = List.of(4, 8);

  /** Plants wanted in the example of how many to sow. */
  private static final int PLANTS = 6;

  /** Least usable share for which seeds are counted. Judgement: below, one bad lot spoils all. */
  private static final double FEWEST_USABLE = 0.1;

  /** Age of seed in the example, years. */
  private static final double EXAMPLE_YEARS = 2;

  static final String HOW_SURE =
      "Bands hold eight of ten plants: they differ by the household's factor (0.85, variation 0.2),"
          + " from plant to plant, in the day they come up, and by the weather. These spreads and the"
          + " grades are judgement; nothing has been learned from your own bench yet. Weigh a few"
          + " plants.";

  private CropWords() {}

  /** A stage of a plant's life and when it is reached. */
  record Stage(String name, LocalDate date) {}

  static String spot(CropReport.Spot spot) {
    return "Reckoned for pot %s (%s): %d cm² and %s mol/m²/d in the first four weeks."
        .formatted(
            spot.pot(), spot.note(), Math.round(spot.siteCm2()), Words.oneDecimal(spot.dliMol()));
  }

  static String grade(RoomVerdict.Grade grade) {
    return switch (grade) {
      case WELL -> "Grows well here";
      case FAIRLY -> "Grows fairly";
      case POORLY -> "Grows poorly";
      case NOT -> "Does not grow here now";
    };
  }

  static String concern(Concern concern) {
    return switch (concern) {
      case NONE -> "fine";
      case WATCH -> "watch";
      case ACT -> "act";
    };
  }

  /** Botanical name, harvest and other names. */
  static String kind(Crop crop) {
    String also =
        crop.alsoCalled().isEmpty() ? "" : " Also called " + Words.list(crop.alsoCalled()) + ".";
    return "%s, harvested %s.%s".formatted(crop.species(), crop.style().words(), also);
  }

  /** The stages in order of time, the sowing first. */
  static List<Stage> stages(LocalDate sown, Course course) {
    List<Stage> stages = new ArrayList<>();
    stages.add(new Stage("sown", sown));
    stages.add(new Stage("comes up", course.emerged()));
    stages.add(new Stage("out of its cell", course.outOfCell()));
    stages.add(new Stage("into its pot", course.toBench()));
    course
        .window()
        .ifPresent(
            w -> {
              stages.add(new Stage("best lifted from", course.emerged().plusDays(w.firstDay())));
              stages.add(
                  new Stage(
                      w.overMature() ? "over-mature from" : "best lifted until",
                      course.emerged().plusDays(w.lastDay())));
            });
    course.replace().ifPresent(day -> stages.add(new Stage("better replaced", day)));
    stages.add(
        new Stage(course.nearSeed() ? "goes: near to seed" : "goes: too old", course.lastDay()));
    stages.sort(Comparator.comparing(Stage::date));
    return List.copyOf(stages);
  }

  static String firstHarvest(Course course) {
    return "day %s from sowing".formatted(band(course.readyDays(), "never"));
  }

  /** What comes of the seed, and how much of it to sow. */
  static List<String> seed(GrowthForecast forecast, OptionalDouble seedYears) {
    List<String> said = new ArrayList<>();
    Emergence emergence = forecast.emergence();
    said.add(emergence.advice());
    if (emergence.daysUntil(0.5).isPresent()) {
      said.add(
          "Half of the seedlings are up after %s days, nine in ten after %s; about %d of 100 seeds become a usable plant."
              .formatted(
                  Words.oneDecimal(emergence.daysUntil(0.5).getAsDouble()),
                  Words.oneDecimal(emergence.daysUntil(0.9).getAsDouble()),
                  Math.round(100 * emergence.usableShare())));
    }
    if (emergence.usableShare() >= FEWEST_USABLE) {
      said.add(sowing(forecast.crop(), SeedLot.expecting(emergence.usableShare())));
    } else if (emergence.usableShare() > 0) {
      said.add("Too few to count on, however many are sown: mend the warmth or take newer seed.");
    }
    said.addAll(age(forecast.crop().seed(), seedYears));
    return said;
  }

  private static List<String> age(Seed seed, OptionalDouble seedYears) {
    List<String> said = new ArrayList<>();
    double years = seedYears.orElse(EXAMPLE_YEARS);
    seed.keepsYears()
        .ifPresent(
            keeps ->
                said.add(
                    "Cool and dry, seed keeps about %s. A lot of which 90 of 100 came when new gives %d after %s%s."
                        .formatted(
                            years(keeps),
                            Math.round(100 * seed.shareAfter(0.9, years)),
                            years(years),
                            seedYears.isPresent() ? ", which the numbers above reckon with" : "")));
    if (seedYears.isPresent() && seed.keepsYears().isEmpty()) {
      said.add("How long its seed keeps is not known: its age is left out. Try ten on damp paper.");
    }
    return said;
  }

  private static String years(double years) {
    return years == 1 ? "a year" : plain(years) + " years";
  }

  private static String sowing(Crop crop, SeedLot lot) {
    int alone = SeedCount.cellsFor(PLANTS, lot);
    int together = crop.harvest().map(HarvestRule::plantsPerPot).orElse(1);
    if (together > 1) {
      return "For %d plants in nine cases of ten sow %d seeds; a pot takes %d plants, raised together in one cell."
          .formatted(PLANTS, alone, together);
    }
    int seeds = SeedCount.seedsPerCell(PLANTS, lot);
    return "For %d plants in nine cases of ten sow %d cells with one seed each%s."
        .formatted(
            PLANTS,
            alone,
            seeds > 1
                ? ", or %d cells with %d seeds each and thin to one".formatted(PLANTS, seeds)
                : "");
  }

  /** Baby leaf, and how long it keeps. */
  static List<String> keeping(Crop crop, double dliMol) {
    List<String> said = new ArrayList<>();
    RoomVerdict.babyLeafG(crop, dliMol)
        .ifPresent(
            grams ->
                said.add(
                    "As baby leaf about %d g by 100 cm² of tray, %s days after sowing (common practice)."
                        .formatted(
                            Math.round(grams),
                            crop.guide().babyLeafDays().map(CropWords::span).orElse("-"))));
    String days =
        FRIDGE_C.stream()
            .flatMap(
                c ->
                    FridgeLife.daysAt(crop, c).stream()
                        .map(d -> "%s days at %d °C".formatted(span(d), c)))
            .collect(Collectors.joining(", "));
    said.add(
        days.isEmpty()
            ? "How long it keeps in a fridge is not known; eat it soon."
            : "Keeps good for " + days + ".");
    return said;
  }

  static List<String> fruit(CropGuide guide, TomatoPlan plan) {
    return List.of(
        "About %d trusses flower within 200 days. A usual plant yields %s g; the model says %d g by then, which is optimistic indoors: trust its dates, not its grams."
            .formatted(
                (int) plan.trusses(),
                plan.usualG().map(CropWords::span).orElse("-"),
                Math.round(plan.modelG())),
        "It wants %s mol a day (at least %s), solution of %s mS/cm, %s °C by day and %s °C at night."
            .formatted(
                plain(guide.targetDliMol()),
                plain(guide.growDliMol().low()),
                span(guide.ecMsCm()),
                plain(guide.dayC()),
                plain(guide.nightC())));
  }

  static String inAll(Course course) {
    return "In all %s g, about %d g a week on the bench."
        .formatted(band(course.potG(), "-"), Math.round(course.potWeekG()));
  }

  static List<String> sources(Crop crop) {
    List<String> said = new ArrayList<>();
    said.add("Handbook values: " + crop.sources().guide() + ".");
    said.add("Rules: " + crop.sources().rules() + ".");
    if (!crop.sources().growth().isEmpty()) {
      said.add("Growth: " + crop.sources().growth() + ".");
    }
    return said;
  }

  /** Days to each mass, a dash where it is too old by then. */
  static String days(DaysToMass row) {
    List<String> days = new ArrayList<>();
    for (OptionalInt day : row.days()) {
      days.add(day.isPresent() ? Integer.toString(day.getAsInt()) : "-");
    }
    return String.join(" / ", days);
  }

  /** What a risk was judged by, and from which value each is worth watching. */
  static String drivers(Risk risk) {
    return "Judged by "
        + risk.drivers().stream()
            .map(
                d ->
                    "%s %s (watch at %s)"
                        .formatted(
                            d.name(),
                            (Markup.number(d.value()) + " " + d.unit()).strip(),
                            (Markup.number(d.watchFrom()) + " " + d.unit()).strip()))
            .collect(Collectors.joining("; "))
        + ". Source: "
        + risk.source()
        + ".";
  }

  /** The letter of a stage on the drawing: a for the one after sowing. */
  static String letter(int stage) {
    return stage == 0 ? "" : Character.toString('a' + stage - 1);
  }

  static long daysBetween(LocalDate sown, LocalDate date) {
    return ChronoUnit.DAYS.between(sown, date);
  }

  /** Such as "34 (29 to 41)"; ends that are never reached in the word given. */
  static String band(Band band, String never) {
    return Double.isInfinite(band.low())
        ? never
        : "%s (%s to %s)"
            .formatted(
                whole(band.median(), never), whole(band.low(), never), whole(band.high(), never));
  }

  private static String whole(double value, String never) {
    return Double.isInfinite(value) ? never : Long.toString(Math.round(value));
  }

  static String span(Span span) {
    return span.low() == span.high()
        ? plain(span.low())
        : plain(span.low()) + " to " + plain(span.high());
  }

  private static String plain(double value) {
    return value == Math.rint(value) ? Long.toString((long) value) : Words.oneDecimal(value);
  }
}
