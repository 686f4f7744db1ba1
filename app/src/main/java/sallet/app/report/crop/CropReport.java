package sallet.app.report.crop;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import sallet.crop.Crop;
import sallet.crop.HarvestRule;
import sallet.crop.TomatoPlan;
import sallet.crop.forecast.DaysToMass;
import sallet.crop.forecast.GrowthForecast;
import sallet.crop.forecast.RoomVerdict;
import sallet.crop.risk.Risk;

/**
 * The answer to what grows in a room.
 *
 * @param sown day of sowing
 * @param spot where it was reckoned
 * @param damp how leaves dry in the room's nights, the same for every crop
 * @param verdicts crops compared, those that grow best first
 * @param detail one crop in full, when one was asked for
 */
public record CropReport(
    LocalDate sown, Spot spot, Risk damp, List<RoomVerdict> verdicts, Optional<Detail> detail) {
  public CropReport {
    verdicts = List.copyOf(verdicts);
  }

  /** Fresh masses of the table by month and place, g. */
  public static final List<Double> MASSES_G = List.of(60.0, 120.0, 180.0);

  /**
   * A pot.
   *
   * @param pot its name
   * @param siteCm2 area it has to itself, cm²
   * @param dliMol mean daily light of the four weeks from the day of sowing, mol/m²/d
   * @param note how it was chosen
   */
  public record Spot(String pot, double siteCm2, double dliMol, String note) {}

  /**
   * What was asked of one crop.
   *
   * @param crop the crop
   * @param seedYears age of its seed, years; new when empty
   * @param pickShare share of the leaf area of each weekly pick
   */
  public record Asked(Crop crop, OptionalDouble seedYears, double pickShare) {
    /** A crop from new seed, picked as hard as it bears. */
    public static Asked of(Crop crop) {
      return new Asked(crop, OptionalDouble.empty(), HarvestRule.LARGEST_PICK);
    }
  }

  /**
   * One crop in full.
   *
   * @param crop the crop
   * @param seedYears age of its seed, years; new when empty
   * @param forecast what becomes of it; empty for trays and fruit
   * @param tomato the course of a fruiting crop
   * @param months days to {@link #MASSES_G} by place; empty for crops that cannot be planned
   */
  public record Detail(
      Crop crop,
      OptionalDouble seedYears,
      Optional<GrowthForecast> forecast,
      Optional<TomatoPlan> tomato,
      List<PotMonths> months) {
    public Detail {
      months = List.copyOf(months);
    }
  }

  /**
   * Days to the masses from sowings on the first of twelve months.
   *
   * @param spot where
   * @param rows one for each month
   */
  public record PotMonths(Spot spot, List<DaysToMass> rows) {
    public PotMonths {
      rows = List.copyOf(rows);
    }
  }
}
