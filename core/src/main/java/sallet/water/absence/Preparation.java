package sallet.water.absence;

import java.util.List;

/**
 * A set of steps and what becomes of the bench after them.
 *
 * @param steps the steps
 * @param scene how things stand when the door closes
 * @param outlook what becomes of it
 * @param visits visits it needs
 * @param connectedL water a second container must bring, L
 * @param trouble sum of the steps' trouble
 * @param safe whether it may be called safe
 */
record Preparation(
    List<Step> steps,
    Scene scene,
    Outlook outlook,
    Visits visits,
    double connectedL,
    int trouble,
    boolean safe) {
  Preparation {
    steps = List.copyOf(steps);
  }
}
