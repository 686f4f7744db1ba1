package sallet.water;

import java.util.List;

/** Wrong input about water: nothing was computed. One plain sentence a fault. */
public final class WaterFault extends IllegalArgumentException {
  private static final long serialVersionUID = 1;

  private final transient List<Line> lines;

  /**
   * One fault.
   *
   * @param path key of the household file, such as "pump.head"
   * @param sentence what is wrong and how to mend it
   */
  public record Line(String path, String sentence) {}

  /** Several faults found in one go. */
  public WaterFault(List<Line> lines) {
    super(String.join("\n", lines.stream().map(l -> l.path() + ": " + l.sentence()).toList()));
    this.lines = List.copyOf(lines);
  }

  /** What is wrong. */
  public List<Line> lines() {
    return lines;
  }
}
