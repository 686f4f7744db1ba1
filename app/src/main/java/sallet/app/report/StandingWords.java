package sallet.app.report;

import java.util.ArrayList;
import java.util.List;
import sallet.learn.Stage;
import sallet.learn.Standing;
import sallet.learn.StandingBatch;
import sallet.learn.StandingGroup;

/** What stands on a plan's first day, one line for each group of equal plants. */
final class StandingWords {
  private StandingWords() {}

  static List<String> lines(Standing standing) {
    List<String> lines = new ArrayList<>();
    for (StandingBatch batch : standing.batches()) {
      batch.groups().forEach(group -> lines.add(line(batch, group)));
    }
    return lines;
  }

  private static String line(StandingBatch batch, StandingGroup group) {
    String where =
        group.pots().isEmpty() ? group.stage().words() : "in " + Words.list(group.pots());
    String plants =
        Words.count(Math.max(1, (int) Math.round(group.plants())), "plant")
            + (group.stage() == Stage.GERMINATING ? " expected" : "");
    String grams =
        group.stage() == Stage.GERMINATING
            ? ""
            : "; %s to %s each, likely %s"
                .formatted(
                    Words.grams(group.freshG().low()),
                    Words.grams(group.freshG().high()),
                    Words.grams(group.freshG().median()));
    return "%s (batch %s): %s, %s%s."
        .formatted(Words.spoken(batch.crop().name()), batch.batch(), plants, where, grams);
  }
}
