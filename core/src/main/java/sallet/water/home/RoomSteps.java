package sallet.water.home;

import java.util.ArrayList;
import java.util.List;
import sallet.air.ColdSurface;
import sallet.air.MoistAir;
import sallet.air.RoomHeat;
import sallet.household.Room;
import sallet.units.Step;
import sallet.water.transpiration.HourlyUse;

/** How the warnings of solution and room come about. */
final class RoomSteps {
  private static final String FILE = FloodSteps.FILE;
  private static final int NOON = 12;

  private final HomeBench bench;
  private final WaterSheet sheet;
  private final HourlyUse use;
  private final MoistAir noon;

  RoomSteps(HomeBench bench, BenchDays days, HourlyUse use, WaterSheet sheet) {
    this.bench = bench;
    this.sheet = sheet;
    this.use = use;
    this.noon = days.air().at(0, NOON);
  }

  List<Step> solution() {
    WaterSheet.Solution s = sheet.solution();
    return s.measured()
        ? List.of(new Step("temperature", s.temperatureC(), "°C", "as read", "your reading"))
        : List.of(
            new Step("room, mean of the day", s.temperatureC() - s.pumpWarmsK(), "°C", "", FILE),
            new Step(
                "pump warms it by",
                s.pumpWarmsK(),
                "K",
                "power x share of the day / (8 W/m²/K x tub)",
                "judgement"),
            new Step("temperature", s.temperatureC(), "°C", "sum", ""));
  }

  List<Step> oxygen() {
    return List.of(
        new Step("temperature", sheet.solution().temperatureC(), "°C", "see solution", ""),
        new Step(
            "oxygen it can hold",
            sheet.solution().oxygenMgL(),
            "mg/L",
            "polynomial in ln((298.15 - T)/(273.15 + T)), air pressure of place.elevation",
            "Benson and Krause 1984 as fitted by Garcia and Gordon 1992"));
  }

  List<Step> points() {
    Room room = bench.household().room();
    double grams = sheet.learned().factor().median() * 1000 * use.dayL(0) / 24;
    double volume = room.widthM() * room.depthM() * room.heightM();
    double changes = bench.household().watering().airing().changesPerHour();
    double most = MoistAir.of(noon.temperatureC(), 100).waterGM3();
    return List.of(
        new Step("water given off", grams, "g/h", "mean of the day", "see reservoir.days[0].useL"),
        new Step("room", volume, "m³", "room.size", FILE),
        new Step("air changes", changes, "1/h", "room.airChanges", FILE),
        new Step("more water in the air", grams / changes / volume, "g/m³", "G / (n V)", "balance"),
        new Step("saturated air", most, "g/m³", "at noon's temperature", "FAO-56 equation 11"),
        new Step("points of humidity", sheet.room().humidityPoints(), "%", "share of that", ""));
  }

  private List<Step> pane(double percent) {
    ColdSurface pane = RoomWarnings.coldestPane(bench.household().room()).orElseThrow();
    double told = pane.outdoorBelowC(noon, percent);
    List<Step> steps = new ArrayList<>();
    steps.add(new Step("air at noon", noon.temperatureC(), "°C", "room.air, readings", FILE));
    steps.add(new Step("its humidity", noon.humidityPercent(), "%", "likewise", FILE));
    steps.add(
        new Step(
            "U of the panes",
            pane.transmittanceWm2K(),
            "W/m²/K",
            "by the number of panes",
            "middles of usual ranges"));
    steps.add(
        new Step(
            "pane's place between out and in",
            pane.factor(),
            "",
            "1 - 0.13 U",
            "usual inner resistance of the building trade"));
    steps.add(
        new Step(
            "pane at that point",
            pane.temperatureC(noon.temperatureC(), told),
            "°C",
            "where the room's vapour makes %.0f %%".formatted(percent),
            percent < 100 ? "ISO 13788, from memory" : "dew point"));
    steps.add(
        new Step(
            "outdoors", told, "°C", "indoors - (indoors - pane) / (1 - place); a warning", ""));
    return steps;
  }

  private List<Step> lamps(double wallWm2K) {
    WaterSheet.LampHeat heat = sheet.room().lampHeat().orElseThrow();
    RoomHeat room = RoomWarnings.room(bench.household(), wallWm2K);
    return List.of(
        new Step("lamps", heat.watts(), "W", "power x dimming x hours / 24, summed", FILE),
        new Step(
            "leaves as vapour",
            heat.latentW(),
            "W",
            "water given off x heat of evaporation, at most all",
            "FAO-56, annex 3, from memory"),
        new Step(
            "lost through panes and walls",
            room.lossWK(),
            "W/K",
            "U of the panes x area + %.1f W/m²/K x all other surfaces".formatted(wallWm2K),
            "panes: middles of usual ranges; walls: judgement"),
        new Step(
            "with the air that is changed",
            room.conductanceWK() - room.lossWK(),
            "W/K",
            "0.335 x air changes x volume",
            "heat that air carries"),
        new Step(
            "warmer by",
            room.settledC(0, heat.watts() - heat.latentW()),
            "K",
            "(lamps - vapour) / (panes and walls + air), once settled",
            "steady balance of heat"));
  }

  List<Step> lampsLow() {
    return lamps(RoomWarnings.LEAKY_WALL_WM2K);
  }

  List<Step> lampsHigh() {
    return lamps(RoomWarnings.TIGHT_WALL_WM2K);
  }

  List<Step> wet() {
    return pane(100);
  }

  List<Step> mould() {
    return pane(ColdSurface.MOULD_PERCENT);
  }
}
