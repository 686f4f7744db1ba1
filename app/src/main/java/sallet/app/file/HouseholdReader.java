package sallet.app.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import sallet.crop.Catalogue;
import sallet.household.CropWishes;
import sallet.household.Household;

/** Reads household files: a household, or every fault of the file in one go. */
public final class HouseholdReader {
  /** Largest file that is read, bytes. */
  static final int LARGEST = 1_000_000;

  private final Catalogue catalogue;
  private final Keys keys = Keys.shipped();

  /**
   * @param catalogue crops a file may name
   */
  public HouseholdReader(Catalogue catalogue) {
    this.catalogue = catalogue;
  }

  /** Reads a file. */
  public HouseholdFile read(Path file) {
    Faults faults = new Faults();
    Optional<byte[]> bytes = bytes(file, faults);
    Optional<Path> folder = Optional.ofNullable(file.toAbsolutePath().getParent());
    return bytes
        .map(b -> read(b, folder))
        .orElseGet(() -> new HouseholdFile.Faulty(faults.inOrder()));
  }

  /** Reads the bytes of a file that names no other files. */
  public HouseholdFile read(byte[] bytes) {
    return read(bytes, Optional.empty());
  }

  private HouseholdFile read(byte[] bytes, Optional<Path> folder) {
    Faults faults = new Faults();
    Optional<HouseholdFile.Good> good =
        text(bytes, faults).flatMap(text -> parse(text, folder, faults));
    return good.filter(whole -> faults.isEmpty())
        .<HouseholdFile>map(whole -> whole)
        .orElseGet(() -> new HouseholdFile.Faulty(faults.inOrder()));
  }

  private Optional<HouseholdFile.Good> parse(String text, Optional<Path> folder, Faults faults) {
    Optional<Yaml> root = YamlReader.read(text, faults);
    if (root.isEmpty() || (root.get() instanceof Yaml.Scalar scalar && scalar.isNothing())) {
      if (faults.isEmpty()) {
        faults.add("", 0, "the file is empty; it needs at least the place of the room");
      }
      return Optional.empty();
    }
    Values values = Structure.read(root.get(), keys, faults);
    Catalogue known = new OwnCrops(values, faults, catalogue).added();
    CropWishes crops = new CropChecks(values, faults, known).check();
    PlaceChecks place = new PlaceChecks(values, faults);
    Attachments attachments = new Attachments(values, faults, folder);
    Household household =
        new HouseholdBuilder(values, faults, attachments).household(crops, place.city());
    place.check();
    new PeopleChecks(values, faults).check();
    new WindowChecks(values, faults, household.room()).check();
    BenchChecks bench = new BenchChecks(values, faults, household.room(), household.bench());
    bench.check();
    List<String> lamps = LampBuilder.paths(values);
    for (int i = 0; i < household.lamps().size(); i++) {
      bench.check(lamps.get(i), household.lamps().get(i));
    }
    new ShelfChecks(values, faults, household.feed()).check();
    new WateringChecks(values, faults, household).check();
    new PotChecks(values, faults, household).check();
    Household read = new ReadingChecks(values, faults).with(household);
    return Optional.of(new HouseholdFile.Good(read, known));
  }

  private static Optional<byte[]> bytes(Path file, Faults faults) {
    if (Files.isDirectory(file)) {
      faults.add("", 0, "is a folder; name the household file in it");
      return Optional.empty();
    }
    if (!Files.exists(file)) {
      faults.add("", 0, "there is no such file; check its name and folder");
      return Optional.empty();
    }
    try (InputStream in = Files.newInputStream(file)) {
      return Optional.of(in.readNBytes(LARGEST + 1));
    } catch (IOException e) {
      faults.add("", 0, "the file cannot be read; check that you are allowed to");
      return Optional.empty();
    }
  }

  private static Optional<String> text(byte[] bytes, Faults faults) {
    if (bytes.length > LARGEST) {
      faults.add("", 0, "the file is larger than 1 MB; a household file has a few hundred lines");
      return Optional.empty();
    }
    if (bytes.length >= 2 && (bytes[0] & 0xff) + (bytes[1] & 0xff) == 0xff + 0xfe) {
      faults.add("", 0, "the file is written in UTF-16; save it as UTF-8");
      return Optional.empty();
    }
    for (byte one : bytes) {
      if (one == 0) {
        faults.add("", 0, "this is not a text file; a household file is plain text (YAML)");
        return Optional.empty();
      }
    }
    try {
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      return Optional.of(text.startsWith("\ufeff") ? text.substring(1) : text);
    } catch (CharacterCodingException e) {
      faults.add("", notUtf8Line(bytes), "a letter here is not UTF-8; save the file as UTF-8");
      return Optional.empty();
    }
  }

  /** The line of the first byte that does not decode. */
  private static int notUtf8Line(byte[] bytes) {
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CharBuffer out = CharBuffer.allocate(bytes.length);
    StandardCharsets.UTF_8.newDecoder().decode(in, out, true);
    int line = 1;
    for (int i = 0; i < in.position(); i++) {
      line += bytes[i] == '\n' ? 1 : 0;
    }
    return line;
  }
}
