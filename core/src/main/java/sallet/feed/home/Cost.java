package sallet.feed.home;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sallet.feed.recipe.Bag;
import sallet.feed.recipe.Recipe;

/**
 * What the salts of a volume cost, in the one currency of the household's prices; acid and water
 * apart.
 *
 * @param amount of all that have a price
 * @param each of each product by its name
 * @param unpriced names of what has no price
 */
public record Cost(double amount, Map<String, Double> each, List<String> unpriced) {
  private static final double PER_KG = 1000;

  public Cost {
    each = Collections.unmodifiableMap(new LinkedHashMap<>(each));
    unpriced = List.copyOf(unpriced);
  }

  /** Of recipes for a volume, L; nothing when no bag has a price. */
  static Optional<Cost> of(List<Bag> bags, List<Recipe> recipes, double litres) {
    Map<String, Double> each = new LinkedHashMap<>();
    List<String> unpriced = new ArrayList<>();
    for (Recipe recipe : recipes) {
      for (Recipe.Dose dose : recipe.doses()) {
        double price = pricePerKg(bags, dose);
        if (price > 0) {
          double amount = dose.amount() / recipe.litres() * litres;
          each.put(dose.product().name(), amount / PER_KG * price);
        } else {
          unpriced.add(dose.product().name());
        }
      }
    }
    double sum = each.values().stream().mapToDouble(Double::doubleValue).sum();
    return each.isEmpty() ? Optional.empty() : Optional.of(new Cost(sum, each, unpriced));
  }

  private static double pricePerKg(List<Bag> bags, Recipe.Dose dose) {
    return bags.stream()
        .filter(bag -> bag.product().equals(dose.product()))
        .mapToDouble(Bag::pricePerKg)
        .findFirst()
        .orElse(0);
  }
}
