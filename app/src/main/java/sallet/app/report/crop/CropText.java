package sallet.app.report.crop;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import sallet.app.report.Caution;
import sallet.app.report.Words;
import sallet.crop.Concern;
import sallet.crop.Crop;
import sallet.crop.CropGuide;
import sallet.crop.FridgeLife;
import sallet.crop.HarvestStyle;
import sallet.crop.Seed;
import sallet.crop.SeedCount;
import sallet.crop.Span;
import sallet.crop.TomatoPlan;
import sallet.crop.forecast.Band;
import sallet.crop.forecast.DaysToMass;
import sallet.crop.forecast.GrowthForecast;
import sallet.crop.forecast.GrowthForecast.Course;
import sallet.crop.forecast.RoomVerdict;
import sallet.crop.risk.Risk;

/** The report of crops for the terminal: at most 80 columns of UTF-8. */
public final class CropText {
  private static final int WIDTH = 80;
  private static final int BAR = 36;

  private static final double FRIDGE_C = 4;

  /** Plants wanted in the example of how many to sow. */
  private static final int PLANTS = 6;

  private final CropReport report;
  private final StringBuilder out = new StringBuilder();

  private CropText(CropReport report) {
    this.report = report;
  }

  /** The report. */
  public static String of(CropReport report) {
    CropText text = new CropText(report);
    text.head();
    report.detail().ifPresentOrElse(text::detail, text::comparison);
    text.judgement();
    text.title("CAUTION");
    text.wrapped("", Caution.FOOD.subject() + ": " + Caution.FOOD.text());
    return Words.printable(text.out.toString());
  }

  private void head() {
    CropReport.Spot spot = report.spot();
    line("CROPS SOWN ON " + Words.dayAndYear(report.sown()));
    wrapped(
        "",
        "Reckoned for pot %s (%s): %d cm² and %s mol/m²/d in the first four weeks."
            .formatted(
                spot.pot(),
                spot.note(),
                Math.round(spot.siteCm2()),
                Words.oneDecimal(spot.dliMol())));
  }

  private void comparison() {
    title("THE ROOM");
    risk(report.damp());
    for (RoomVerdict.Grade grade : RoomVerdict.Grade.values()) {
      List<RoomVerdict> some = report.verdicts().stream().filter(v -> v.grade() == grade).toList();
      if (!some.isEmpty()) {
        title(
            switch (grade) {
              case WELL -> "GROWS WELL HERE";
              case FAIRLY -> "GROWS FAIRLY";
              case POORLY -> "GROWS POORLY";
              case NOT -> "DOES NOT GROW HERE NOW";
            });
        some.forEach(this::verdict);
      }
    }
  }

  private void verdict(RoomVerdict v) {
    StringBuilder row = new StringBuilder("%-28s".formatted(v.crop().name()));
    v.readyDays()
        .ifPresent(days -> row.append(" first harvest day %3d".formatted(Math.round(days))));
    v.potWeekG()
        .ifPresent(grams -> row.append(", %3d g a pot and week".formatted(Math.round(grams))));
    line(row.toString().stripTrailing());
    v.why().forEach(why -> wrapped("    ", why));
  }

  private void detail(CropReport.Detail detail) {
    title(detail.crop().name().toUpperCase(Locale.ROOT));
    wrapped(
        "", "%s, harvested %s.".formatted(detail.crop().species(), detail.crop().style().words()));
    if (detail.forecast().isEmpty()) {
      wrapped("", "Not planned in pots: " + detail.crop().whyNotPlannable() + ".");
    }
    report.verdicts().get(0).why().forEach(why -> wrapped("  ", why));
    detail.forecast().ifPresent(this::forecast);
    keeping(detail.crop());
    detail.tomato().ifPresent(plan -> tomato(detail.crop().guide(), plan));
    months(detail.months());
    sources(detail.crop());
  }

  private void forecast(GrowthForecast forecast) {
    title("SEED");
    wrapped("", forecast.emergence().advice());
    if (forecast.emergence().daysUntil(0.5).isPresent()) {
      wrapped(
          "",
          "Half of the seedlings are up after %s days, nine in ten after %s; about %d of 100 seeds become a usable plant."
              .formatted(
                  Words.oneDecimal(forecast.emergence().daysUntil(0.5).getAsDouble()),
                  Words.oneDecimal(forecast.emergence().daysUntil(0.9).getAsDouble()),
                  Math.round(100 * forecast.emergence().usableShare())));
    }
    sowing(forecast);
    forecast.course().ifPresent(course -> course(forecast, course));
  }

  private void sowing(GrowthForecast forecast) {
    double usable = forecast.emergence().usableShare();
    if (usable > 0) {
      wrapped(
          "",
          "For %d plants in nine cases of ten sow %d cells with one seed each."
              .formatted(PLANTS, SeedCount.cellsFor(PLANTS, usable)));
    }
    Seed seed = forecast.crop().seed();
    seed.keepsYears()
        .ifPresent(
            years ->
                wrapped(
                    "",
                    "Cool and dry, seed keeps about %s. A lot of which 90 of 100 came when new gives %d after two years."
                        .formatted(
                            Math.round(years) == 1 ? "a year" : Math.round(years) + " years",
                            Math.round(100 * seed.shareAfter(0.9, 2)))));
  }

  private void course(GrowthForecast forecast, Course course) {
    title("STAGES");
    stage("sown", forecast.sown());
    stage("comes up", course.emerged());
    stage("out of its cell", course.outOfCell());
    stage("into its pot", course.toBench());
    line("first harvest           day %s from sowing".formatted(band(course.readyDays(), "never")));
    stage(course.nearSeed() ? "goes: near to seed" : "goes: too old", course.lastDay());
    course
        .window()
        .ifPresent(
            w -> {
              stage("best lifted from", course.emerged().plusDays(w.firstDay()));
              stage(
                  w.overMature() ? "over-mature from" : "until",
                  course.emerged().plusDays(w.lastDay()));
            });
    course.replace().ifPresent(day -> stage("better replaced", day));
    title(
        forecast.crop().style() == HarvestStyle.LEAF_BY_LEAF
            ? "FRESH MASS OF ONE PLANT, PICKED EVERY WEEK"
            : "FRESH MASS OF ONE PLANT");
    curve(forecast, course);
    title("HARVEST OF A POT, EDIBLE");
    for (GrowthForecast.Take take : course.takes()) {
      line(
          "%-10s  %-5s %s g"
              .formatted(
                  Words.day(take.date()),
                  take.lift() ? "lift" : "pick",
                  band(take.edibleG(), "-")));
    }
    line(
        "In all %s g, about %d g a week on the bench."
            .formatted(band(course.potG(), "-"), Math.round(course.potWeekG())));
    title("RISKS");
    course.risks().forEach(this::risk);
  }

  private void keeping(Crop crop) {
    title("OTHER WAYS AND KEEPING");
    RoomVerdict.babyLeafG(crop, report.spot().dliMol())
        .ifPresent(
            grams ->
                wrapped(
                    "",
                    "As baby leaf about %d g by 100 cm² of tray, %s days after sowing (common practice)."
                        .formatted(
                            Math.round(grams),
                            crop.guide().babyLeafDays().map(CropText::span).orElse("-"))));
    wrapped(
        "",
        FridgeLife.daysAt(crop, FRIDGE_C)
            .map(days -> "Keeps good for %s days at 4 °C.".formatted(span(days)))
            .orElse("How long it keeps in a fridge is not known; eat it soon."));
  }

  private void stage(String name, LocalDate date) {
    long days = ChronoUnit.DAYS.between(report.sown(), date);
    line("%-22s  day %d, %s".formatted(name, days, Words.day(date)));
  }

  /** One row every three days: a bar to the median, dots to the high end, a stroke at the low. */
  private void curve(GrowthForecast forecast, Course course) {
    double top = course.curve().stream().mapToDouble(day -> day.freshG().high()).max().orElse(1);
    for (int i = 0; i < course.curve().size(); i += 3) {
      GrowthForecast.Day day = course.curve().get(i);
      line(
          "day %3d  %s %s"
              .formatted(
                  ChronoUnit.DAYS.between(forecast.sown(), day.date()),
                  bar(day.freshG(), top),
                  band(day.freshG(), "-") + " g"));
    }
    line("Bar: the middle plant; │ one in ten is lighter, · one in ten is heavier still.");
  }

  static String bar(Band band, double top) {
    int median = (int) Math.round(band.median() / top * BAR);
    int high = (int) Math.round(band.high() / top * BAR);
    int low = (int) Math.round(band.low() / top * BAR);
    StringBuilder bar = new StringBuilder("█".repeat(median));
    bar.append("·".repeat(Math.max(0, high - median)));
    bar.append(" ".repeat(BAR - bar.length()));
    if (low < median) {
      bar.setCharAt(low, '│');
    }
    return bar.toString();
  }

  private void risk(Risk risk) {
    String grade =
        switch (risk.concern()) {
          case NONE -> "fine ";
          case WATCH -> "watch";
          case ACT -> "act  ";
        };
    wrapped("  ", "%s  %s: %s".formatted(grade, Words.capital(risk.kind().words()), risk.says()));
    if (risk.concern() != Concern.NONE) {
      wrapped("         ", risk.mend());
    }
  }

  private void tomato(CropGuide guide, TomatoPlan plan) {
    title("STAGES (common practice, by warmth)");
    plan.stages().forEach(stage -> stage(stage.name(), stage.date()));
    wrapped(
        "",
        "About %d trusses flower within 200 days. A usual plant yields %s g; the model says %d g by"
                .formatted(
                    (int) plan.trusses(),
                    plan.usualG().map(CropText::span).orElse("-"),
                    Math.round(plan.modelG()))
            + " then, which is optimistic indoors: trust its dates, not its grams.");
    wrapped(
        "",
        "It wants %s mol a day (at least %s), solution of %s mS/cm, %s °C by day and %s °C at night."
            .formatted(
                plain(guide.targetDliMol()),
                plain(guide.growDliMol().low()),
                span(guide.ecMsCm()),
                plain(guide.dayC()),
                plain(guide.nightC())));
    title("HAND WORK");
    plan.work()
        .forEach(work -> wrapped("  ", "from " + Words.day(work.from()) + ": " + work.text()));
  }

  private void months(List<CropReport.PotMonths> months) {
    if (months.isEmpty()) {
      return;
    }
    title("DAYS FROM SOWING TO 60 / 120 / 180 g, ONE UNPICKED PLANT");
    StringBuilder head = new StringBuilder("sown on 1st of ");
    months.forEach(
        pot ->
            head.append(
                "%-20s".formatted("%s (%s)".formatted(pot.spot().pot(), pot.spot().note()))));
    line(head.toString().stripTrailing());
    for (int m = 0; m < months.get(0).rows().size(); m++) {
      LocalDate sown = months.get(0).rows().get(m).sown();
      StringBuilder row =
          new StringBuilder(
              "%-15s"
                  .formatted(
                      "%s %d".formatted(sown.getMonth().name().substring(0, 3), sown.getYear())));
      for (CropReport.PotMonths pot : months) {
        row.append("%-20s".formatted(days(pot.rows().get(m))));
      }
      line(row.toString().stripTrailing());
    }
    line("A dash: it is too old by then.");
  }

  private static String days(DaysToMass row) {
    List<String> days = new ArrayList<>();
    for (OptionalInt day : row.days()) {
      days.add(day.isPresent() ? Integer.toString(day.getAsInt()) : "-");
    }
    return String.join(" / ", days);
  }

  private void sources(Crop crop) {
    title("WHERE THE NUMBERS COME FROM");
    wrapped("", "Handbook values: " + crop.sources().guide() + ".");
    wrapped("", "Rules: " + crop.sources().rules() + ".");
    if (!crop.sources().growth().isEmpty()) {
      wrapped("", "Growth: " + crop.sources().growth() + ".");
    }
  }

  private void judgement() {
    title("HOW SURE");
    wrapped(
        "",
        "Bands hold eight of ten plants: they differ by the household's factor (0.85, variation 0.2),"
            + " from plant to plant, in the day they come up, and by the weather. These spreads and"
            + " the grades are judgement; nothing has been learned from your own bench yet. Weigh a"
            + " few plants.");
  }

  private static String band(Band band, String never) {
    if (Double.isInfinite(band.low())) {
      return never;
    }
    String median = Double.isInfinite(band.median()) ? never : plainWhole(band.median());
    String high = Double.isInfinite(band.high()) ? never : plainWhole(band.high());
    return "%s (%s to %s)".formatted(median, plainWhole(band.low()), high);
  }

  private static String plainWhole(double value) {
    return Long.toString(Math.round(value));
  }

  private static String plain(double value) {
    return value == Math.rint(value) ? Long.toString((long) value) : Words.oneDecimal(value);
  }

  private static String span(Span span) {
    return span.low() == span.high()
        ? plain(span.low())
        : plain(span.low()) + " to " + plain(span.high());
  }

  private void title(String text) {
    out.append('\n').append(text).append('\n');
  }

  private void line(String text) {
    out.append(text).append('\n');
  }

  /** A text in lines of at most 80 columns, the first and the others behind an indent. */
  private void wrapped(String indent, String text) {
    StringBuilder line = new StringBuilder(indent);
    for (String word : text.split(" ", -1)) {
      if (line.length() + word.length() >= WIDTH && line.length() > indent.length()) {
        line(line.toString().stripTrailing());
        line = new StringBuilder(indent);
      }
      line.append(word).append(' ');
    }
    line(line.toString().stripTrailing());
  }
}
