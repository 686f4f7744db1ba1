package sallet.light;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

/** Which stage of the wanted crops a place is good for by its light of a day. */
public enum PlaceUse {
  HEADS("heads"),
  LEAVES("leaf crops"),
  SEEDLINGS("seedlings; leaves grow slowly"),
  SLOW("slow growth; seedlings stretch"),
  TOO_DARK("nothing (plants stretch)");

  private final String words;

  PlaceUse(String words) {
    this.words = words;
  }

  /** The best use of a place with so much light, mol/m² a day. */
  public static PlaceUse of(double dliMol, List<LightNeed> wanted) {
    for (PlaceUse use : values()) {
      OptionalDouble least = use.fromMol(wanted);
      if (least.isPresent() && dliMol >= least.getAsDouble()) {
        return use;
      }
    }
    return TOO_DARK;
  }

  /**
   * Least light of a day for this use, mol/m²: what the least demanding of the crops concerned is
   * to get. Empty when no such crop is wanted.
   */
  public OptionalDouble fromMol(List<LightNeed> wanted) {
    return switch (this) {
      case HEADS -> least(wanted, LightNeed::heads, LightNeed::targetMol);
      case LEAVES -> least(wanted, need -> !need.heads(), LightNeed::targetMol);
      case SEEDLINGS -> least(wanted, need -> true, LightNeed::seedlingMol);
      case SLOW -> least(wanted, need -> true, LightNeed::leastMol);
      case TOO_DARK -> OptionalDouble.of(0);
    };
  }

  private static OptionalDouble least(
      List<LightNeed> wanted, Predicate<LightNeed> which, ToDoubleFunction<LightNeed> mol) {
    return wanted.stream().filter(which).mapToDouble(mol).min();
  }

  /** In words. */
  public String words() {
    return words;
  }
}
