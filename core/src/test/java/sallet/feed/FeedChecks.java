package sallet.feed;

import java.util.HashMap;
import java.util.Map;
import sallet.cases.Checks;
import sallet.cases.RowCheck;

/** All check files of the feed. */
public final class FeedChecks implements Checks {
  @Override
  public Map<String, RowCheck> byFile() {
    Map<String, RowCheck> all = new HashMap<>(ChemistryChecks.byFile());
    all.putAll(ProductChecks.byFile());
    all.putAll(MeterChecks.byFile());
    all.putAll(ReservoirChecks.byFile());
    all.putAll(RecipeChecks.byFile());
    return all;
  }
}
