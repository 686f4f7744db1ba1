package sallet.feed;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import sallet.cases.Checks;
import sallet.cases.RowCheck;

/** All check files of the feed. */
public final class FeedChecks implements Checks {
  @Override
  public Map<String, RowCheck> byFile() {
    Map<String, RowCheck> all = new HashMap<>();
    for (Checks part :
        List.of(
            new ChemistryChecks(),
            new ProductChecks(),
            new MeterChecks(),
            new ReservoirChecks(),
            new RecipeChecks())) {
      all.putAll(part.byFile());
    }
    return all;
  }
}
