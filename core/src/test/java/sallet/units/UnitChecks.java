package sallet.units;

import java.util.List;
import java.util.Map;
import sallet.cases.CaseFolder;
import sallet.cases.CaseRow;
import sallet.cases.Checks;
import sallet.cases.Outcome;
import sallet.cases.RowCheck;

/** Quantities against published conversion factors. */
public final class UnitChecks implements Checks {
  @Override
  public Map<String, RowCheck> byFile() {
    return Map.of("units/conversions.csv", UnitChecks::conversion);
  }

  private static List<Outcome> conversion(CaseRow row, CaseFolder folder) {
    Quantity quantity = Quantity.parse(row.text("text"), Dimension.valueOf(row.text("dimension")));
    String what = row.text("text") + " in " + row.text("unit");
    return List.of(
        Outcome.number(what, row.number("expected"), quantity.inBase(), row.number("tolerance")),
        Outcome.same("base unit", row.text("unit"), quantity.dimension().base().symbol()));
  }
}
