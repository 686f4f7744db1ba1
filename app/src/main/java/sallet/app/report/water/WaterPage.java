package sallet.app.report.water;

import java.util.List;
import sallet.app.report.Words;
import sallet.water.flood.FloodSchedule;
import sallet.water.home.WaterSheet;

/** The sheet of water as one self-contained page: no script, no request to anywhere. */
public final class WaterPage {
  private final SheetPage sheet = new SheetPage();

  private WaterPage() {}

  /** The page, a whole HTML document. */
  public static String of(WaterReport report) {
    return new WaterPage().document(report.sheet(), report.basis());
  }

  private String document(WaterSheet water, List<String> basis) {
    sheet.begin(
        "water",
        "From " + Words.dayAndYear(water.day()) + ". " + WaterWords.planted(water),
        WaterWords.verdict(water));
    timer(water);
    sheet.section("reservoir", "Reservoir if nobody tops up");
    sheet.level(water.tank(), water.untaught());
    WaterWords.before(water).ifPresent(line -> sheet.page.element("p", line));
    sheet.page.element("p", WaterWords.reservoir(water));
    sheet.page.element("p", WaterWords.refill(water));
    sheet.page.closeLine();
    sheet.list("know", "What to know", water.notes());
    if (water.planted() > 0) {
      pots(water);
    }
    sheet.list("solution", "Solution", WaterWords.solution(water.solution()));
    water.cells().ifPresent(c -> sheet.list("cells", "Seed cells", List.of(WaterWords.cells(c))));
    sheet.list(
        "learned", "What readings taught", WaterWords.learned(water.before(), water.learned()));
    sheet.list("basis", "What this rests on", basis);
    sheet.list("how", "How it is reckoned", WaterWords.how());
    sheet.list(
        "cleaning", "Cleaning between crops", List.of(WaterWords.cleaning(water.cleaning())));
    sheet.cautions(water.cautions());
    return sheet.end();
  }

  private void timer(WaterSheet water) {
    FloodSchedule s = water.floods().schedule();
    sheet.section("timer", "Timer");
    sheet.page.open("div", "class", "two");
    if (s.everyMinutes().isEmpty()) {
      sheet.page.add(Dial.svg(s));
    }
    sheet.page.open("div");
    sheet.page.element("p", s.everyMinutes().isEmpty() ? "The pump runs from" : "Set it to");
    sheet.page.open("ul", "class", "times");
    WaterWords.timer(s).forEach(time -> sheet.page.element("li", time));
    sheet.page.closeLine();
    sheet.page.element("p", WaterWords.flood(water.floods()));
    sheet.page.closeLine().closeLine().closeLine();
  }

  private void pots(WaterSheet water) {
    sheet.section("pots", "Pots");
    sheet.page.element(
        "p",
        "Those first that wilt first when the pump fails. Floods: how many a day the pot alone would need on its thirstiest day of the week.",
        "class",
        "quiet");
    sheet.page.open("div", "class", "scroll", "tabindex", "0");
    sheet.head("Pot", "Plant", "Wilts in", "Uses, mL a day", "Floods", "Holds, mL", "May go, mL");
    for (WaterSheet.PotLine p : WaterWords.telling(water)) {
      sheet.page.open("tr").element("th", p.pot(), "scope", "row");
      sheet.page.element("td", Words.spoken(p.crop()));
      sheet.page.element("td", WaterWords.survives(p), "class", "number");
      sheet.number("%.0f", p.useMlPerDay());
      sheet.number("%.1f", p.floodsPerDay());
      sheet.number("%.0f", p.fullMl());
      sheet.number("%.0f", p.allowedMl());
      sheet.page.closeLine();
    }
    sheet.page.closeLine().closeLine().closeLine().closeLine();
  }
}
