package sallet.water.absence;

/**
 * Something that can be done before leaving.
 *
 * @param kind what it is
 * @param text what to do, in a sentence
 * @param trouble how much trouble or growth it costs; judgement, only the order matters
 * @param useChange change of the water used on the days away, as a share; -0.3 is 30 % less
 * @param lastsAlone probability that the water lasts when only this is done
 * @param gainL water it saves or brings over the absence, L: what steps are put in order by
 */
public record Step(
    Kind kind, String text, int trouble, double useChange, double lastsAlone, double gainL) {
  /** The same with the effect it has alone. */
  Step alone(double lasts, double litres) {
    return new Step(kind, text, trouble, useChange, lasts, litres);
  }

  /** Kinds of steps. */
  public enum Kind {
    /** Fill the reservoir to the brim. */
    FILL,
    /** Start with thinner solution. */
    DILUTE,
    /** Switch the fan off. */
    FAN,
    /** Cover open water. */
    COVER,
    /** Pick and eat before leaving. */
    HARVEST,
    /** Keep the door closed. */
    DOOR,
    /** Turn heating down. */
    COOL,
    /** Shorten the lamp's day. */
    LAMP,
    /** Lift whole plants from the thirstiest pots and eat them. */
    CLEAR,
    /** Move plants that do not outlive a missed flood to dimmer pots. */
    MOVE,
    /** Take out pots that do not outlive a missed flood. */
    LIFT,
    /** Ask somebody to pour in water. */
    NEIGHBOUR,
    /** Connect a second container. */
    TANK
  }
}
