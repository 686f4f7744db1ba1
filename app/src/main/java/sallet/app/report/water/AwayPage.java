package sallet.app.report.water;

import java.util.List;
import java.util.Optional;
import sallet.app.report.Markup;
import sallet.water.absence.AwaySheet;
import sallet.water.absence.Step;
import sallet.water.flood.FloodSchedule;

/** The sheet of an absence as one self-contained page, with a note for the person looking in. */
public final class AwayPage {
  private final SheetPage sheet = new SheetPage();

  private AwayPage() {}

  /** The page, a whole HTML document. */
  public static String of(AwayReport report) {
    return new AwayPage().document(report.sheet(), report.basis());
  }

  private String document(AwaySheet away, List<String> basis) {
    sheet.begin("days away", AwayWords.span(away), AwayWords.verdict(away));
    if (!away.chosen().isEmpty()) {
      before(away);
    }
    sheet.section("reservoir", "Reservoir on these days");
    sheet.page.element(
        "p", "As it stands: " + AwayWords.departure(away) + " " + AwayWords.asItStands(away));
    if (!away.chosen().isEmpty()) {
      sheet.page.element("p", "Once prepared: " + AwayWords.prepared(away));
    }
    sheet.level(away.prepared().tank(), Optional.empty());
    sheet.page.closeLine();
    timer(away.prepared().schedule());
    helps(away);
    sheet.list("breaks", "What would break it", away.breaks());
    sheet.list("basis", "What this rests on", basis);
    sheet.cautions(away.cautions());
    note(away);
    return sheet.end();
  }

  private void before(AwaySheet away) {
    sheet.section("before", "Before you leave");
    Markup page = sheet.page;
    page.open("ul", "class", "checklist");
    away.chosen().forEach(step -> tick(step.text()));
    tick(AwayWords.leaveWith(away));
    page.closeLine().closeLine();
  }

  private void tick(String text) {
    Markup page = sheet.page;
    page.open("li").open("label").empty("input", "type", "checkbox");
    page.element("span", text);
    page.closeLine().closeLine();
  }

  private void timer(FloodSchedule schedule) {
    sheet.section("timer", "Timer");
    sheet.page.open("div", "class", "two");
    if (schedule.everyMinutes().isEmpty()) {
      sheet.page.add(Dial.svg(schedule));
    }
    sheet.page.open("div").open("ul", "class", "times");
    WaterWords.timer(schedule).forEach(time -> sheet.page.element("li", time));
    sheet.page.closeLine().closeLine().closeLine().closeLine();
  }

  private void helps(AwaySheet away) {
    if (away.steps().isEmpty()) {
      return;
    }
    sheet.section("helps", AwayWords.helps(away));
    sheet.page.element("p", "Each done alone, after the reservoir is filled up.", "class", "quiet");
    sheet.page.open("div", "class", "scroll", "tabindex", "0");
    sheet.head("Step", "Water", "Chance that it lasts");
    for (Step step : away.steps()) {
      sheet.page.open("tr").element("td", step.text());
      sheet.page.element("td", AwayWords.gain(step));
      sheet.page.element("td", AwayWords.chance(step.lastsAlone()), "class", "number");
      sheet.page.closeLine();
    }
    sheet.page.closeLine().closeLine().closeLine().closeLine();
  }

  /** On paper it is a page of its own. */
  private void note(AwaySheet away) {
    Markup page = sheet.page;
    page.open("section", "id", "note", "class", "note", "aria-labelledby", "note-head");
    page.element("h2", "For the person who looks in", "id", "note-head");
    page.element("p", AwayWords.span(away), "class", "quiet");
    page.open("ol");
    away.note().forEach(line -> page.element("li", line));
    page.closeLine();
    page.element("p", AwayWords.BLANKS);
    page.closeLine();
  }
}
