package sallet.crop;

/**
 * Everything the daily step needs of one day that does not depend on the plant's size: worked out
 * once for a life and shared by all plants that live it.
 *
 * @param assimilateGPerCm2 carbohydrate per cm² of light-catching leaf, g
 * @param upkeepFactor maintenance relative to 25 °C
 * @param growthFactor largest growth of the day relative to structural mass, exp(mu f) - 1
 * @param slaCm2PerG specific leaf area of new leaf, cm²/g
 * @param dryMatterShare dry share of fresh mass
 * @param siteCm2 area the plant may fill, cm²
 * @param leavesAdded leaves that appear
 */
public record PlantDay(
    double assimilateGPerCm2,
    double upkeepFactor,
    double growthFactor,
    double slaCm2PerG,
    double dryMatterShare,
    double siteCm2,
    double leavesAdded) {}
