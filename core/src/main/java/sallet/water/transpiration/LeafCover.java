package sallet.water.transpiration;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.List;
import sallet.crop.PlantModel;
import sallet.crop.PlantState;

/** Leaves in each pot on consecutive days: their area, and the ground their crown covers. */
public final class LeafCover {
  private final LocalDate from;
  private final int days;
  private final double[][] leafCm2;
  private final double[][] crownCm2;
  private final String[][] crop;

  private LeafCover(LocalDate from, int pots, int days) {
    this.from = from;
    this.days = days;
    this.leafCm2 = new double[pots][days];
    this.crownCm2 = new double[pots][days];
    this.crop = new String[pots][days];
    for (String[] row : crop) {
      Arrays.fill(row, "");
    }
  }

  /** Pots in which nothing stands. */
  public static LeafCover none(LocalDate from, int pots, int days) {
    return new LeafCover(from, pots, days);
  }

  /** An area of a pot on a day counted from the first, cm². */
  @FunctionalInterface
  public interface Area {
    double cm2(int pot, int day);
  }

  /** Leaves and crowns as told; a crown covers at most its leaf area. */
  public static LeafCover told(LocalDate from, int pots, int days, Area leaf, Area crown) {
    LeafCover cover = new LeafCover(from, pots, days);
    for (int pot = 0; pot < pots; pot++) {
      for (int day = 0; day < days; day++) {
        cover.leafCm2[pot][day] = leaf.cm2(pot, day);
        cover.crownCm2[pot][day] = Math.min(leaf.cm2(pot, day), crown.cm2(pot, day));
        cover.crop[pot][day] = "plant";
      }
    }
    return cover;
  }

  /** What plants that grow by their model have; no two in one pot on one day. */
  public static LeafCover of(List<StandingPlant> plants, LocalDate from, int pots, int days) {
    LeafCover cover = new LeafCover(from, pots, days);
    plants.forEach(cover::add);
    return cover;
  }

  private void add(StandingPlant plant) {
    List<PlantState> states = plant.states();
    for (int day = 0; day < days; day++) {
      LocalDate date = from.plusDays(day);
      int at = (int) ChronoUnit.DAYS.between(plant.firstDay(), date);
      if (plant.stands(date) && at >= 0 && at < states.size()) {
        double leaf = states.get(at).leafCm2();
        double crown = PlantModel.crownCm2(leaf, plant.parameters().crownC(), plant.siteCm2(date));
        leafCm2[plant.pot()][day] = plant.clump() * leaf;
        crownCm2[plant.pot()][day] = plant.clump() * crown;
        crop[plant.pot()][day] = plant.crop().name();
      }
    }
  }

  /** First day. */
  public LocalDate from() {
    return from;
  }

  /** Number of days. */
  public int days() {
    return days;
  }

  /** Number of pots. */
  public int pots() {
    return leafCm2.length;
  }

  /** Leaf area of a pot, cm². */
  public double leafCm2(int pot, int day) {
    return leafCm2[pot][day];
  }

  /** Ground the crown of a pot covers, cm². */
  public double crownCm2(int pot, int day) {
    return crownCm2[pot][day];
  }

  /** What stands in a pot; empty when nothing does. */
  public String crop(int pot, int day) {
    return crop[pot][day];
  }

  /** Pots in which something stands. */
  public int planted(int day) {
    int planted = 0;
    for (double[] pot : leafCm2) {
      planted += pot[day] > 0 ? 1 : 0;
    }
    return planted;
  }
}
