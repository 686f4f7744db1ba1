package sallet.feed;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import sallet.cases.CaseFolder;
import sallet.cases.CaseRow;
import sallet.cases.Outcome;
import sallet.cases.RowCheck;
import sallet.feed.ion.Composition;
import sallet.feed.ion.Ion;
import sallet.feed.ion.Nutrient;
import sallet.feed.product.Salt;
import sallet.feed.recipe.Bag;
import sallet.feed.recipe.Goal;
import sallet.feed.recipe.Recipe;
import sallet.feed.recipe.RecipeFinder;
import sallet.feed.recipe.RecipeQuestion;
import sallet.feed.recipe.SolutionLimits;

/** Optimal recipes against a general-purpose least-squares solver and exhaustive search. */
final class RecipeChecks {
  private RecipeChecks() {}

  private static final Pattern LIST = Pattern.compile("'([^']+)'");
  private static final Pattern AMOUNT = Pattern.compile("'([^']+)': ([\\d.]+)");
  private static final Pattern AT_MOST = Pattern.compile("at most (\\d+) salts");

  static Map<String, RowCheck> byFile() {
    return Map.of("feed/check_optimise.csv", RecipeChecks::optimum);
  }

  private static List<Outcome> optimum(CaseRow row, CaseFolder folder) {
    Recipe recipe = RecipeFinder.find(question(row, folder));
    String quantity = row.text("quantity");
    if (quantity.endsWith(" mass")) {
      String salt = quantity.replace(" mass", "");
      double grams =
          recipe.doses().stream()
              .filter(d -> d.product().id().equals(salt))
              .mapToDouble(Recipe.Dose::amount)
              .sum();
      return List.of(Tolerance.compare(row, grams));
    }
    if (quantity.equals("chosen salts")) {
      TreeSet<String> ours = new TreeSet<>();
      recipe.doses().forEach(d -> ours.add(d.product().id()));
      TreeSet<String> expected =
          new TreeSet<>(Arrays.asList(row.text("expected").split("\\+", -1)));
      return List.of(Outcome.same(quantity, expected.toString(), ours.toString()));
    }
    double best = row.number("expected");
    double excess = Math.max(0, recipe.objective() - best);
    return List.of(Outcome.number("objective", best, best + excess, row.number("tolerance")));
  }

  private static RecipeQuestion question(CaseRow row, CaseFolder folder) {
    String described = described(row, folder);
    String[] parts = described.split(";", -1);
    List<Bag> shelf = new ArrayList<>();
    Matcher salts = LIST.matcher(parts[0]);
    while (salts.find()) {
      shelf.add(Bag.of(Salt.find(salts.group(1)).orElseThrow().product(1)));
    }
    Map<String, Double> targets = amounts(parts[1]);
    Map<String, Double> weights = amounts(parts[2]);
    List<Goal> goals = new ArrayList<>();
    targets.forEach(
        (name, mgL) -> goals.add(new Goal(nutrient(name), mgL, weights.getOrDefault(name, 1.0))));
    Composition water = Composition.EMPTY;
    for (Map.Entry<String, Double> entry : amounts(parts[3]).entrySet()) {
      Nutrient nutrient = nutrient(entry.getKey());
      Ion ion = nutrient.ions().get(0);
      water = water.with(ion, entry.getValue() / nutrient.element().weight());
    }
    Matcher few = AT_MOST.matcher(row.text("input"));
    int bags = few.find() ? Integer.parseInt(few.group(1)) : shelf.size();
    SolutionLimits none = new SolutionLimits(1, 1e6, 1e6);
    return new RecipeQuestion(goals, water, 1, shelf, Optional.empty(), none, Optional.of(bags));
  }

  /** "as above" refers to the nearest row before that describes the whole problem. */
  private static String described(CaseRow row, CaseFolder folder) {
    if (row.text("input").startsWith("salts")) {
      return row.text("input");
    }
    String described = "";
    for (CaseRow other : folder.rows(row.file())) {
      if (other.line() < row.line() && other.text("input").startsWith("salts")) {
        described = other.text("input");
      }
    }
    if (described.isEmpty()) {
      throw new RowCheck.Skipped("no row above describes the problem");
    }
    return described;
  }

  private static Map<String, Double> amounts(String text) {
    Map<String, Double> amounts = new java.util.LinkedHashMap<>();
    Matcher m = AMOUNT.matcher(text);
    while (m.find()) {
      amounts.put(m.group(1), Double.valueOf(m.group(2)));
    }
    return amounts;
  }

  private static Nutrient nutrient(String name) {
    return Nutrient.of(name.equals("NH4N") ? "NH4-N" : name).orElseThrow();
  }
}
