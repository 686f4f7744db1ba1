package sallet.app.use;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import sallet.app.report.journal.JournalReport;
import sallet.crop.Catalogue;
import sallet.household.Household;
import sallet.journal.Entry;
import sallet.journal.Journal;
import sallet.learn.Remark;
import sallet.learn.Standing;

/** What stands now, and what has the journal taught? */
public final class TellStanding {
  private TellStanding() {}

  /**
   * The answer for a household.
   *
   * @param passedOver what the reader of the journal passed over
   */
  public static JournalReport of(
      Household household,
      Catalogue catalogue,
      Journal journal,
      LocalDate today,
      List<Remark> passedOver) {
    Standing standing = Standing.of(journal, catalogue, household, today);
    List<Remark> remarks = new ArrayList<>(passedOver);
    remarks.addAll(standing.remarks());
    List<Entry> known = journal.until(today).entries();
    return new JournalReport(standing, known.size(), JournalReport.lastReadings(known), remarks);
  }
}
