package sallet.app.file;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import sallet.crop.Catalogue;

/** The example files and a reader for tests. */
final class Examples {
  /** Some of the built-in cities. */
  static final List<String> CITIES = List.of("Hobart", "London", "Minneapolis", "São Paulo");

  private Examples() {}

  /** The reader as the program uses it, with a few cities. */
  static HouseholdReader reader() {
    return new HouseholdReader(Catalogue.builtIn(), CITIES);
  }

  /** A file of the examples folder. */
  static Path file(String name) {
    Path here = Path.of("examples", name);
    return Files.exists(here) ? here : Path.of("..", "examples", name);
  }
}
