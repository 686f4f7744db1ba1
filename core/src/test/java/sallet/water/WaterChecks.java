package sallet.water;

import java.util.HashMap;
import java.util.Map;
import sallet.cases.Checks;
import sallet.cases.RowCheck;

/** All check files of water. */
public final class WaterChecks implements Checks {
  @Override
  public Map<String, RowCheck> byFile() {
    Map<String, RowCheck> all = new HashMap<>(AirChecks.byFile());
    all.putAll(LeafChecks.byFile());
    all.putAll(PotChecks.byFile());
    all.putAll(TankChecks.byFile());
    return all;
  }
}
