package sallet.water.caution;

/** Safety texts that stand where the advice is given. Local codes and licensed trades decide. */
public enum WaterCaution {
  MAINS(
      "Mains near water: residual-current protection (30 mA or less) on every circuit; plugs, timer and drivers above and beside the tray, never below; a drip loop in every cable; unplug before hands go in; a damaged cable ends its use. Local codes and a licensed electrician decide."),
  TIMER(
      "The timer hangs where splashes cannot reach it and is rated for the pump. A lamp or supply marked IP20 is for dry rooms only; over a bench at least IPX4. Local codes and a licensed electrician decide."),
  OVERFLOW(
      "Overflow and siphon: a standpipe sends what is too much back to the reservoir, and a break against siphoning or an air gap keeps it from running back; tray and hose must fit into the reservoir when the pump stops. Try it with plain water before you leave it alone."),
  REFILL(
      "An automatic refill needs a mechanical limit: connect no more water than the room can stand on its floor, and never the mains. Local codes and a licensed plumber decide."),
  MASS(
      "A litre weighs a kilogram: set the reservoir near a wall across the joists on a spreading board; above 100 L ask an engineer."),
  WARM_WATER(
      "Legionella grows in water of 25 to 45 °C: keep it cooler, do not spray or mist it indoors, empty it when it stands unused for weeks; people with weak defences keep away from spray."),
  CLEANING(
      "Clean only what is empty: scrub, then 100 to 200 mg/L of chlorine for 10 to 30 minutes, rinse, air the room, wear gloves and goggles. Never mix bleach with acid (pH-down), ammonia, peroxide or fertiliser. Never into the live solution. The label comes first."),
  FOOD(
      "Flood water must not touch the leaves you eat; wash leaves; throw away crops after a spill of cleaner."),
  HEATING(
      "Turn heating down, not off, where pipes can freeze; do not block the ventilation of a room with a flame.");

  private final String text;

  WaterCaution(String text) {
    this.text = text;
  }

  /** The text. */
  public String text() {
    return text;
  }
}
