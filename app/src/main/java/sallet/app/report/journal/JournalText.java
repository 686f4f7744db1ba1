package sallet.app.report.journal;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import sallet.app.report.Words;
import sallet.crop.forecast.Band;
import sallet.journal.Entry;
import sallet.learn.Learned;
import sallet.learn.LearnedFactor;
import sallet.learn.LearnedShare;
import sallet.learn.Remark;
import sallet.learn.Stage;
import sallet.learn.StandingBatch;
import sallet.learn.StandingGroup;
import sallet.units.Quantity;

/** What a journal comes to, for the terminal: at most 80 columns of UTF-8. */
public final class JournalText {
  private static final int WIDTH = 80;

  private final JournalReport report;
  private final StringBuilder out = new StringBuilder();

  private JournalText(JournalReport report) {
    this.report = report;
  }

  /** The report. */
  public static String of(JournalReport report) {
    JournalText text = new JournalText(report);
    text.standing();
    text.learned();
    text.readings();
    text.remarks();
    return Words.printable(text.out.toString());
  }

  private void standing() {
    line("WHAT STANDS ON " + Words.dayAndYear(report.standing().today()).toUpperCase(Locale.ROOT));
    wrapped(
        "",
        ("After %s of the journal. Grams are fresh mass of one pot or seedling; in brackets"
                + " what eight of ten such plants lie within.")
            .formatted(Words.count(report.rows(), "row")));
    if (report.standing().batches().isEmpty()) {
      line("");
      line("Nothing: the bench, the nursery and the cells are empty.");
    }
    for (StandingBatch batch : report.standing().batches()) {
      line("");
      wrapped(
          "",
          "%s: %s, sown %s, %s %s"
              .formatted(
                  batch.batch(),
                  batch.crop().name(),
                  Words.dayAndYear(batch.sown()),
                  up(batch),
                  Words.day(batch.emergence())));
      batch.groups().forEach(this::group);
    }
    if (!report.standing().otherPots().isEmpty()) {
      line("");
      wrapped(
          "",
          "Also taken, by plants without a growth model: "
              + Words.list(report.standing().otherPots())
              + ".");
    }
  }

  private String up(StandingBatch batch) {
    if (batch.emergence().isAfter(report.standing().today())) {
      return "expected up";
    }
    return batch.emergenceSeen() ? "up" : "reckoned up";
  }

  private void group(StandingGroup group) {
    String where =
        group.stage() == Stage.BENCH
            ? String.join("+", group.pots())
            : group.count() + (group.stage().takesCell() ? " in cells" : " in nursery");
    line("  %-16s%s".formatted(where, state(group)).stripTrailing());
  }

  private static String state(StandingGroup group) {
    if (group.stage() == Stage.GERMINATING) {
      return "about %s yet to come up".formatted(Words.oneDecimal(group.plants()));
    }
    String grams = grams(group.freshG());
    if (group.stage() == Stage.IN_CELL) {
      return group.plants() < group.count()
          ? grams + "about %s came up".formatted(Words.oneDecimal(group.plants()))
          : grams + "up";
    }
    String since =
        group.toBench().or(group::toNursery).map(day -> "since " + Words.day(day)).orElse("");
    String picks =
        group
            .lastPick()
            .map(
                day ->
                    "; %s, last %s"
                        .formatted(Words.count(group.picks().size(), "pick"), Words.day(day)))
            .orElse("");
    return grams + since + picks;
  }

  private static String grams(Band band) {
    return "%-20s"
        .formatted(
            "%s g (%s to %s)".formatted(mass(band.median()), mass(band.low()), mass(band.high())));
  }

  private static String mass(double grams) {
    return grams < 9.95 ? Words.oneDecimal(grams) : Long.toString(Math.round(grams));
  }

  private void learned() {
    Learned learned = report.standing().learned();
    title("WHAT WAS LEARNED");
    line("%-34s%7s%7s%16s  %s".formatted("", "before", "now", "eight of ten", "from"));
    factor("growth of any crop", learned.bench());
    learned.growth().forEach((crop, factor) -> factor("  " + crop, factor));
    factor("growth left after each pick", learned.regrowth());
    factor("speed of coming up", learned.pace());
    if (!learned.seed().isEmpty()) {
      line("cells that give a plant");
    }
    for (Map.Entry<String, LearnedShare> one : learned.seed().entrySet()) {
      LearnedShare share = one.getValue();
      Band band = share.band();
      row(
          "  " + one.getKey(),
          Words.percent(share.prior().mean()),
          Words.percent(share.now().mean()),
          Words.percent(band.low()) + " to " + Words.percent(band.high()),
          share.cells() == 0 ? "nothing yet" : share.came() + " of " + share.cells() + " cells");
    }
    wrapped("", "Plan for %s times the demand.".formatted(plain(learned.margin())));
  }

  private void factor(String name, LearnedFactor factor) {
    row(
        name,
        plain(factor.priorMedian()),
        plain(factor.median()),
        plain(factor.band().low()) + " to " + plain(factor.band().high()),
        factor.readings() == 0 ? "nothing yet" : Words.count(factor.readings(), "reading"));
  }

  private void row(String name, String before, String now, String band, String from) {
    line("%-34s%7s%7s%16s  %s".formatted(name, before, now, band, from));
  }

  private static String plain(double value) {
    return String.format(Locale.ROOT, "%.2f", value);
  }

  private void readings() {
    if (report.lastReadings().isEmpty()) {
      return;
    }
    title("LAST READINGS");
    for (Entry entry : report.lastReadings()) {
      line(
          "%-22s%-12s%-16s%s"
              .formatted(
                  entry.event().word(),
                  Words.day(entry.date()),
                  Quantity.plain(entry.value().orElse(0)) + " " + entry.event().unit(),
                  entry.place().text())
              .stripTrailing());
    }
  }

  private void remarks() {
    if (report.remarks().isEmpty()) {
      return;
    }
    title("ROWS TO LOOK AT");
    for (Remark remark : report.remarks()) {
      String where = remark.line() > 0 ? "line " + remark.line() + ": " : "";
      wrapped("", where + remark.sentence() + ".");
    }
  }

  private void title(String text) {
    line("");
    line(text);
  }

  private void wrapped(String indent, String text) {
    StringBuilder line = new StringBuilder(indent);
    for (String word : List.of(text.split(" ", -1))) {
      if (line.length() > indent.length() && line.length() + 1 + word.length() > WIDTH) {
        line(line.toString());
        line = new StringBuilder(indent);
      }
      line.append(line.length() > indent.length() ? " " : "").append(word);
    }
    line(line.toString());
  }

  private void line(String text) {
    out.append(text).append('\n');
  }
}
