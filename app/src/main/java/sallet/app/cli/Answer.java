package sallet.app.cli;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import sallet.app.file.Fault;

/** Tells faults: a line each on the error stream, or JSON on the output when it was asked for. */
record Answer(Terminal terminal, boolean json) {

  /**
   * Tells faults.
   *
   * @param file the file they are in, as the grower named it; empty when there is none
   */
  ExitStatus refuse(ExitStatus status, String file, List<Fault> faults) {
    if (json) {
      terminal.out().println(json(status, faults).toPrettyString());
    } else {
      faults.forEach(fault -> terminal.err().println(line(file, fault)));
    }
    return status;
  }

  private static String line(String file, Fault fault) {
    if (!fault.path().isEmpty() || file.isEmpty()) {
      return fault.text();
    }
    String where = fault.line() > 0 ? file + ", line " + fault.line() : file;
    return where + ": " + fault.sentence();
  }

  private static ObjectNode json(ExitStatus status, List<Fault> faults) {
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    root.put("status", status.code());
    for (Fault fault : faults) {
      ObjectNode one = root.withArray("/faults").addObject();
      one.put("path", fault.path());
      if (fault.line() > 0) {
        one.put("line", fault.line());
      }
      one.put("sentence", fault.sentence());
    }
    return root;
  }
}
