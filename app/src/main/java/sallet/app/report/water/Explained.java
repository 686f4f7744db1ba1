package sallet.app.report.water;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import sallet.app.report.Steps;
import sallet.units.Step;

/**
 * How a number comes about.
 *
 * @param path its path in the JSON
 * @param steps the steps in the order of reckoning
 */
public record Explained(String path, List<Step> steps) {
  public Explained {
    steps = List.copyOf(steps);
  }

  String text() {
    return path + "\n\n" + Steps.text(steps);
  }

  void json(ObjectNode root) {
    root.putObject("explained").put("path", path).set("steps", Steps.json(steps));
  }
}
