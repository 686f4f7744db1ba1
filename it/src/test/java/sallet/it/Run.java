package sallet.it;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * A command that has ended.
 *
 * @param status exit status
 * @param out what it printed
 * @param err what it said beside
 */
record Run(int status, String out, String err) {

  /** Runs a command in a folder and waits for its end. */
  static Run of(Path folder, String... command) throws IOException, InterruptedException {
    Path out = Files.createTempFile("sallet", ".out");
    Path err = Files.createTempFile("sallet", ".err");
    try {
      int status =
          new ProcessBuilder(command)
              .directory(folder.toFile())
              .redirectOutput(out.toFile())
              .redirectError(err.toFile())
              .start()
              .waitFor();
      return new Run(status, Files.readString(out), Files.readString(err));
    } finally {
      Files.delete(out);
      Files.delete(err);
    }
  }
}
