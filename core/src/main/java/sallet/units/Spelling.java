package sallet.units;

/** The many signs people type for one unit, brought to one form. */
final class Spelling {
  private Spelling() {}

  /**
   * A unit with both micro signs and a plain u before mol as "umol", raised digits and carets as
   * plain digits, the signs ° and º as one, and no space or dot between its parts.
   */
  static String plain(String unit) {
    return unit.strip()
        .replace('\u00b5', 'u') // micro sign
        .replace('\u03bc', 'u') // Greek small letter mu
        .replace('\u00b2', '2')
        .replace('\u00b3', '3')
        .replace("\u207b\u00b9", "-1")
        .replace('\u207b', '-')
        .replace('\u2212', '-')
        .replace('\u00b9', '1')
        .replace('\u00ba', '°')
        .replace("\u2103", "°C")
        .replace("\u2109", "°F")
        .replace('\u2032', '\'')
        .replace('\u2019', '\'')
        .replace('\u2033', '"')
        .replace('\u201d', '"')
        .replaceAll("[\\s\u00a0\u202f\u00b7*^]", "");
  }
}
