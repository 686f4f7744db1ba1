package sallet.crop;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import sallet.household.CropWishes;

/** The crops Sallet knows, by their names and by other common ones. */
public final class Catalogue {
  private static final int MOST_SUGGESTIONS = 3;

  private final List<Crop> crops;
  private final Map<String, Optional<String>> relatives;

  Catalogue(List<Crop> crops, Map<String, Optional<String>> relatives) {
    this.crops = List.copyOf(crops);
    this.relatives = Map.copyOf(relatives);
  }

  /** The catalogue that ships with Sallet. */
  public static Catalogue builtIn() {
    CatalogueTables tables = new CatalogueTables();
    return new Catalogue(tables.crops(), tables.relatives());
  }

  /** This catalogue with a crop added, or put in the place of the one of its name. */
  public Catalogue with(Crop crop) {
    List<Crop> more = new ArrayList<>();
    for (Crop known : crops) {
      more.add(plain(known.name()).equals(plain(crop.name())) ? crop : known);
    }
    if (!more.contains(crop)) {
      more.add(crop);
    }
    return new Catalogue(more, relatives);
  }

  /** All crops in catalogue order. */
  public List<Crop> all() {
    return crops;
  }

  /**
   * The crop of a name, without regard to commas, hyphens, brackets and case; where no crop has the
   * name, the one that is also called so.
   */
  public Optional<Crop> find(String name) {
    String wanted = plain(name);
    return crops.stream()
        .filter(crop -> plain(crop.name()).equals(wanted))
        .findFirst()
        .or(
            () ->
                crops.stream()
                    .filter(
                        crop ->
                            crop.alsoCalled().stream()
                                .map(Catalogue::plain)
                                .anyMatch(wanted::equals))
                    .findFirst());
  }

  /** The crops wanted, or all that can be planned, without those avoided. */
  public List<Crop> wanted(CropWishes wishes) {
    List<Crop> avoided = wishes.avoid().stream().flatMap(n -> find(n).stream()).toList();
    List<Crop> wanted =
        wishes.want().isEmpty()
            ? crops
            : wishes.want().stream().flatMap(n -> find(n).stream()).distinct().toList();
    return wanted.stream().filter(Crop::plannable).filter(c -> !avoided.contains(c)).toList();
  }

  /**
   * What is known of a salad plant that the catalogue lacks: the crop it is most like, if any.
   * Empty when it knows nothing of the name at all.
   */
  public Optional<Relative> relative(String name) {
    String wanted = plain(name);
    return relatives.entrySet().stream()
        .filter(known -> plain(known.getKey()).equals(wanted))
        .map(known -> new Relative(known.getValue()))
        .findFirst();
  }

  /**
   * A salad plant without numbers of its own.
   *
   * @param crop name of the crop of the catalogue it is most like; empty when it is like none
   */
  public record Relative(Optional<String> crop) {}

  /**
   * Names that may have been meant by a name the catalogue lacks, most likely first, at most three:
   * those that hold all its words, and those at most a third of its letters away from it. Other
   * common names count, but the catalogue's own are given.
   */
  public List<String> suggestions(String name) {
    String wanted = plain(name);
    int furthest = Math.max(1, wanted.length() / 3);
    return crops.stream()
        .filter(
            crop ->
                names(crop).anyMatch(n -> holdsWords(n, wanted) || distance(n, wanted) <= furthest))
        .sorted(
            Comparator.comparingInt(
                crop -> names(crop).mapToInt(n -> distance(n, wanted)).min().orElseThrow()))
        .limit(MOST_SUGGESTIONS)
        .map(Crop::name)
        .toList();
  }

  private static Stream<String> names(Crop crop) {
    return Stream.concat(Stream.of(crop.name()), crop.alsoCalled().stream()).map(Catalogue::plain);
  }

  private static boolean holdsWords(String known, String wanted) {
    return !wanted.isEmpty()
        && List.of(known.split(" ", -1)).containsAll(List.of(wanted.split(" ", -1)));
  }

  /** Letters, digits and single spaces, all lower case. */
  private static String plain(String name) {
    return name.toLowerCase(Locale.ROOT)
        .replaceAll("['’]", "")
        .replaceAll("[^\\p{L}\\p{N}]+", " ")
        .strip();
  }

  /** Letters to change, add or drop to turn one word into the other (Levenshtein distance). */
  static int distance(String a, String b) {
    int[] row = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      row[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int changed = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        diagonal = row[j];
        row[j] = Math.min(changed, 1 + Math.min(row[j], row[j - 1]));
      }
    }
    return row[b.length()];
  }
}
