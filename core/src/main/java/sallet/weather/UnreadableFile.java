package sallet.weather;

/** A weather or lamp file that is broken, cut short or of another kind. */
public final class UnreadableFile extends IllegalArgumentException {
  private static final long serialVersionUID = 1;

  private final int line;

  /**
   * @param line where, counted from 1; 0 when no line is to blame
   * @param sentence what is wrong and what would be right
   */
  public UnreadableFile(int line, String sentence) {
    super(sentence);
    this.line = line;
  }

  /** Line in the file, counted from 1; 0 when no line is to blame. */
  public int line() {
    return line;
  }
}
