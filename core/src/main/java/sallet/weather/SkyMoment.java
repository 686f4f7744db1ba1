package sallet.weather;

/**
 * The light outdoors at one moment, standing for a while around it.
 *
 * @param hour hours from midnight, standard time
 * @param lastsHours how long it stands for, h
 * @param sun where the sun stands
 * @param globalWm2 on the flat, W/m²
 * @param diffuseWm2 on the flat from the sky, W/m²
 * @param beamWm2 straight from the sun on a face turned to it, W/m²
 * @param outsideWm2 the same outside the air, W/m²
 */
public record SkyMoment(
    double hour,
    double lastsHours,
    SunPosition sun,
    double globalWm2,
    double diffuseWm2,
    double beamWm2,
    double outsideWm2) {}
