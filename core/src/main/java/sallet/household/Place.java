package sallet.household;

import java.time.ZoneId;

/**
 * Where the room is.
 *
 * @param latitudeDeg north positive, -90 to 90
 * @param longitudeDeg east positive, -180 to 180
 * @param elevationM metres above the sea
 * @param timeZone IANA time zone
 * @param weather where the outdoor light comes from
 */
public record Place(
    double latitudeDeg,
    double longitudeDeg,
    double elevationM,
    ZoneId timeZone,
    WeatherSource weather) {}
