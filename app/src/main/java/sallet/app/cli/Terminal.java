package sallet.app.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.time.Clock;

/**
 * What a command may touch of the world beside files.
 *
 * @param out for the answer, UTF-8; a reader that goes away early is no fault
 * @param err for progress and faults, UTF-8
 * @param clock for today's date
 * @param trace whether our own faults show where they happened
 */
record Terminal(PrintStream out, PrintStream err, Clock clock, boolean trace) {

  /** The terminal of this process. */
  static Terminal ofProcess() {
    return new Terminal(
        utf8(FileDescriptor.out),
        utf8(FileDescriptor.err),
        Clock.systemUTC(),
        System.getenv("SALLET_TRACE") != null);
  }

  private static PrintStream utf8(FileDescriptor descriptor) {
    return new PrintStream(new FileOutputStream(descriptor), true, StandardCharsets.UTF_8);
  }
}
