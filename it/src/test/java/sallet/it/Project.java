package sallet.it;

import java.nio.file.Files;
import java.nio.file.Path;

/** Where the sources of the project lie. */
final class Project {
  private Project() {}

  /** The folder with ARCHITECTURE.md, at or above the one the tests run in. */
  static Path folder() {
    Path folder = Path.of("").toAbsolutePath();
    while (!Files.exists(folder.resolve("ARCHITECTURE.md"))) {
      folder = folder.getParent();
      if (folder == null) {
        throw new IllegalStateException("the tests must run inside the project's folder");
      }
    }
    return folder;
  }
}
