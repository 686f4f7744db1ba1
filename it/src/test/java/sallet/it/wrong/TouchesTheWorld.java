package sallet.it.wrong;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Random;
import sallet.household.Wall;

/** Knows another room, reads files and the clock, throws unseeded dice, keeps state. */
@SuppressWarnings("NonFinalStaticField")
public class TouchesTheWorld {
  public static int calls;

  public boolean file() {
    calls++;
    return Files.exists(Path.of("x"));
  }

  public LocalDate clock() {
    return LocalDate.now(ZoneOffset.UTC);
  }

  public Wall wall() {
    return Wall.NORTH;
  }

  public long stopwatch() {
    return System.nanoTime();
  }

  public double dice() {
    return new Random().nextDouble();
  }
}
