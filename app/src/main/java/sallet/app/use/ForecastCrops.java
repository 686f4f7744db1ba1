package sallet.app.use;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import sallet.app.report.crop.CropReport;
import sallet.app.report.crop.CropReport.Asked;
import sallet.app.report.crop.CropReport.Detail;
import sallet.app.report.crop.CropReport.PotMonths;
import sallet.app.report.crop.CropReport.Spot;
import sallet.crop.Catalogue;
import sallet.crop.Crop;
import sallet.crop.HarvestRule;
import sallet.crop.HarvestStyle;
import sallet.crop.PlaceDays;
import sallet.crop.RoomDays;
import sallet.crop.Stay;
import sallet.crop.TomatoPlan;
import sallet.crop.forecast.DaysToMass;
import sallet.crop.forecast.GrowingRoom;
import sallet.crop.forecast.RoomVerdict;
import sallet.crop.forecast.Skies;
import sallet.crop.forecast.Spread;
import sallet.crop.risk.CropRisks;
import sallet.crop.risk.Exposure;
import sallet.crop.risk.Risk;
import sallet.household.Household;
import sallet.household.PotSites;
import sallet.light.HourlyLight;
import sallet.light.RoomLight;

/** What grows well in this room, and what becomes of a crop sown on a day? */
public final class ForecastCrops {
  /** A year of sowings, and the longest emergence after the last. */
  private static final int DAYS = 366 + 70;

  private static final int OLDEST = 120;

  private static final int SKIES = 20;
  private static final int LIGHT_DAYS = 28;
  private static final int MONTHS = 12;
  private static final int DAMP_DAYS = 70;

  private final Household household;
  private final LocalDate sown;
  private final HourlyLight light;
  private final PlaceDays nursery;
  private final List<Double> sitesCm2;

  private ForecastCrops(Household household, Catalogue crops, LocalDate sown) {
    this.household = household;
    this.sown = sown;
    LocalDate from = sown.withDayOfMonth(1);
    int days = DAYS + oldest(crops);
    this.light = RoomLight.atPots(household, from, days);
    this.nursery =
        RoomDays.inNursery(
            RoomLight.inNursery(household, from, days),
            household.nursery(),
            household.room().air());
    this.sitesCm2 = PotSites.siteCm2(household.bench());
  }

  /**
   * The answer for a household.
   *
   * @param crops crops to compare
   * @param asked the crop to tell in full
   * @param pot index of the pot; the one of middle light when empty
   */
  public static CropReport of(
      Household household,
      Catalogue crops,
      LocalDate sown,
      Optional<Asked> asked,
      Optional<Integer> pot) {
    ForecastCrops forecast = new ForecastCrops(household, crops, sown);
    List<Integer> byLight = forecast.potsByLight();
    int middle = byLight.get(byLight.size() / 2);
    int chosen = pot.orElse(middle);
    Spot spot =
        forecast.spot(
            chosen, pot.isPresent() ? "as you asked" : "the pot of middle light on your bench");
    GrowingRoom room = forecast.room(chosen, SKIES);
    List<RoomVerdict> verdicts =
        asked
            .map(one -> List.of(verdict(one, sown, room)))
            .orElseGet(() -> RoomVerdict.ofAll(crops.all(), sown, room, Spread.PRIOR));
    return new CropReport(
        sown,
        spot,
        forecast.damp(crops.all().get(0), room),
        verdicts,
        asked.map(
            one ->
                forecast.detail(
                    one, verdicts.get(0), room, pot.isPresent() ? List.of(chosen) : byLight)));
  }

  private static RoomVerdict verdict(Asked asked, LocalDate sown, GrowingRoom room) {
    Crop crop =
        asked.seedYears().isPresent()
            ? asked.crop().fromSeedOf(asked.seedYears().getAsDouble())
            : asked.crop();
    return RoomVerdict.of(crop, sown, room, Spread.PRIOR, asked.pickShare());
  }

  private static int oldest(Catalogue crops) {
    return crops.all().stream()
        .flatMap(crop -> crop.harvest().stream())
        .mapToInt(HarvestRule::overAgeDays)
        .max()
        .orElse(OLDEST);
  }

  private List<Integer> potsByLight() {
    return IntStream.range(0, light.places())
        .boxed()
        .sorted(Comparator.comparingDouble(i -> -dliMol(i)))
        .toList();
  }

  private double dliMol(int pot) {
    int first = sown.getDayOfMonth() - 1;
    return IntStream.range(first, first + LIGHT_DAYS)
        .mapToDouble(day -> light.dliMol(pot, day))
        .average()
        .orElse(0);
  }

  private Spot spot(int pot, String note) {
    return new Spot(household.bench().pots().get(pot).name(), sitesCm2.get(pot), dliMol(pot), note);
  }

  private GrowingRoom room(int pot, int skies) {
    return new GrowingRoom(
        nursery,
        household.nursery().cellAreaCm2(),
        household.nursery().places() > 0 ? household.nursery().placeAreaCm2() : 0,
        RoomDays.atPlace(light, pot, household.room().air()),
        Skies.over(light, List.of(pot), household.room().air(), skies, Spread.PRIOR.seed()),
        sitesCm2.get(pot),
        household.room().air(),
        household.watering().airing().fan() ? Exposure.FAN_AIR_M_PER_S : Exposure.STILL_AIR_M_PER_S,
        household.place().latitudeDeg() < 0);
  }

  private Risk damp(Crop any, GrowingRoom room) {
    return CropRisks.slowDrying(
        new Exposure(
            any,
            sown,
            sown.plusDays(DAMP_DAYS),
            List.of(new Stay(sown, room.bench(), room.siteCm2())),
            room.air(),
            room.airMPerS(),
            room.southern()));
  }

  private Detail detail(Asked asked, RoomVerdict verdict, GrowingRoom room, List<Integer> byLight) {
    Crop crop = verdict.crop();
    return new Detail(
        crop,
        asked.seedYears(),
        verdict.forecast(),
        crop.style() == HarvestStyle.FRUIT
            ? Optional.of(
                TomatoPlan.of(
                    crop,
                    sown,
                    nursery.meanC(nursery.index(sown)),
                    room.bench(),
                    household.room().air()))
            : Optional.empty(),
        crop.plannable() ? months(crop, byLight) : List.of());
  }

  /** The brightest, the middle and the dimmest pot. */
  private List<PotMonths> months(Crop crop, List<Integer> byLight) {
    Map<Integer, String> pots = new LinkedHashMap<>();
    pots.put(byLight.get(0), byLight.size() == 1 ? "the pot asked for" : "brightest");
    pots.putIfAbsent(byLight.get(byLight.size() / 2), "middle");
    pots.putIfAbsent(byLight.get(byLight.size() - 1), "dimmest");
    List<PotMonths> months = new ArrayList<>();
    pots.forEach(
        (pot, note) -> {
          GrowingRoom room = room(pot, 1);
          List<DaysToMass> rows = new ArrayList<>();
          for (int m = 0; m < MONTHS; m++) {
            rows.add(
                DaysToMass.of(
                    crop,
                    sown.withDayOfMonth(1).plusMonths(m),
                    room,
                    Spread.PRIOR.vigour(),
                    CropReport.MASSES_G));
          }
          months.add(new PotMonths(spot(pot, note), rows));
        });
    return months;
  }
}
