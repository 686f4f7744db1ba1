package sallet.app.file;

/**
 * One thing wrong with a household file.
 *
 * @param path where, such as "bench.pots[3].x"; empty when it concerns the file as a whole
 * @param line line in the file, counted from 1; 0 when there is none
 * @param sentence what is wrong, what is allowed and how to mend it
 */
public record Fault(String path, int line, String sentence) {

  /** The fault as a line of text. */
  public String text() {
    String where = path.isEmpty() ? "" : path;
    if (line > 0) {
      where = where.isEmpty() ? "line " + line : where + " (line " + line + ")";
    }
    return where.isEmpty() ? sentence : where + ": " + sentence;
  }
}
