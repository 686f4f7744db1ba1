package sallet.units;

/**
 * One number of a reckoning and where it comes from.
 *
 * @param name what it is
 * @param value the number
 * @param unit its unit, empty for shares
 * @param how formula or inputs
 * @param source where the method or the input comes from
 */
public record Step(String name, double value, String unit, String how, String source) {}
