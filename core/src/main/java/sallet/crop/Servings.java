package sallet.crop;

/** Grams behind cups, portions and salads. */
public final class Servings {
  /**
   * Raw loose-leaf lettuce in a cup, shredded, g. USDA FoodData Central, from memory; the label
   * serving of 85 g in 1.5 cups of the United States food agency packs it more tightly (57 g a
   * cup), loose spinach is lighter (30 g a cup, seen).
   */
  public static final double CUP_G = 36;

  /** One portion of vegetables in British advice, g: a cereal bowl of salad leaves. From memory. */
  public static final double PORTION_G = 80;

  /** A salad beside a meal, g. Between two cups of spinach (60 g) and a label serving (85 g). */
  public static final double SIDE_SALAD_G = 60;

  /** A salad that is the meal, g. From memory: 3 to 4 cups of mixed leaves. */
  public static final double MAIN_SALAD_G = 110;

  private Servings() {}

  /** Edible grams of some cups of raw leaf. */
  public static double gramsOfCups(double cups) {
    return cups * CUP_G;
  }

  /** Fresh mass to harvest for edible grams of a crop, g. */
  public static double harvestFor(double edibleG, HarvestRule rule) {
    return edibleG / rule.edibleShare();
  }
}
