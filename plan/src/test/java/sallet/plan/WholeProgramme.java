package sallet.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sallet.plan.linear.LinearProgramme;

/**
 * The choice of whole plants among given lives, with the rows and points of the sowing plan. Each
 * method builds it in an empty programme and returns the columns that must be whole.
 */
final class WholeProgramme {
  private WholeProgramme() {}

  /** Whole plants of each skeleton, any mix of their picks. */
  static List<Integer> ofSkeletons(Instance instance, List<Life> lives, LinearProgramme programme) {
    Map<Life.Skeleton, List<Integer>> mixes = new LinkedHashMap<>();
    List<Integer> columns = add(instance, lives, programme);
    for (int i = 0; i < lives.size(); i++) {
      mixes.computeIfAbsent(lives.get(i).skeleton(), s -> new ArrayList<>()).add(columns.get(i));
    }
    return mixes.values().stream().map(mix -> sum(mix, programme)).toList();
  }

  /** Whole plants of each life: every pick and its grams are fixed beforehand. */
  static List<Integer> ofLives(Instance instance, List<Life> lives, LinearProgramme programme) {
    return add(instance, lives, programme);
  }

  private static List<Integer> add(Instance instance, List<Life> lives, LinearProgramme programme) {
    Eating eating = new Eating(instance, programme);
    Places places = new Places(instance, programme);
    List<Integer> columns = new ArrayList<>();
    for (Life life : lives) {
      int column =
          programme.column(life.course().seedPoints() + Weights.WASTE * life.clearedGrams());
      eating.setGrams(column, life);
      places.set(column, life.skeleton());
      columns.add(column);
    }
    return columns;
  }

  /** A column that is the sum of others. */
  private static int sum(List<Integer> columns, LinearProgramme programme) {
    int row = programme.row(0, 0);
    int sum = programme.column(0);
    programme.set(row, sum, -1);
    columns.forEach(c -> programme.set(row, c, 1));
    return sum;
  }
}
