package sallet.crop;

/** How a crop is harvested. */
public enum HarvestStyle {
  /** Outer leaves of the standing plant, again and again. */
  LEAF_BY_LEAF("leaf by leaf"),
  /** The plant as a whole, once. */
  WHOLE_PLANT("as a whole"),
  /** Seedlings of a tray, cut once. */
  TRAY("by the tray"),
  /** Ripe fruit. */
  FRUIT("fruit by fruit");

  private final String words;

  HarvestStyle(String words) {
    this.words = words;
  }

  /** The style in words. */
  public String words() {
    return words;
  }
}
