package sallet.app.report.light;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import sallet.app.report.Caution;
import sallet.app.report.Steps;
import sallet.app.report.Words;
import sallet.household.Pot;
import sallet.light.HourlyLight;
import sallet.light.LampWeek;
import sallet.light.LightExplanation;
import sallet.light.LightWatch;
import sallet.light.LightYear;

/** Light as text for a terminal. */
public final class LightText {
  private static final int BAR = 40;

  private final LightYear year;
  private final StringBuilder out = new StringBuilder();

  private LightText(LightYear year) {
    this.year = year;
  }

  /** The year: chart, table of pots, lamps, warnings. */
  public static String ofYear(LightYear year) {
    LightText text = new LightText(year);
    text.year();
    return text.out.toString();
  }

  /** One day, hour by hour. */
  public static String ofDay(LightReport answer) {
    LightText text = new LightText(answer.year());
    text.day(answer.date(), answer.day());
    return text.out.toString();
  }

  /** The steps of an explanation. */
  public static String of(LightExplanation told, String pot, LocalDate date, int hour) {
    StringBuilder out = new StringBuilder();
    out.append(
        "Light of pot %s on %s, %02d:00 to %02d:00 standard time%n%n"
            .formatted(pot, Words.dayAndYear(date), hour, hour + 1));
    out.append(Steps.text(told.steps()));
    return out.toString();
  }

  private void line(String format, Object... values) {
    out.append(String.format(Locale.ROOT, format, values).stripTrailing()).append('\n');
  }

  private void list(String title, List<String> lines) {
    if (!lines.isEmpty()) {
      line("%n%s", title);
      lines.forEach(text -> line("  %s", text));
    }
  }

  private void year() {
    line("%s", LightWords.summary(year));
    line("%nLight of a day, mean over the pots, mol/m² (█ windows, ░ lamps, │ wanted)");
    double top =
        Math.max(
            PlaceWords.mostWanted(year),
            year.months().stream()
                .mapToDouble(m -> m.meanWindowMol() + m.meanLampMol())
                .max()
                .orElse(0));
    year.months().forEach(month -> bar(month, top));
    pots();
    list(
        "What the places are for in the darkest month",
        PlaceWords.places(year, LightWords.darkest(year)));
    list("Which crop where", PlaceWords.crops(year, LightWords.darkest(year)));
    list("Lamp height", LightWords.height(year));
    weeks();
    list("As the leaves rise", LightWords.raises(year));
    list("Nursery", PlaceWords.nursery(year));
    list(
        "What to watch", LightWatch.of(year).stream().map(w -> LightWords.watch(year, w)).toList());
    list("Your readings", LightWords.readings(year));
    list("Where the light outdoors comes from", year.notes());
    if (!year.household().lamps().isEmpty()) {
      list(Caution.LAMP.subject(), List.of(Caution.LAMP.text()));
    }
  }

  private void bar(LightYear.Month month, double top) {
    int window = (int) Math.round(month.meanWindowMol() / top * BAR);
    int all = (int) Math.round((month.meanWindowMol() + month.meanLampMol()) / top * BAR);
    StringBuilder bar = new StringBuilder("█".repeat(window) + "░".repeat(all - window));
    bar.append(" ".repeat(BAR + 1 - bar.length()));
    year.target()
        .meanMol(month.middle())
        .ifPresent(mol -> bar.setCharAt((int) Math.round(mol / top * BAR), '│'));
    String spread =
        month.brightWeekMol() > month.dullWeekMol() + 0.05
            ? ", window weeks %s to %s"
                .formatted(
                    LightWords.mol(month.dullWeekMol()), LightWords.mol(month.brightWeekMol()))
            : "";
    line(
        "%-4s %s %4.1f + %4.1f%s",
        LightWords.month(month), bar, month.meanWindowMol(), month.meanLampMol(), spread);
  }

  private void pots() {
    line("%nLight of each pot, windows and lamps together, mol/m² a day");
    line(
        "%-8s%s",
        "pot",
        String.join(
            "", year.months().stream().map(m -> "%6s".formatted(LightWords.month(m))).toList()));
    List<Pot> pots = year.household().bench().pots();
    for (int i = 0; i < pots.size(); i++) {
      int pot = i;
      line(
          "%-8s%s",
          pots.get(i).name(),
          String.join(
              "",
              year.months().stream()
                  .map(m -> String.format(Locale.ROOT, "%6.1f", m.dliMol(pot)))
                  .toList()));
    }
  }

  private void weeks() {
    if (year.weeks().isEmpty()) {
      return;
    }
    boolean priced = year.household().tariff().isPresent();
    line(
        "%nLamp hours that bring each pot nearest to what its crop wants (mid-month week; %s)",
        priced ? "cheapest hours" : "long and dim");
    for (LightYear.Month month : year.months()) {
      LampWeek week = LightWords.week(year, month);
      double least = week.dliMol().stream().mapToDouble(d -> d).min().orElse(0);
      double most = week.dliMol().stream().mapToDouble(d -> d).max().orElse(0);
      line(
          "%-4s %s; pots %4.1f to %4.1f mol (%s)%s",
          LightWords.month(month),
          LightWords.runs(week),
          least,
          most,
          PlaceWords.wanted(week),
          priced ? String.format(Locale.ROOT, ", %.2f a day for current", week.costPerDay()) : "");
    }
  }

  private void day(LocalDate date, HourlyLight light) {
    line("Light on %s, standard time, µmol/m²/s", Words.dayAndYear(date));
    line("hour     windows    lamps   darkest pot   brightest pot");
    for (int h = 0; h < 24; h++) {
      int hour = h;
      double[] all =
          IntStream.range(0, light.places())
              .mapToDouble(i -> light.ppfdUmol(i, 0, hour))
              .sorted()
              .toArray();
      if (all.length > 0 && all[all.length - 1] > 0.05) {
        line(
            "%02d:00 %9.0f %8.0f %13.0f %15.0f",
            h,
            mean(light, i -> light.daylightUmol(i, 0, hour)),
            mean(light, i -> light.lampUmol(i, 0, hour)),
            all[0],
            all[all.length - 1]);
      }
    }
    line("%nLight of the day at each pot, windows + lamps, mol/m²");
    List<Pot> pots = year.household().bench().pots();
    for (int i = 0; i < pots.size(); i++) {
      line(
          "%-8s %5.1f + %4.1f = %5.1f",
          pots.get(i).name(),
          light.daylightDliMol(i, 0),
          light.lampDliMol(i, 0),
          light.dliMol(i, 0));
    }
    line("Length of the day: %.1f h", light.photoperiodHours(0));
  }

  private interface Of {
    double pot(int pot);
  }

  private static double mean(HourlyLight light, Of of) {
    return IntStream.range(0, light.places()).mapToDouble(of::pot).average().orElse(0);
  }
}
