package sallet.water.absence;

import java.util.function.UnaryOperator;

/**
 * A step with what it changes.
 *
 * @param kind what it is
 * @param text what to do
 * @param trouble judgement
 * @param change the scene after it
 */
record Lever(Step.Kind kind, String text, int trouble, UnaryOperator<Scene> change) {

  Step told(Outlook before, Outlook after) {
    double share =
        before.demand().medianL() == 0
            ? 0
            : after.demand().medianL() / before.demand().medianL() - 1;
    return new Step(
        kind,
        text,
        trouble,
        share,
        after.lasts(),
        before.demand().medianL() - after.demand().medianL());
  }
}
