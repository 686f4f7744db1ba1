package sallet.crop;

import java.util.List;
import java.util.Optional;

/**
 * What handbooks say about growing a crop: ranges to aim at and to compare with. The growth model
 * does not read them. Most are common practice; the crop's sources tell which were seen in print.
 * Fridge days speak of quality, not of safety: see the caution in docs/crops.md.
 *
 * @param group how it is used: leaf, head, herb, micro (a tray crop), fruit
 * @param minimumGerminationPercent least germination 7 CFR 201.31 lets a plain packet have
 * @param seedNote what its seed needs: light, cold, soaking
 * @param nurseryDays days from emergence to the bench
 * @param spacingCm distance between plants, cm
 * @param seedlingDliMol least and wanted daily light of a seedling, mol/m²/d
 * @param growDliMol least and greatest useful daily light of a plant, mol/m²/d
 * @param targetDliMol daily light to aim at, mol/m²/d
 * @param ecMsCm conductivity of the solution, mS/cm
 * @param ph pH of the solution
 * @param dayC day temperature to aim at, °C
 * @param nightC night temperature to aim at, °C
 * @param babyLeafDays days from sowing to baby leaf
 * @param firstCutDays days from sowing to the first cut
 * @param fullDays days from sowing to the full plant
 * @param cutIntervalDays days between cuts
 * @param cuts number of cuts
 * @param yieldG grams a plant yields, low to high
 * @param typicalYieldG grams a plant usually yields
 * @param tray what a tray crop yields by 100 cm²
 * @param boltingRisk how readily it runs to seed, in words
 * @param tipBurnRisk how readily leaf margins burn, in words
 * @param tipBurnFactor light a crop bears before margins burn, relative to the usual type
 * @param fridgeDays days it keeps at 4 °C
 * @param remarks entries that are not plain numbers, each with its column's name
 */
public record CropGuide(
    String group,
    Optional<Double> minimumGerminationPercent,
    String seedNote,
    Optional<Span> nurseryDays,
    Optional<Span> spacingCm,
    Span seedlingDliMol,
    Span growDliMol,
    double targetDliMol,
    Span ecMsCm,
    Span ph,
    double dayC,
    double nightC,
    Optional<Span> babyLeafDays,
    Optional<Span> firstCutDays,
    Optional<Span> fullDays,
    Optional<Span> cutIntervalDays,
    Optional<Span> cuts,
    Optional<Span> yieldG,
    Optional<Double> typicalYieldG,
    Optional<TrayYield> tray,
    String boltingRisk,
    String tipBurnRisk,
    Optional<Double> tipBurnFactor,
    Optional<Span> fridgeDays,
    List<String> remarks) {
  public CropGuide {
    remarks = List.copyOf(remarks);
  }
}
