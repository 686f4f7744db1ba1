package sallet.crop;

import java.util.List;
import java.util.Optional;

/** The crops Sallet knows. */
public final class Catalogue {
  private final List<Crop> crops;

  Catalogue(List<Crop> crops) {
    this.crops = List.copyOf(crops);
  }

  /** The catalogue that ships with Sallet. */
  public static Catalogue builtIn() {
    throw new UnsupportedOperationException("not built yet");
  }

  /** All crops in catalogue order. */
  public List<Crop> all() {
    return crops;
  }

  /** The crop of a name, without regard to commas, hyphens, brackets and case. */
  public Optional<Crop> find(String name) {
    throw new UnsupportedOperationException("not built yet");
  }
}
