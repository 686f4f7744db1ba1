package sallet.learn;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import sallet.crop.Crop;
import sallet.crop.HarvestRule;
import sallet.crop.LifeDays;
import sallet.crop.PlantDay;
import sallet.crop.PlantModel;
import sallet.crop.PlantParameters;
import sallet.crop.PlantState;
import sallet.crop.Stay;
import sallet.crop.forecast.Spread;
import sallet.journal.Event;
import sallet.journal.Journal;
import sallet.journal.Where;

/**
 * A household whose plants grow with factors nobody knows, and the journal its grower keeps: a
 * batch of two plants of each of three crops, counted, moved, some picked by the scale, some
 * weighed. The truth is played here on the bare growth model, day by day, and strays about it.
 */
final class HiddenTruth {
  private static final List<String> CROPS =
      List.of("loose-leaf lettuce, green", "mizuna", "Swiss chard");
  private static final int LAST_DAY = 64;
  private static final double STRAY = 0.09;
  private static final double SCALE = 0.04;
  private static final double STRAY_DAYS = 14;

  private final SplittableRandom dice;
  private final double logRegrowth;
  private final GrowingPlaces places = SteadyPlaces.places();
  private final Rows rows = new Rows();
  private final Map<String, Double> logFactor = new LinkedHashMap<>();
  private final Map<String, Double> standing = new HashMap<>();

  HiddenTruth(long seed, double logRegrowth, List<Crop> crops) {
    this.dice = new SplittableRandom(seed);
    this.logRegrowth = logRegrowth;
    double room = GrowthLearning.ROOM_SPREAD * dice.nextGaussian();
    for (int k = 0; k < crops.size(); k++) {
      double crop = room + GrowthLearning.CROP_SPREAD * dice.nextGaussian();
      logFactor.put(crops.get(k).name(), Math.log(Spread.PRIOR.vigour()) + crop);
      grow(crops.get(k), SteadyPlaces.POTS.subList(2 * k, 2 * k + 2));
    }
  }

  static List<String> crops() {
    return CROPS;
  }

  /** Factor of a crop on this bench. */
  double factor(String crop) {
    return Math.exp(logFactor.getOrDefault(crop, Double.NaN));
  }

  /** Fresh grams that stand in a pot on the last day. */
  double freshG(String pot) {
    return standing.getOrDefault(pot, Double.NaN);
  }

  Journal journal() {
    return rows.journal();
  }

  static LocalDate today() {
    return Rows.date(LAST_DAY);
  }

  private void grow(Crop crop, List<String> pots) {
    String batch = crop.name() + "-1";
    int sown = dice.nextInt(6);
    int up = sown + 5;
    int nursery = up + 3;
    int bench = up + 15 + dice.nextInt(5);
    rows.add(Rows.date(sown), Event.SOW, batch, 4, new Where.Cells(4), -1, -1)
        .day(up, Event.EMERGE, batch, 4, "")
        .day(nursery, Event.MOVE, batch, 2, "nursery")
        .day(bench, Event.MOVE, batch, 2, String.join("+", pots));
    double batchLog =
        logFactor.getOrDefault(crop.name(), 0.0)
            + GrowthLearning.BATCH_SPREAD * dice.nextGaussian();
    for (String pot : pots) {
      List<Stay> stays =
          List.of(
              new Stay(Rows.date(sown), places.nursery(), places.cellCm2()),
              new Stay(Rows.date(nursery), places.nursery(), places.placeCm2()),
              new Stay(Rows.date(bench), places.pot(pot).days(), places.pot(pot).siteCm2()));
      live(
          crop,
          batch,
          pot,
          up,
          stays,
          batchLog + GrowthLearning.PLANT_SPREAD * dice.nextGaussian());
    }
  }

  private void live(
      Crop crop, String batch, String pot, int up, List<Stay> stays, double logVigour) {
    PlantParameters p = crop.growth().orElseThrow();
    HarvestRule rule = crop.harvest().orElseThrow();
    PlantDay[] slow = days(p, rule, up, stays, logVigour, 0);
    PlantDay[] once = days(p, rule, up, stays, logVigour, logRegrowth);
    PlantDay[] twice = days(p, rule, up, stays, logVigour, 2 * logRegrowth);
    List<PlantDay[]> byPicks = new ArrayList<>(List.of(slow, once, twice));
    PlantState plant = PlantState.atEmergence(p);
    double stray = STRAY * dice.nextGaussian();
    double keep = Math.exp(-1 / STRAY_DAYS);
    boolean weighed = dice.nextInt(3) > 0;
    boolean picked = rule.leafPick() && dice.nextInt(3) > 0;
    int picks = 0;
    for (int day = up; day <= LAST_DAY; day++) {
      PlantDay today = byPicks.get(picks)[day - up];
      plant = PlantModel.step(plant, p, today);
      stray = keep * stray + Math.sqrt(1 - keep * keep) * STRAY * dice.nextGaussian();
      double freshG = plant.freshG(today.dryMatterShare()) * rule.plantsPerPot() * Math.exp(stray);
      if (weighed && (day == 44 || day == 58)) {
        rows.grams(day, Event.WEIGH, batch, pot, freshG * Math.exp(SCALE * dice.nextGaussian()));
      }
      if (picked && (day == 42 || day == 49) && freshG > HarvestRule.PICK_FROM_G) {
        double share = 0.2 + 0.2 * dice.nextDouble();
        rows.grams(day, Event.PICK, batch, pot, share * freshG * rule.edibleShare());
        plant = plant.picked(share);
        picks++;
      }
      standing.put(pot, freshG);
    }
  }

  private static PlantDay[] days(
      PlantParameters p, HarvestRule rule, int up, List<Stay> stays, double log, double more) {
    return LifeDays.of(
        p, rule, Math.exp(log + more), Rows.date(up), stays, Rows.date(LAST_DAY + 1));
  }
}
