package sallet.app.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import sallet.learn.Stage;
import sallet.learn.Standing;
import sallet.learn.StandingBatch;
import sallet.learn.StandingGroup;

/** What stands and what was learned, in the plan's JSON. */
final class StandingJson {
  private StandingJson() {}

  static void addTo(ObjectNode root, Standing standing) {
    ArrayNode groups = root.withArray("standing");
    for (StandingBatch batch : standing.batches()) {
      batch.groups().forEach(group -> groups.add(group(batch, group, root)));
    }
    ArrayNode learned = root.withArray("learned");
    standing
        .learned()
        .growth()
        .forEach(
            (crop, factor) ->
                learned
                    .addObject()
                    .put("crop", crop)
                    .put("growthFactor", thousandths(factor.median()))
                    .put("growthFactorBefore", thousandths(factor.priorMedian()))
                    .put("readings", factor.readings()));
  }

  private static ObjectNode group(StandingBatch batch, StandingGroup group, ObjectNode root) {
    ObjectNode node = root.objectNode();
    node.put("batch", batch.batch());
    node.put("crop", batch.crop().name());
    node.put("stage", group.stage().name().toLowerCase(Locale.ROOT));
    node.put("count", (int) Math.round(group.plants()));
    ArrayNode places = node.putArray("places");
    group.pots().forEach(places::add);
    boolean up = group.stage() != Stage.GERMINATING;
    node.put("freshGramsLow", up ? tenths(group.freshG().low()) : 0);
    node.put("freshGramsExpected", up ? tenths(group.freshG().median()) : 0);
    node.put("freshGramsHigh", up ? tenths(group.freshG().high()) : 0);
    return node;
  }

  private static double tenths(double value) {
    return Math.round(value * 10) / 10.0;
  }

  private static double thousandths(double value) {
    return Math.round(value * 1000) / 1000.0;
  }
}
