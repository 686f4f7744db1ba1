package sallet.app.file;

import java.util.List;
import sallet.crop.Catalogue;

/** What to say of a name that is no crop of the catalogue. */
public final class UnknownCrop {
  private UnknownCrop() {}

  /**
   * One sentence: what may have been meant, or the crop it is most like and how to write it as an
   * own crop.
   */
  public static String sentence(Catalogue catalogue, String word) {
    return Scalars.quoted(word)
        + catalogue
            .relative(word)
            .map(relative -> relative.crop().map(UnknownCrop::like).orElse(LIKE_NONE))
            .orElseGet(() -> meant(catalogue.suggestions(word)));
  }

  private static final String LIKE_NONE =
      " is not in the catalogue of crops, nor is one that is grown like it; docs/crops.md lists"
          + " their names";

  private static String like(String crop) {
    return " is not in the catalogue of crops; it is grown most like %s: add it under crops.own with like: %s"
        .formatted(crop, crop.replaceAll("[^\\p{L}\\p{N} -]", ""));
  }

  private static String meant(List<String> near) {
    return " is not in the catalogue of crops"
        + (near.isEmpty() ? "" : " (did you mean \"" + String.join("\" or \"", near) + "\"?)")
        + "; docs/crops.md lists their names";
  }
}
