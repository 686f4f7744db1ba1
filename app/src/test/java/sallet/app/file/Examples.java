package sallet.app.file;

import java.nio.file.Files;
import java.nio.file.Path;
import sallet.crop.Catalogue;

/** The example files and a reader for tests. */
final class Examples {
  private Examples() {}

  /** The reader as the program uses it. */
  static HouseholdReader reader() {
    return new HouseholdReader(Catalogue.builtIn());
  }

  /** A file of the examples folder. */
  static Path file(String name) {
    Path here = Path.of("examples", name);
    return Files.exists(here) ? here : Path.of("..", "examples", name);
  }
}
