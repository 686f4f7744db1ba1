package sallet.app.cli;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;

/**
 * What a call of the program gave.
 *
 * @param status its exit status
 * @param out what it printed as its answer
 * @param err what it printed beside
 */
record Call(int status, String out, String err) {
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-11-25T20:00:00Z"), ZoneOffset.UTC);

  static Call of(String... args) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    int status = Main.run(new Terminal(utf8(out), utf8(err), CLOCK, false), args);
    return new Call(
        status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }

  private static PrintStream utf8(ByteArrayOutputStream bytes) {
    return new PrintStream(bytes, true, StandardCharsets.UTF_8);
  }
}
