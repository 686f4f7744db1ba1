package sallet.app.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import sallet.weather.UnreadableFile;

/** The files a household file names: hourly weather and lamps' photometry. */
final class Attachments {
  /** Largest file that is read, bytes: some five times a year of hours. */
  private static final int LARGEST = 10_000_000;

  private final Values values;
  private final Faults faults;
  private final Optional<Path> folder;

  /**
   * @param folder where the household file lies, empty when it came without one
   */
  Attachments(Values values, Faults faults, Optional<Path> folder) {
    this.values = values;
    this.faults = faults;
    this.folder = folder;
  }

  /**
   * What a file behind a key holds; empty when there is none or it is faulty, which is then told.
   */
  <T> Optional<T> read(String path, Function<List<String>, T> reader) {
    Optional<String> name = values.get(path, String.class);
    Optional<List<String>> lines = name.flatMap(file -> lines(path, file));
    try {
      return lines.map(reader);
    } catch (UnreadableFile e) {
      String where = e.line() > 0 ? ", line " + e.line() : "";
      fault(path, name.orElse("") + where + ": " + e.getMessage());
      return Optional.empty();
    }
  }

  private Optional<List<String>> lines(String path, String name) {
    if (folder.isEmpty()) {
      fault(path, "files cannot be named here, where the household has no folder");
      return Optional.empty();
    }
    try {
      Path file = folder.get().resolve(name);
      if (!Files.isRegularFile(file)) {
        fault(path, "there is no file " + Scalars.quoted(name) + "; check its name and folder");
        return Optional.empty();
      }
      try (InputStream in = Files.newInputStream(file)) {
        byte[] bytes = in.readNBytes(LARGEST + 1);
        if (bytes.length <= LARGEST) {
          // Such files are plain ASCII but for names, which are of no account.
          return Optional.of(new String(bytes, StandardCharsets.ISO_8859_1).lines().toList());
        }
        fault(path, Scalars.quoted(name) + " is larger than 10 MB; it is something else");
      }
    } catch (IOException | InvalidPathException e) {
      fault(path, Scalars.quoted(name) + " cannot be read; check that you are allowed to");
    }
    return Optional.empty();
  }

  private void fault(String path, String sentence) {
    faults.add(path, values.line(path), sentence);
  }
}
