package sallet.it;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * A file that a folder of cases may hold.
 *
 * @param path below the folder of cases; the name may be a pattern such as {@code plan*.json}
 * @param kind check or data
 * @param holds what it is about, in a few words
 */
record CaseFile(String path, Kind kind, String holds) {
  enum Kind {
    CHECK,
    DATA
  }

  /** All known files, from {@code case-files.csv}. */
  static List<CaseFile> known() {
    try (InputStream in =
        Objects.requireNonNull(CaseFile.class.getResourceAsStream("/case-files.csv"))) {
      return new String(in.readAllBytes(), java.nio.charset.StandardCharsets.UTF_8)
          .lines()
          .skip(1)
          .map(CaseFile::parse)
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static CaseFile parse(String line) {
    String[] cells = line.split(",", -1);
    return new CaseFile(
        cells[0], Kind.valueOf(cells[1].toUpperCase(java.util.Locale.ROOT)), cells[2]);
  }

  /** Whether a path below a folder of cases is this file. */
  boolean matches(String file) {
    return FileSystems.getDefault().getPathMatcher("glob:" + path).matches(Path.of(file));
  }

  /** The files of a folder, as paths below it with forward slashes, in order. */
  static List<String> in(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      return files
          .filter(Files::isRegularFile)
          .map(file -> folder.relativize(file).toString().replace('\\', '/'))
          .sorted()
          .toList();
    }
  }
}
