package sallet.feed.stock;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sallet.feed.FeedFault;
import sallet.feed.ion.Composition;
import sallet.feed.ion.Ion;
import sallet.feed.product.Product;
import sallet.feed.product.Use;
import sallet.feed.recipe.Recipe;

/**
 * Concentrates of a recipe in two tanks, three with silicate: calcium apart from sulfate and
 * phosphate.
 *
 * @param factor how many times stronger than the solution
 * @param tanks the tanks in the order they are poured
 * @param troubles why this factor does not keep clear; empty when it does
 * @param largestFactor the largest of the usual factors that keeps clear, 0 when none does
 */
public record StockPlan(
    int factor, List<StockTank> tanks, List<String> troubles, int largestFactor) {
  private static final List<Integer> USUAL_FACTORS =
      List.of(250, 200, 150, 100, 75, 50, 25, 20, 10, 5);
  private static final int SHARE_STEPS = 10;

  public StockPlan {
    tanks = List.copyOf(tanks);
    troubles = List.copyOf(troubles);
  }

  /** Where a product may go. */
  private enum Place {
    CALCIUM_TANK,
    SULFATE_TANK,
    EITHER,
    ALONE
  }

  /**
   * Concentrates for a recipe.
   *
   * @param coldestC lowest temperature of the place where the tanks stand, °C
   */
  public static StockPlan of(Recipe recipe, int factor, double coldestC) {
    if (factor < 2 || factor > 400) {
      throw new FeedFault("The stock factor must be 2 to 400, was " + factor);
    }
    if (!(coldestC >= 0 && coldestC <= 40)) {
      throw new FeedFault("The tanks' temperature must be 0 to 40 °C, was %s".formatted(coldestC));
    }
    List<StockTank> tanks = tanks(recipe, factor, coldestC);
    int largest =
        USUAL_FACTORS.stream()
            .filter(f -> troubles(tanks(recipe, f, coldestC)).isEmpty())
            .findFirst()
            .orElse(0);
    return new StockPlan(factor, tanks, troubles(tanks), largest);
  }

  /** The largest usual factor at which everything in one tank keeps clear; 0 when none does. */
  public static int largestSingleTankFactor(Recipe recipe, double coldestC) {
    return USUAL_FACTORS.stream()
        .filter(f -> new StockTank("A", perLitre(recipe, f), coldestC).troubles().isEmpty())
        .findFirst()
        .orElse(0);
  }

  /** Volume of each tank for a litre of solution, mL. */
  public double millilitresPerLitre() {
    return 1000.0 / factor;
  }

  private static List<String> troubles(List<StockTank> tanks) {
    return tanks.stream().flatMap(t -> t.troubles().stream()).toList();
  }

  private static Map<Product, Double> perLitre(Recipe recipe, int factor) {
    Map<Product, Double> grams = new LinkedHashMap<>();
    recipe.doses().forEach(d -> grams.put(d.product(), d.amount() / recipe.litres() * factor));
    return grams;
  }

  /** Of all shares of the movable salts, the one that fills both tanks alike. */
  private static List<StockTank> tanks(Recipe recipe, int factor, double coldestC) {
    Map<Product, Double> grams = perLitre(recipe, factor);
    List<StockTank> best = List.of();
    double least = Double.POSITIVE_INFINITY;
    for (int step = 0; step <= SHARE_STEPS; step++) {
      List<StockTank> tanks = split(grams, (double) step / SHARE_STEPS, coldestC);
      double fullest = tanks.stream().mapToDouble(StockTank::fullness).max().orElse(0);
      if (fullest < least) {
        least = fullest;
        best = tanks;
      }
    }
    return best;
  }

  private static List<StockTank> split(
      Map<Product, Double> grams, double shareInCalciumTank, double coldestC) {
    Map<Product, Double> alone = new LinkedHashMap<>();
    Map<Product, Double> a = new LinkedHashMap<>();
    Map<Product, Double> b = new LinkedHashMap<>();
    grams.forEach(
        (product, amount) -> {
          switch (place(product)) {
            case ALONE -> alone.put(product, amount);
            case CALCIUM_TANK -> a.put(product, amount);
            case SULFATE_TANK -> b.put(product, amount);
            case EITHER -> {
              putPositive(a, product, amount * shareInCalciumTank);
              putPositive(b, product, amount * (1 - shareInCalciumTank));
            }
          }
        });
    List<StockTank> tanks = new ArrayList<>();
    addUsed(tanks, "C", alone, coldestC);
    addUsed(tanks, "A", a, coldestC);
    addUsed(tanks, "B", b, coldestC);
    return tanks;
  }

  private static void putPositive(Map<Product, Double> tank, Product product, double amount) {
    if (amount > 1e-9) {
      tank.put(product, amount);
    }
  }

  private static void addUsed(
      List<StockTank> tanks, String name, Map<Product, Double> content, double coldestC) {
    if (!content.isEmpty()) {
      tanks.add(new StockTank(name, content, coldestC));
    }
  }

  private static Place place(Product product) {
    Composition c = product.perUnit();
    if (product.use() == Use.SILICATE) {
      return Place.ALONE;
    }
    boolean chelate = c.mmol(Ion.IRON_EDTA) + c.mmol(Ion.IRON_DTPA) + c.mmol(Ion.IRON_EDDHA) > 0;
    if (c.mmol(Ion.CALCIUM) > 0 || chelate) {
      return Place.CALCIUM_TANK;
    }
    boolean enemy = c.mmol(Ion.SULFATE) + c.mmol(Ion.PHOSPHATE) + c.mmol(Ion.CARBON) > 0;
    return enemy || product.use() == Use.TRACE ? Place.SULFATE_TANK : Place.EITHER;
  }
}
