package sallet.app.report;

import java.time.LocalDate;

/**
 * One piece of hand work. Done as told it is one row of the journal.
 *
 * @param date task day
 * @param event what is done
 * @param batch batch it belongs to
 * @param crop catalogue name
 * @param count seeds when sowing, else plants (a clump that shares a pot counts as one)
 * @param place number of cells when sowing, {@code nursery}, or pot names joined by {@code +}
 * @param grams edible grams picked or lifted in all, 0 when nothing is eaten
 * @param text one line a person follows with wet hands
 * @param minutes time it takes, whole minutes, judgement
 */
public record Task(
    LocalDate date,
    Event event,
    String batch,
    String crop,
    int count,
    String place,
    double grams,
    String text,
    int minutes) {

  /** What is done, in the journal's words. */
  public enum Event {
    /** Seeds into cells. */
    SOW("sow"),
    /** From the cell to a nursery place. */
    MOVE_TO_NURSERY("move"),
    /** From the nursery to a pot. */
    MOVE_TO_POT("move"),
    /** Outer leaves of a standing plant. */
    PICK("pick"),
    /** The whole plant, eaten. */
    LIFT("lift"),
    /** The whole plant, thrown away: lost to the bowl. */
    CLEAR("lost");

    private final String journalWord;

    Event(String journalWord) {
      this.journalWord = journalWord;
    }

    /** The word in the journal's event column. */
    public String journalWord() {
      return journalWord;
    }
  }
}
