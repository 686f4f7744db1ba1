package sallet.household;

/**
 * The nutrient tank.
 *
 * @param volumeL full volume, L
 */
public record Reservoir(double volumeL) {}
