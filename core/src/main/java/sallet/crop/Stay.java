package sallet.crop;

import java.time.LocalDate;

/**
 * A plant's stay at one place, from a day on until the next stay begins.
 *
 * @param from first day whose light the plant gets there
 * @param place what the place offers
 * @param siteCm2 area the plant may fill there, cm²
 */
public record Stay(LocalDate from, PlaceDays place, double siteCm2) {}
