package sallet.water.home;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import sallet.water.caution.Cleaning;
import sallet.water.caution.WaterCaution;
import sallet.water.flood.FloodSchedule;
import sallet.water.learn.UseFactor;
import sallet.water.reservoir.SolutionWarmth;
import sallet.water.reservoir.TankForecast;
import sallet.water.reservoir.TopUp;

/**
 * How to set the timer, and how long the water lasts.
 *
 * @param day first day told
 * @param planted pots in which something stands
 * @param pots each pot, in the household's order
 * @param floods the floods
 * @param tank level and salt if nobody tops up
 * @param untaught the same as it was thought before the household's readings; empty when they
 *     taught nothing
 * @param topUp when and what to pour in
 * @param before the factor before the household's readings
 * @param learned what they taught
 * @param solution oxygen and warmth
 * @param room water vapour in the room
 * @param cells the seed cells, when there are any
 * @param cleaning what to clean tray and reservoir with between crops
 * @param notes what to know, most urgent first
 * @param cautions safety texts that belong to it
 */
public record WaterSheet(
    LocalDate day,
    int planted,
    List<PotLine> pots,
    Floods floods,
    TankForecast tank,
    Optional<TankForecast> untaught,
    Refill topUp,
    UseFactor before,
    Learned learned,
    Solution solution,
    RoomMoisture room,
    Optional<Cells> cells,
    Cleaning cleaning,
    List<String> notes,
    List<WaterCaution> cautions) {

  /**
   * A pot.
   *
   * @param pot its name
   * @param crop what stands in it; empty when nothing does
   * @param medium what is in it
   * @param fullMl water after a flood, mL
   * @param allowedMl water that may go before the next, mL
   * @param useMlPerDay use on the first day, mL
   * @param floodsPerDay floods it alone would need a day, on its thirstiest day of the week
   * @param survivesHours time from a flood to wilting when the pump fails, h
   * @param lowestShare least water it comes to in the coming week, share of full
   * @param airShare air in the medium after a flood
   * @param weighed whether the grower's scales tell what it holds
   */
  public record PotLine(
      String pot,
      String crop,
      String medium,
      double fullMl,
      double allowedMl,
      double useMlPerDay,
      double floodsPerDay,
      double survivesHours,
      double lowestShare,
      double airShare,
      boolean weighed) {}

  /**
   * The floods.
   *
   * @param schedule when the pump runs
   * @param volumeL water a flood borrows, L
   * @param depthM depth, m
   * @param fillMinutes time to fill the tray
   * @param fillMeasured whether the grower measured it
   * @param drainMinutes time to drain
   * @param pumpKwhPerDay energy of the pump, kWh a day
   */
  public record Floods(
      FloodSchedule schedule,
      double volumeL,
      double depthM,
      double fillMinutes,
      boolean fillMeasured,
      double drainMinutes,
      double pumpKwhPerDay) {}

  /**
   * The next refill.
   *
   * @param by the last day on which it is in time nine times in ten
   * @param pour what to pour in then
   * @param beyond whether that day lies beyond the forecast
   */
  public record Refill(LocalDate by, TopUp pour, boolean beyond) {}

  /**
   * The solution.
   *
   * @param temperatureC its temperature, °C
   * @param measured whether the grower measured it
   * @param warmth what that means
   * @param oxygenMgL oxygen it can hold, mg/L
   * @param pumpWarmsK by how much the pump warms it, K
   * @param renewBy day to mix fresh solution by, when topped up as told, and why; empty when the
   *     feed cannot be reckoned
   */
  public record Solution(
      double temperatureC,
      boolean measured,
      SolutionWarmth warmth,
      double oxygenMgL,
      double pumpWarmsK,
      Optional<Renewal> renewBy) {}

  /**
   * When to mix fresh solution.
   *
   * @param by day
   * @param why reasons
   */
  public record Renewal(LocalDate by, List<String> why) {
    public Renewal {
      why = List.copyOf(why);
    }
  }

  /**
   * Water vapour in the room; good to warn.
   *
   * @param vapourGPerHour water the bench gives off in its wettest hour, g/h
   * @param humidityPoints by how many points of humidity that raises the room
   * @param mouldBelowC outdoor temperature below which the coldest panes are damp enough for mould;
   *     empty without windows
   * @param wetBelowC outdoor temperature below which they run wet
   * @param coolestLeafK how much cooler than the air the coolest leaf is, K, 0 or below
   * @param lampHeat what the lamps warm; empty without any
   */
  public record RoomMoisture(
      double vapourGPerHour,
      double humidityPoints,
      Optional<Double> mouldBelowC,
      Optional<Double> wetBelowC,
      double coolestLeafK,
      Optional<LampHeat> lampHeat) {}

  /**
   * Heat of the lamps: all their power ends in the room.
   *
   * @param watts mean of the day, W
   * @param latentW part of it that leaves as vapour of the bench, W
   * @param warmsLowK by how much the room is warmer for the rest when its walls let much through, K
   * @param warmsHighK the same when they let little through, K
   */
  public record LampHeat(double watts, double latentW, double warmsLowK, double warmsHighK) {}

  /**
   * Seed cells.
   *
   * @param heightCm height taken, cm
   * @param fullMl water of one cell after a flood, mL
   * @param refloodMl water at which to flood again, mL
   * @param airShare air in the medium once drained
   */
  public record Cells(double heightCm, double fullMl, double refloodMl, double airShare) {}

  public WaterSheet {
    pots = List.copyOf(pots);
    notes = List.copyOf(notes);
    cautions = List.copyOf(cautions);
  }
}
