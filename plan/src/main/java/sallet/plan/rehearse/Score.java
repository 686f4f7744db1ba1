package sallet.plan.rehearse;

import java.util.List;

/**
 * What a season was worth.
 *
 * @param fill share of the grams wanted that were in the bowls, 0 to 1
 * @param lowWeeks share of bowls less than 80 % full
 * @param kinds share of bowls with the wanted number of kinds, each of 10 g or more
 * @param waste share of the edible grams grown that were not eaten
 * @param seedsAWeek seeds sown a week
 * @param touchedAWeek plants picked or lifted a week
 * @param points grams missing and wasted and seeds as the planner weighs them, a week
 */
public record Score(
    double fill,
    double lowWeeks,
    double kinds,
    double waste,
    double seedsAWeek,
    double touchedAWeek,
    double points) {

  private static final double LOW = 0.8;

  /**
   * The score of a season.
   *
   * @param startUp first weeks that are not counted
   * @param kindsWanted kinds wanted in each bowl
   */
  static Score of(PlayedSeason season, int startUp, int kindsWanted) {
    List<PlayedSeason.Week> weeks = season.weeks().subList(startUp, season.weeks().size());
    List<PlayedSeason.Week> bowls = weeks.stream().filter(w -> w.demandGrams() > 0).toList();
    double wanted = bowls.stream().mapToDouble(PlayedSeason.Week::demandGrams).sum();
    double eaten = bowls.stream().mapToDouble(PlayedSeason.Week::eatenGrams).sum();
    double wasted = weeks.stream().mapToDouble(PlayedSeason.Week::wastedGrams).sum();
    double seeds = weeks.stream().mapToInt(PlayedSeason.Week::seeds).sum();
    double touched = weeks.stream().mapToInt(PlayedSeason.Week::touched).sum();
    long low = bowls.stream().filter(w -> w.eatenGrams() < LOW * w.demandGrams()).count();
    long kinds = bowls.stream().filter(w -> w.kinds() >= kindsWanted).count();
    return new Score(
        eaten / wanted,
        low / (double) bowls.size(),
        kinds / (double) bowls.size(),
        eaten + wasted > 0 ? wasted / (eaten + wasted) : 0,
        seeds / weeks.size(),
        touched / weeks.size(),
        sallet.plan.Planner.points(wanted - eaten, wasted, seeds) / weeks.size());
  }
}
