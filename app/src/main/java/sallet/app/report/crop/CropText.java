package sallet.app.report.crop;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import sallet.app.report.Caution;
import sallet.app.report.Words;
import sallet.crop.Concern;
import sallet.crop.HarvestStyle;
import sallet.crop.TomatoPlan;
import sallet.crop.forecast.Band;
import sallet.crop.forecast.GrowthForecast;
import sallet.crop.forecast.GrowthForecast.Course;
import sallet.crop.forecast.RoomVerdict;
import sallet.crop.risk.Risk;

/** The report of crops for the terminal: at most 80 columns of UTF-8. */
public final class CropText {
  private static final int BAR = 36;

  /** Days between two rows of the curve. */
  private static final int CURVE_STEP = 3;

  private final CropReport report;
  private final Lines out = new Lines();

  private CropText(CropReport report) {
    this.report = report;
  }

  /** The report. */
  public static String of(CropReport report) {
    CropText text = new CropText(report);
    text.out.line("CROPS SOWN ON " + Words.dayAndYear(report.sown()));
    text.out.wrapped(CropWords.spot(report.spot()));
    report.detail().ifPresentOrElse(text::detail, text::comparison);
    text.out.title("HOW SURE");
    text.out.wrapped(CropWords.HOW_SURE);
    text.out.title("CAUTION");
    text.out.wrapped(Caution.FOOD.subject() + ": " + Caution.FOOD.text());
    return text.out.toString();
  }

  private void comparison() {
    out.title("THE ROOM");
    risk(report.damp());
    for (RoomVerdict.Grade grade : RoomVerdict.Grade.values()) {
      List<RoomVerdict> some = report.verdicts().stream().filter(v -> v.grade() == grade).toList();
      if (!some.isEmpty()) {
        out.title(CropWords.grade(grade).toUpperCase(Locale.ROOT));
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
    out.line(row.toString());
    v.why().forEach(why -> out.wrapped("    ", why));
  }

  private void detail(CropReport.Detail detail) {
    out.title(detail.crop().name().toUpperCase(Locale.ROOT));
    out.wrapped(CropWords.kind(detail.crop()));
    if (detail.forecast().isEmpty()) {
      out.wrapped("Not planned in pots: " + detail.crop().whyNotPlannable() + ".");
    }
    report.verdicts().get(0).why().forEach(why -> out.wrapped("  ", why));
    detail.forecast().ifPresent(forecast -> forecast(forecast, detail.seedYears()));
    out.title("OTHER WAYS AND KEEPING");
    CropWords.keeping(detail.crop(), report.spot().dliMol()).forEach(out::wrapped);
    detail.tomato().ifPresent(plan -> tomato(detail, plan));
    months(detail.months());
    out.title("WHERE THE NUMBERS COME FROM");
    CropWords.sources(detail.crop()).forEach(out::wrapped);
  }

  private void forecast(GrowthForecast forecast, OptionalDouble seedYears) {
    out.title("SEED");
    CropWords.seed(forecast, seedYears).forEach(out::wrapped);
    forecast.course().ifPresent(course -> course(forecast, course));
  }

  private void course(GrowthForecast forecast, Course course) {
    out.title("STAGES");
    out.line("%-22s  %s".formatted("first harvest", CropWords.firstHarvest(course)));
    for (CropWords.Stage stage : CropWords.stages(forecast.sown(), course)) {
      stage(stage.name(), stage.date());
    }
    out.title(
        forecast.crop().style() == HarvestStyle.LEAF_BY_LEAF
            ? "FRESH MASS OF ONE PLANT, PICKED EVERY WEEK"
            : "FRESH MASS OF ONE PLANT");
    curve(forecast, course);
    out.title("HARVEST OF A POT, EDIBLE");
    for (GrowthForecast.Take take : course.takes()) {
      out.line(
          "%-10s  %-5s %s g"
              .formatted(
                  Words.day(take.date()),
                  take.lift() ? "lift" : "pick",
                  CropWords.band(take.edibleG(), "-")));
    }
    out.line(CropWords.inAll(course));
    out.title("RISKS");
    course.risks().forEach(this::risk);
  }

  private void stage(String name, LocalDate date) {
    out.line(
        "%-22s  day %d, %s"
            .formatted(name, CropWords.daysBetween(report.sown(), date), Words.day(date)));
  }

  /** One row every three days: a bar to the median, dots to the high end, a stroke at the low. */
  private void curve(GrowthForecast forecast, Course course) {
    double top = course.curve().stream().mapToDouble(day -> day.freshG().high()).max().orElse(1);
    for (int i = 0; i < course.curve().size(); i += CURVE_STEP) {
      GrowthForecast.Day day = course.curve().get(i);
      out.line(
          "day %3d  %s %s g"
              .formatted(
                  CropWords.daysBetween(forecast.sown(), day.date()),
                  bar(day.freshG(), top),
                  CropWords.band(day.freshG(), "-")));
    }
    out.line("Bar: the middle plant; │ one in ten is lighter, · one in ten is heavier still.");
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
    out.wrapped(
        "  ",
        "%-5s  %s: %s"
            .formatted(
                CropWords.concern(risk.concern()),
                Words.capital(risk.kind().words()),
                risk.says()));
    if (risk.concern() != Concern.NONE) {
      out.wrapped("         ", risk.mend());
    }
  }

  private void tomato(CropReport.Detail detail, TomatoPlan plan) {
    out.title("STAGES (common practice, by warmth)");
    plan.stages().forEach(stage -> stage(stage.name(), stage.date()));
    CropWords.fruit(detail.crop().guide(), plan).forEach(out::wrapped);
    out.title("HAND WORK");
    plan.work()
        .forEach(work -> out.wrapped("  ", "from " + Words.day(work.from()) + ": " + work.text()));
  }

  private void months(List<CropReport.PotMonths> months) {
    if (months.isEmpty()) {
      return;
    }
    out.title("DAYS FROM SOWING TO 60 / 120 / 180 g, ONE UNPICKED PLANT");
    StringBuilder head = new StringBuilder("sown on 1st of ");
    for (CropReport.PotMonths pot : months) {
      head.append("%-20s".formatted("%s (%s)".formatted(pot.spot().pot(), pot.spot().note())));
    }
    out.line(head.toString());
    for (int m = 0; m < months.get(0).rows().size(); m++) {
      StringBuilder row =
          new StringBuilder("%-15s".formatted(month(months.get(0).rows().get(m).sown())));
      for (CropReport.PotMonths pot : months) {
        row.append("%-20s".formatted(CropWords.days(pot.rows().get(m))));
      }
      out.line(row.toString());
    }
    out.line("A dash: it is too old by then.");
  }

  private static String month(LocalDate date) {
    return "%s %d".formatted(date.getMonth().name().substring(0, 3), date.getYear());
  }
}
