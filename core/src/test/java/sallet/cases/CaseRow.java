package sallet.cases;

import java.util.Map;

/**
 * One row of a check file.
 *
 * @param file path of the file below the folder of cases, such as "light/sun_patch.csv"
 * @param line line number in the file, the header being 1
 * @param cells text by column name
 */
public record CaseRow(String file, int line, Map<String, String> cells) {

  /** Text of a column. */
  public String text(String column) {
    String value = cells.get(column);
    if (value == null) {
      throw new UnreadableCase(file + " line " + line + " has no column " + column + ".");
    }
    return value.strip();
  }

  /** Number in a column. */
  public double number(String column) {
    String value = text(column);
    try {
      return Double.parseDouble(value);
    } catch (NumberFormatException e) {
      throw new UnreadableCase(
          file + " line " + line + ": " + column + " is not a number: " + value + ".");
    }
  }

  /** Whether the column exists and is filled. */
  public boolean has(String column) {
    String value = cells.get(column);
    return value != null && !value.isBlank();
  }
}
