package sallet.water.absence;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import sallet.air.MoistAir;
import sallet.air.RoomVapour;
import sallet.air.Vapour;
import sallet.crop.HarvestRule;
import sallet.household.AirClimate;
import sallet.household.Household;
import sallet.household.Lamp;
import sallet.household.Room;
import sallet.household.Watering;
import sallet.water.transpiration.StandingPlant;

/** The steps that change how much water is used, as far as they make sense in a household. */
final class Levers {
  /** By how much heating is turned down, K, and below what it never is, °C. Judgement. */
  private static final double COOLER_K = 3;

  private static final double COLDEST_C = 10;

  /** Shortest lamp day, h: below it lettuce stretches and stops. Judgement. */
  private static final double SHORT_DAY_H = 10;

  /** Share of air changes left behind a closed door. Judgement. */
  private static final double DOOR = 0.5;

  /** Damper than this is not sought: mould. Judgement. */
  private static final double DAMPEST_PERCENT = 75;

  private final Scene scene;
  private final LocalDate from;
  private final double gPerHour;
  private final List<Lever> levers = new ArrayList<>();

  private Levers(Scene scene, LocalDate from, double gPerHour) {
    this.scene = scene;
    this.from = from;
    this.gPerHour = gPerHour;
  }

  /**
   * The levers of a scene.
   *
   * @param atRisk pots that do not outlive a missed flood
   * @param gPerHour water the bench gives off, mean, g/h
   */
  static List<Lever> of(Scene scene, LocalDate from, List<String> atRisk, double gPerHour) {
    Levers all = new Levers(scene, from, gPerHour);
    all.fan();
    all.cover();
    all.harvest();
    all.door();
    all.cool();
    all.lamp();
    all.lift(atRisk);
    return all.levers;
  }

  private void fan() {
    Watering w = scene.household().watering();
    if (w.airing().fan()) {
      add(Step.Kind.FAN, "Switch the fan off.", 1, s -> s.with(still(s.household())));
    }
  }

  private void cover() {
    Watering w = scene.household().watering();
    if (!w.tank().covered()) {
      add(Step.Kind.COVER, "Put a lid on the reservoir.", 1, s -> s.with(lidded(s.household())));
    }
  }

  private void harvest() {
    double grams = 0;
    List<StandingPlant> left = new ArrayList<>();
    for (StandingPlant plant : scene.plants()) {
      Optional<StandingPlant> cut = cut(plant);
      left.add(cut.orElse(plant));
      if (cut.isPresent()) {
        HarvestRule rule = plant.crop().harvest().orElseThrow();
        double share = rule.leafPick() ? HarvestRule.LARGEST_PICK : 1;
        grams += share * rule.edibleShare() * plant.freshG(from.minusDays(1));
      }
    }
    if (grams > 0) {
      add(
          Step.Kind.HARVEST,
          String.format(
              Locale.ROOT,
              "Pick what may be picked and lift what is ready %s: about %.0f g of leaf.",
              leavesToday() ? "before you leave" : "the day before you leave",
              grams),
          1,
          s -> s.withPlants(left));
    }
  }

  /** A plant picked or lifted on the last day at home; empty when it is too small. */
  private Optional<StandingPlant> cut(StandingPlant plant) {
    LocalDate eve = from.minusDays(1);
    if (!plant.stands(eve) || !plant.stands(from)) {
      return Optional.empty();
    }
    HarvestRule rule = plant.crop().harvest().orElseThrow();
    double fresh = plant.freshG(eve);
    boolean pickedNow = plant.picks().stream().anyMatch(p -> p.day().equals(eve));
    if (rule.leafPick() && fresh >= HarvestRule.PICK_FROM_G && !pickedNow) {
      return Optional.of(plant.picked(eve, HarvestRule.LARGEST_PICK));
    }
    return !rule.leafPick() && fresh >= rule.liftFromG()
        ? Optional.of(plant.standingUntil(from))
        : Optional.empty();
  }

  /** With no day in between there is no evening before. */
  private boolean leavesToday() {
    return scene.usedL().isEmpty();
  }

  /** Not on the last morning: the air takes a night to show whether it gets damper. */
  private void door() {
    if (leavesToday()) {
      return;
    }
    Household h = scene.household();
    Room room = h.room();
    int month = from.getMonthValue() - 1;
    double humid = humidityBehindDoor(h, month);
    double now = room.air().humidityPercent().get(month);
    if (humid > now + 1) {
      add(
          Step.Kind.DOOR,
          String.format(
              Locale.ROOT,
              "Close the door to the room the day before and look at a hygrometer: humidity should rise from %.0f to about %.0f %%, or this step does not count.",
              now,
              humid),
          2,
          s -> s.with(aired(s.household(), DOOR, humid - now)));
    }
  }

  private double humidityBehindDoor(Household h, int month) {
    Room room = h.room();
    MoistAir air =
        MoistAir.of(room.air().dayC().get(month), room.air().humidityPercent().get(month));
    double changes = h.watering().airing().changesPerHour();
    RoomVapour vapour = new RoomVapour(room.widthM() * room.depthM() * room.heightM(), changes);
    double g = gPerHour;
    MoistAir then = air;
    for (int i = 0; i < 20; i++) {
      then = vapour.after(air, gPerHour, DOOR * changes, g);
      g = (g + gPerHour * then.deficitKpa() / Math.max(0.01, air.deficitKpa())) / 2;
    }
    return Math.min(DAMPEST_PERCENT, then.humidityPercent());
  }

  private void cool() {
    AirClimate air = scene.household().room().air();
    int month = from.getMonthValue() - 1;
    if (air.nightC().get(month) - COOLER_K < COLDEST_C) {
      return;
    }
    add(
        Step.Kind.COOL,
        String.format(
            Locale.ROOT, "Turn the heating down by %.0f °C; growth slows as well.", COOLER_K),
        2,
        s -> s.with(cooler(s.household())));
  }

  private void lamp() {
    List<Lamp> lamps = scene.household().lamps();
    if (lamps.stream().anyMatch(l -> l.hours() > SHORT_DAY_H)) {
      add(
          Step.Kind.LAMP,
          String.format(
              Locale.ROOT,
              "Shorten the lamp's day to %.0f h; it saves little water and costs growth.",
              SHORT_DAY_H),
          4,
          s ->
              s.with(
                  s.household()
                      .withLamps(
                          lamps.stream()
                              .map(l -> l.litFor(Math.min(SHORT_DAY_H, l.hours())))
                              .toList())));
    }
  }

  private void lift(List<String> atRisk) {
    if (atRisk.isEmpty()) {
      return;
    }
    List<String> names =
        scene.household().bench().pots().stream().map(sallet.household.Pot::name).toList();
    add(
        Step.Kind.LIFT,
        "Eat or give away what stands in "
            + String.join(", ", atRisk)
            + ", or stand those pots apart in a deep saucer: they wilt when one flood is missed.",
        3,
        s ->
            s.withPlants(
                s.plants().stream()
                    .map(p -> atRisk.contains(names.get(p.pot())) ? p.standingUntil(from) : p)
                    .toList()));
  }

  private void add(
      Step.Kind kind, String text, int trouble, java.util.function.UnaryOperator<Scene> change) {
    levers.add(new Lever(kind, text, trouble, change));
  }

  private static Household still(Household h) {
    Watering w = h.watering();
    return h.withWatering(w.withAiring(new Watering.Airing(false, w.airing().changesPerHour())));
  }

  private static Household lidded(Household h) {
    Watering w = h.watering();
    return h.withWatering(w.withTank(w.tank().withCover(true)));
  }

  private static Household aired(Household h, double share, double points) {
    AirClimate air = h.room().air();
    List<Double> damper =
        air.humidityPercent().stream()
            .map(rh -> Math.max(rh, Math.min(DAMPEST_PERCENT, rh + points)))
            .toList();
    return h.withRoom(
            h.room().withAir(new AirClimate(air.dayC(), air.nightC(), damper, air.co2Ppm())))
        .withWatering(
            h.watering()
                .withAiring(
                    new Watering.Airing(
                        h.watering().airing().fan(),
                        share * h.watering().airing().changesPerHour())));
  }

  private static Household cooler(Household h) {
    AirClimate air = h.room().air();
    List<Double> damper =
        IntStream.range(0, 12)
            .mapToObj(
                m ->
                    Vapour.humidityAfter(
                        air.humidityPercent().get(m),
                        air.dayC().get(m),
                        air.dayC().get(m) - COOLER_K))
            .toList();
    return h.withRoom(
        h.room()
            .withAir(
                new AirClimate(
                    air.dayC().stream().map(c -> c - COOLER_K).toList(),
                    air.nightC().stream().map(c -> c - COOLER_K).toList(),
                    damper,
                    air.co2Ppm())));
  }
}
