package sallet.journal;

import java.util.Arrays;
import java.util.Optional;

/** What a row of the journal tells. */
public enum Event {
  /** Seeds into cells: count is seeds, place the number of cells. */
  SOW("sow", About.BATCH, ""),
  /** Cells in which a seedling, or the clump of a pot, has newly come up. */
  EMERGE("emerge", About.BATCH, ""),
  /** Plants to nursery places or into pots. */
  MOVE("move", About.BATCH, ""),
  /** Outer leaves taken, edible grams of all plants together; value is the share of leaf taken. */
  PICK("pick", About.BATCH, "%"),
  /** Whole plants taken and eaten, edible grams of all plants together. */
  LIFT("lift", About.BATCH, ""),
  /** Plants dead or thrown away. */
  LOST("lost", About.BATCH, ""),
  /** Fresh grams above the medium of one standing plant, or the mean of several. */
  WEIGH("weigh", About.BATCH, ""),
  /** Diameter of the crown of one standing plant, or the mean of several. */
  WIDTH("width", About.BATCH, "cm"),
  /** Conductivity of the solution. */
  EC("ec", About.ROOM, "mS/cm"),
  /** Acidity of the solution. */
  PH("ph", About.ROOM, ""),
  /** Solution in the reservoir while the tray is empty. */
  LEVEL("level", About.ROOM, "L"),
  /** Water or solution poured into the reservoir. */
  TOP_UP("top-up", About.ROOM, "L"),
  /** The reservoir emptied and filled with so much fresh solution. */
  RENEW("renew", About.ROOM, "L"),
  /** Temperature of the solution. */
  SOLUTION_TEMPERATURE("solution-temperature", About.ROOM, "°C"),
  /** Temperature of the air. */
  AIR_TEMPERATURE("air-temperature", About.ROOM, "°C"),
  /** Relative humidity of the air. */
  HUMIDITY("humidity", About.ROOM, "%"),
  /** Light at a place, by quantum meter. */
  PPFD("ppfd", About.ROOM, "µmol/m²/s"),
  /** Light at a place, by lux meter. */
  LUX("lux", About.ROOM, "lx"),
  /** Mass of a pot filled with dry medium, before anything stands in it. */
  POT_DRY("pot-dry", About.ROOM, "g"),
  /** Mass of a pot half an hour after a flood. */
  POT_WET("pot-wet", About.ROOM, "g"),
  /** Mass of a pot with all that is in it, hours after a flood. */
  POT_MASS("pot-mass", About.ROOM, "g");

  private enum About {
    BATCH,
    ROOM
  }

  private final String word;
  private final About about;
  private final String unit;

  Event(String word, About about, String unit) {
    this.word = word;
    this.about = about;
    this.unit = unit;
  }

  /** The event of a word in the journal's event column. */
  public static Optional<Event> of(String word) {
    return Arrays.stream(values()).filter(event -> event.word.equals(word)).findFirst();
  }

  /** The word in the journal's event column. */
  public String word() {
    return word;
  }

  /** Whether it happens to the plants of a batch; else it is a reading in the room. */
  public boolean ofBatch() {
    return about == About.BATCH;
  }

  /** Unit in which an entry holds its value; empty when there is none. */
  public String unit() {
    return unit;
  }
}
