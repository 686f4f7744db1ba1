package sallet.app.file;

import java.util.Locale;

/** What may stand behind a key of the household file. */
enum Form {
  /** Keys of its own. */
  SECTION,
  /** A list of groups of keys. */
  LIST,
  /** Either of the two. */
  SECTION_OR_LIST,
  /** Keys of its own or the word none. */
  SECTION_OR_NONE,
  /** A number with a unit. */
  QUANTITY,
  /** One quantity for the whole year, or twelve. */
  MONTHLY,
  /** Twelve quantities. */
  TWELVE,
  /** A number without a unit. */
  NUMBER,
  /** A whole number. */
  WHOLE,
  /** A short text, such as a figure with its unit or a chemical name. */
  WORDS,
  /** A name. */
  TEXT,
  /** One of a few words. */
  CHOICE,
  /** The word true. */
  YES,
  /** A day such as 2027-07-03. */
  DATE,
  /** A day of any year such as 04-20. */
  YEARDAY,
  /** The name of a file beside this one. */
  FILE,
  /** A time of day such as 06:00. */
  CLOCK,
  /** A time zone. */
  ZONE,
  /** A built-in city. */
  CITY,
  /** A list of weekdays. */
  DAYS,
  /** A list of crop names. */
  CROPS;

  static Form of(String word) {
    return valueOf(word.replace("|", "_or_").toUpperCase(Locale.ROOT));
  }

  boolean mayHaveKeys() {
    return this == SECTION || this == SECTION_OR_LIST || this == SECTION_OR_NONE;
  }

  boolean mayBeList() {
    return this == LIST || this == SECTION_OR_LIST;
  }
}
