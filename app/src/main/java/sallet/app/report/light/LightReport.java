package sallet.app.report.light;

import java.time.LocalDate;
import java.util.Optional;
import sallet.light.HourlyLight;
import sallet.light.LightExplanation;
import sallet.light.LightYear;

/**
 * All that is told of a household's light.
 *
 * @param year the twelve months from the day's month
 * @param date the day
 * @param day hourly light of the day
 * @param explained how the light asked for comes about
 */
public record LightReport(
    LightYear year, LocalDate date, HourlyLight day, Optional<LightExplanation> explained) {}
