package sallet.app.report.light;

import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import sallet.app.report.Words;
import sallet.light.LampHeight;
import sallet.light.LampRaise;
import sallet.light.LampShadow;
import sallet.light.LampWeek;
import sallet.light.LightFactors;
import sallet.light.LightWarning;
import sallet.light.LightWatch;
import sallet.light.LightYear;
import sallet.units.Quantity;

/** Sentences that text and page share. */
final class LightWords {
  private LightWords() {}

  static String month(LightYear.Month month) {
    return month.month().getMonth().getDisplayName(TextStyle.SHORT, Locale.ENGLISH);
  }

  private static String inFull(LightYear.Month month) {
    return month.month().getMonth().getDisplayName(TextStyle.FULL, Locale.ENGLISH);
  }

  static String mol(double mol) {
    return Words.oneDecimal(mol);
  }

  static LightYear.Month darkest(LightYear year) {
    return year.months().stream()
        .min(Comparator.comparingDouble(LightYear.Month::meanWindowMol))
        .orElseThrow();
  }

  static LightYear.Month brightest(LightYear year) {
    return year.months().stream()
        .max(Comparator.comparingDouble(LightYear.Month::meanWindowMol))
        .orElseThrow();
  }

  /** One paragraph: what the windows give, what the lamps add, what is wanted. */
  static String summary(LightYear year) {
    LightYear.Month dark = darkest(year);
    LightYear.Month bright = brightest(year);
    String window =
        year.household().room().hasDaylight()
            ? "The windows give the pots %s mol a day in %s and %s in %s."
                .formatted(
                    mol(dark.meanWindowMol()),
                    inFull(dark),
                    mol(bright.meanWindowMol()),
                    inFull(bright))
            : "The room has no window.";
    String lamp =
        year.household().lamps().isEmpty()
            ? "There is no lamp."
            : "The lamps add %s mol as they are set.".formatted(mol(dark.meanLampMol()));
    return "%s %s %s in at most %s hours of light a day."
        .formatted(
            window,
            lamp,
            PlaceWords.wanted(year.target()),
            Quantity.plain(year.target().mostHours()));
  }

  /** How the lamps hang and how they would better. */
  static List<String> height(LightYear year) {
    List<String> lines = new ArrayList<>();
    year.hanging().ifPresent(now -> lines.add("Now " + height(now)));
    year.better()
        .ifPresentOrElse(
            better ->
                lines.add(
                    "To fill the darkest month in the longest day, undimmed: " + height(better)),
            () -> {
              if (year.hanging().isPresent()) {
                lines.add(
                    "No height under the ceiling gives just what the darkest month misses; see the"
                        + " hours below for what comes nearest.");
              }
            });
    year.shadow()
        .filter(shadow -> shadow.share() > LampShadow.LITTLE)
        .ifPresent(shadow -> lines.add(shadow(year, shadow)));
    return lines;
  }

  /** What the lamps' bodies keep off, and how high they would have to hang not to. */
  private static String shadow(LightYear year, LampShadow shadow) {
    int month = most(shadow.ofMonths());
    int pot = most(shadow.ofPots());
    String told =
        ("Lamps and sheets, on or off, keep %s of the year's daylight from the pots, most in %s"
                + " (%s) and at %s (%s).")
            .formatted(
                Words.percent(shadow.share()),
                inFull(year.months().get(month)),
                Words.percent(shadow.ofMonths().get(month)),
                year.household().bench().pots().get(pot).name(),
                Words.percent(shadow.ofPots().get(pot)));
    return told
        + (shadow.clearAboveBenchM().isPresent()
            ? String.format(
                Locale.ROOT,
                " From %.0f cm above the tray up they would keep no more than %s; or move the lamp"
                    + " aside, out of the window's light, in the bright months.",
                100 * shadow.clearAboveBenchM().getAsDouble(),
                Words.percent(LampShadow.LITTLE))
            : " Move the lamp aside, out of the window's light, in the bright months.");
  }

  private static int most(List<Double> values) {
    return values.indexOf(Collections.max(values));
  }

  private static String height(LampHeight h) {
    return String.format(
        Locale.ROOT,
        "%.0f cm above the tray, %.0f cm above the leaves: mean %.0f µmol/m²/s, least over mean"
            + " %.2f (above 0.7 is even), variation %.0f %%, %.0f %% of the photons on the tray,"
            + " brightest leaf %.0f µmol/m²/s.",
        100 * h.aboveBenchM(),
        100 * h.clearanceM(),
        h.map().meanUmol(),
        h.map().minOverMean(),
        100 * h.map().variation(),
        100 * h.utilisation(),
        h.brightestUmol());
  }

  /** When the lamps go up as one batch grows. */
  static List<String> raises(LightYear year) {
    if (year.hanging().isEmpty()) {
      return List.of();
    }
    if (year.raises().isEmpty()) {
      return List.of("The lamps hang high enough for full-grown leaves.");
    }
    List<String> lines = new ArrayList<>();
    for (LampRaise raise : year.raises()) {
      lines.add(
          String.format(
              Locale.ROOT,
              "Day %d on the bench, leaves %.0f cm high: raise the lamps to %.0f cm above the tray.",
              raise.day(),
              100 * raise.leavesM(),
              100 * raise.toAboveBenchM()));
    }
    return lines;
  }

  /** When a week's lamp runs, such as "05:00 to 23:00 at 52 %". */
  static String runs(LampWeek week) {
    List<Double> d = week.dimming();
    if (week.hoursOn() == 0) {
      return "off";
    }
    List<String> spans = new ArrayList<>();
    int start = IntStream.range(0, 24).filter(h -> !same(d, h, h + 23)).findFirst().orElse(0);
    int from = start;
    for (int i = 1; i <= 24; i++) {
      int hour = (start + i) % 24;
      if (i == 24 || !same(d, hour, from)) {
        if (d.get(from) > 0) {
          spans.add("%02d:00 to %02d:00 at %s".formatted(from, hour, Words.percent(d.get(from))));
        }
        from = hour;
      }
    }
    return String.join(", ", spans);
  }

  private static boolean same(List<Double> d, int a, int b) {
    return Math.abs(d.get(a % 24) - d.get(b % 24)) < 0.005;
  }

  /** The week that holds the middle of a month. */
  static LampWeek week(LightYear year, LightYear.Month month) {
    long days = month.month().atDay(15).toEpochDay() - year.light().from().toEpochDay();
    return year.weeks().get((int) Math.min(year.weeks().size() - 1, days / 7));
  }

  static String watch(LightYear year, LightWatch watch) {
    List<String> months = watch.months().stream().map(m -> month(year.months().get(m))).toList();
    String when = months.size() == 12 ? "all year" : String.join(", ", months);
    int pots = watch.pots().size();
    String where =
        pots == year.light().places()
            ? "all pots"
            : pots <= 8 ? String.join(", ", watch.pots()) : pots + " pots";
    String grade = watch.worst().grade() == LightWarning.Grade.STRONG ? "Likely" : "Possible";
    return "%s at some time in %s (%s), most so in %s in %s. %s Source: %s."
        .formatted(
            grade,
            where,
            when,
            watch.worstPot(),
            month(year.months().get(watch.worstMonth())),
            watch.worst().text(),
            watch.worst().source());
  }

  /** What the readings taught. */
  static List<String> readings(LightYear year) {
    List<String> lines = new ArrayList<>();
    LightFactors factors = year.calibration().factors();
    factor("Windows", factors.window(), lines);
    factor("Lamps", factors.lamp(), lines);
    lines.addAll(year.calibration().refusals());
    if (factors.window().readings() + factors.lamp().readings() == 0) {
      lines.add(
          "No readings yet: a few with a quantum meter at named pots (lightReadings in the file)"
              + " would make these numbers yours.");
    }
    return lines;
  }

  private static void factor(String what, LightFactors.Factor factor, List<String> lines) {
    if (factor.readings() > 0) {
      lines.add(
          String.format(
              Locale.ROOT,
              "%s give %.2f times the reckoned light by %s, within a factor of %.2f two times in"
                  + " three.",
              what,
              factor.value(),
              Words.count(factor.readings(), "reading"),
              factor.spread()));
    }
  }
}
