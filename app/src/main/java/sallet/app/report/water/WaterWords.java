package sallet.app.report.water;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import sallet.app.report.Words;
import sallet.water.caution.Cleaning;
import sallet.water.flood.FloodSchedule;
import sallet.water.home.Learned;
import sallet.water.home.WaterSheet;
import sallet.water.learn.UseFactor;
import sallet.water.reservoir.TankForecast;
import sallet.water.reservoir.TopUp;

/** Sentences about water that text and page share. */
final class WaterWords {
  private WaterWords() {}

  static String of(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }

  /** The verdict in one sentence. */
  static String verdict(WaterSheet sheet) {
    FloodSchedule s = sheet.floods().schedule();
    String floods =
        s.everyMinutes().isPresent()
            ? of("a flood of %d min every %s", s.onMinutes(), hours(s.everyMinutes().getAsInt()))
            : of(
                "%s a day of %d min", Words.count(s.startMinutes().size(), "flood"), s.onMinutes());
    TankForecast tank = sheet.tank();
    return tank.tank().usableL(tank.startL()) == 0
        ? of(
            "Fill the reservoir before the next flood, for which it holds too little; set the timer to %s.",
            floods)
        : of("Set the timer to %s; the water lasts %s.", floods, lasts(tank));
  }

  /** How many pots are planted, and what that means for the timer. */
  static String planted(WaterSheet sheet) {
    return of(
        "%d of %s planted%s.",
        sheet.planted(),
        sheet.pots().size() == 1 ? "1 pot is" : sheet.pots().size() + " pots are",
        sheet.planted() == 0
            ? ": leave the pump off until a plant moves in, and ask again then"
            : "");
  }

  private static String lasts(TankForecast tank) {
    OptionalInt sure = tank.daysLasting(0.9);
    OptionalInt likely = tank.daysLasting(0.5);
    if (sure.isEmpty()) {
      return of("more than %d days", tank.days().size());
    }
    String surely = sure.getAsInt() == 0 ? "less than a day" : days(sure.getAsInt());
    if (likely.isEmpty()) {
      return of("%s, likely more than %d", surely, tank.days().size());
    }
    return likely.equals(sure) ? surely : of("%s, likely %d", surely, likely.getAsInt());
  }

  static String days(int number) {
    return Words.count(number, "day");
  }

  /** Minutes as hours and minutes: "3 h 45 min". */
  static String hours(int minutes) {
    if (minutes < 60) {
      return minutes + " min";
    }
    return minutes % 60 == 0
        ? minutes / 60 + " h"
        : of("%d h %02d min", minutes / 60, minutes % 60);
  }

  /** How to set the timer. */
  static List<String> timer(FloodSchedule s) {
    if (s.everyMinutes().isPresent()) {
      return List.of(
          of(
              "On for %d min, off for %s, day and night.",
              s.onMinutes(), hours(s.everyMinutes().getAsInt() - s.onMinutes())));
    }
    List<String> lines = new ArrayList<>();
    for (int start : s.startMinutes()) {
      lines.add(of("%s to %s", clock(start), clock(start + s.onMinutes())));
    }
    return lines;
  }

  static String clock(int minutes) {
    int m = Math.floorMod(minutes, 24 * 60);
    return of("%02d:%02d", m / 60, m % 60);
  }

  /** The flood in numbers. */
  static String flood(WaterSheet.Floods f) {
    return of(
        "A flood %.0f cm deep borrows %.1f L; the tray fills in %.0f min%s and drains in about %.0f min.%s The pump uses %.2f kWh a day.",
        100 * f.depthM(),
        f.volumeL(),
        Math.ceil(f.fillMinutes()),
        f.fillMeasured() ? " by your watch" : " as reckoned",
        Math.ceil(f.drainMinutes()),
        f.fillMeasured() ? "" : " Time the filling once and write it to pump.fillTime.",
        f.pumpKwhPerDay());
  }

  /** The reservoir in numbers. */
  static String reservoir(WaterSheet sheet) {
    TankForecast t = sheet.tank();
    return of(
        "%.0f L now; a whole flood must be left to the end: %.1f L on the tray, %.1f L below the pump, %.1f L in the hose. So %.1f L may go.",
        t.startL(),
        t.tank().floodL(),
        t.tank().sumpL(),
        t.tank().hoseL(),
        t.tank().usableL(t.startL()));
  }

  /** When and what to pour in. */
  static String refill(WaterSheet sheet) {
    TopUp pour = sheet.topUp().pour();
    String what = pour.msCm() == 0 ? "plain water" : of("solution of %.1f mS/cm", pour.msCm());
    return of(
        "Fill up by %s%s: about %.0f L of %s; that brings the conductivity to %.2f mS/cm. Read level and EC first and write them down.",
        Words.dayAndYear(sheet.topUp().by()),
        sheet.topUp().beyond() ? " (the end of this forecast)" : "",
        pour.litres(),
        what,
        pour.endsMsCm());
  }

  /** What the readings changed. */
  static List<String> learned(UseFactor before, Learned learned) {
    UseFactor f = learned.factor();
    List<String> lines = new ArrayList<>();
    if (f.readings() == 0) {
      lines.add(
          of(
              "No readings yet, so the bench may use %.2f to %.2f times what is computed, 9 times in 10. Three readings of the level some days apart (reservoir.readings) make the forecast about three times as sharp.",
              f.quantile(0.05), f.quantile(0.95)));
    } else {
      lines.add(
          of(
              "%s taught that the bench uses %.2f times what is computed (%.2f to %.2f, 9 times in 10); before it was %.2f (%.2f to %.2f).",
              Words.capital(Words.count(f.readings(), "reading")),
              f.median(),
              f.quantile(0.05),
              f.quantile(0.95),
              before.median(),
              before.quantile(0.05),
              before.quantile(0.95)));
    }
    lines.add(
        of(
            "With each litre lost, salt worth %.2f mS/cm goes%s.",
            learned.uptake().msCm(),
            learned.uptake().readings() == 0
                ? " (before any reading: 0.5 to 1.0)"
                : of(" (± %.2f, from your readings)", learned.uptake().sd())));
    return lines;
  }

  /** How long the water was thought to last before the readings; empty when they taught nothing. */
  static Optional<String> before(WaterSheet sheet) {
    return sheet
        .untaught()
        .map(
            before ->
                of(
                    "Before your readings the same water was thought to last %s; with them it lasts %s. After a week %.0f L (%.0f to %.0f) were expected, now %.0f L (%.0f to %.0f).",
                    lasts(before),
                    lasts(sheet.tank()),
                    before.days().get(6).levelL(),
                    before.days().get(6).lowL(),
                    before.days().get(6).highL(),
                    sheet.tank().days().get(6).levelL(),
                    sheet.tank().days().get(6).lowL(),
                    sheet.tank().days().get(6).highL()));
  }

  /** Solution, oxygen and renewal. */
  static List<String> solution(WaterSheet.Solution s) {
    List<String> lines = new ArrayList<>();
    lines.add(
        of(
            "About %.0f °C%s, oxygen up to %.1f mg/L; the pump warms it by %.1f °C. %s",
            s.temperatureC(),
            s.measured() ? "" : " if it is as warm as the room",
            s.oxygenMgL(),
            s.pumpWarmsK(),
            s.warmth().advice()));
    s.renewBy()
        .ifPresent(
            r ->
                lines.add(
                    of(
                        "If it is fresh today and topped up weekly, mix it anew about %s. By then: %s.",
                        Words.dayAndYear(r.by()), String.join("; ", r.why()))));
    return lines;
  }

  /** Seed cells. */
  static String cells(WaterSheet.Cells c) {
    return of(
        "A cell of %.0f cm holds %.0f mL after a flood and %.0f %% of air: flood it at most %.0f cm deep, and again when %.0f mL are left (it feels light).",
        c.heightCm(), c.fullMl(), 100 * c.airShare(), c.heightCm() / 2, c.refloodMl());
  }

  /** The dose of bleach; the caution says how and what never. */
  static String cleaning(Cleaning c) {
    return of(
        "To flood the empty, scrubbed tray once the pump needs %.0f L of plain water; %.0f to %.0f mL of bleach in it make 100 to 200 mg/L of chlorine, if its label says %s %% (grams of chlorine in 100 mL)%s. Then rinse twice. Read the cautions first.",
        c.litres(),
        c.leastMl(),
        c.mostMl(),
        Words.oneDecimal(c.bleachPercent()),
        c.told() ? "" : "; yours may say something else: write it to reservoir.bleach");
  }

  /** Planted pots, those first that wilt first, and of these the thirstiest. */
  static List<WaterSheet.PotLine> telling(WaterSheet sheet) {
    return sheet.pots().stream()
        .filter(p -> !p.crop().isEmpty())
        .sorted(
            Comparator.comparingDouble(WaterSheet.PotLine::survivesHours)
                .thenComparing(
                    Comparator.comparingDouble(WaterSheet.PotLine::floodsPerDay).reversed()))
        .toList();
  }

  /** Time until a pot wilts; three days are the most that is reckoned. */
  static String survives(WaterSheet.PotLine pot) {
    return pot.survivesHours() >= 72 ? "over 72 h" : of("%.0f h", pot.survivesHours());
  }

  /** How the numbers come about. */
  static List<String> how() {
    return List.of(
        "Leaves: heat balance of Graamans et al. 2017 (Agricultural Systems 153:138-147) for every pot and hour, with its own lamp light, daylight and leaf area from the growth model; error of the source 16 g/m²/h.",
        "Pots: drained water by van Genuchten 1980 over the pot's height, or your scales; 30 % of the easy water may go between floods (stone wool 15 %): judgement.",
        "Timer: safe for a use that is not passed 9 times in 10, on the thirstiest day of the coming week.",
        "Band: the factor's spread, 15 % for weather and 10 % for growth (judgement), lognormal; 9 times in 10 on either side.");
  }
}
