package sallet.app.report.water;

import java.util.List;
import java.util.Optional;
import sallet.water.absence.AwaySheet;

/**
 * The sheet of an absence and, when asked for, how one of its numbers comes about.
 *
 * @param sheet the sheet
 * @param basis what it rests on, in sentences
 * @param explained the number asked for
 */
public record AwayReport(AwaySheet sheet, List<String> basis, Optional<Explained> explained) {
  public AwayReport {
    basis = List.copyOf(basis);
  }
}
