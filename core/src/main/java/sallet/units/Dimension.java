package sallet.units;

import java.util.List;
import java.util.Optional;

/**
 * What a quantity measures, and the units it may be written in; the first is the base unit.
 *
 * <p>Factors marked in NIST SP 811 (2008), appendix B, as exact are exact here. Those of the US
 * gallon, quart, pint and fluid ounce follow from 1 gal = 231 in³ (SP 811, appendix B.6, note to
 * gallon). 1 Btu is the International Table unit of 1055.05585262 J (SP 811, appendix B.6).
 */
public enum Dimension {
  LENGTH(
      "a length",
      Unit.of("m", 1, "metre", "metres", "meter", "meters"),
      Unit.of("cm", 0.01, "centimetre", "centimetres", "centimeter", "centimeters"),
      Unit.of("mm", 0.001, "millimetre", "millimetres", "millimeter", "millimeters"),
      Unit.of("in", 0.0254, "in.", "inch", "inches", "\""),
      Unit.of("ft", 0.3048, "ft.", "foot", "feet", "'"),
      Unit.of("yd", 0.9144, "yard", "yards")),
  AREA(
      "an area",
      Unit.of("cm²", 1, "sqcm"),
      Unit.of("m²", 10_000, "sqm"),
      Unit.of("mm²", 0.01, "sqmm"),
      Unit.of("in²", 2.54 * 2.54, "sqin", "sq.in."),
      Unit.of("ft²", 30.48 * 30.48, "sqft", "sq.ft.")),
  VOLUME(
      "a volume",
      Unit.of("L", 1, "l", "litre", "litres", "liter", "liters", "dm3"),
      Unit.of("mL", 0.001, "ml", "millilitre", "millilitres", "milliliter", "cm3", "cc"),
      Unit.of("m³", 1000),
      Unit.of("gal", 231 * 0.016387064, "gallon", "gallons", "USgal"),
      Unit.of("qt", 231 * 0.016387064 / 4, "quart", "quarts"),
      Unit.of("pt", 231 * 0.016387064 / 8, "pint", "pints"),
      Unit.of("fl oz", 231 * 0.016387064 / 128, "fl.oz.", "fluidounce", "fluidounces"),
      Unit.of("imp gal", 4.54609, "imperialgallon", "imperialgallons", "UKgal"),
      Unit.of("in³", 0.016387064, "cuin"),
      Unit.of("ft³", 28.316846592, "cuft")),
  TEMPERATURE(
      "a temperature",
      Unit.of("°C", 1, "C", "degC", "Celsius"),
      Unit.scale("°F", 5.0 / 9, 32, "F", "degF", "Fahrenheit"),
      Unit.scale("K", 1, 273.15)),
  LIGHT(
      "a light level (PPFD)",
      Unit.of("µmol/m²/s", 1, "umol/m2s", "umol/(m2s)", "umolm-2s-1", "umol/s/m2", "umol/sm2"),
      Unit.of("µmol/ft²/s", 1 / 0.09290304, "umol/ft2s", "umol/s/ft2")),
  SHARE("a share in percent", Unit.of("%", 1, "percent", "pct")),
  MIXING_RATIO("a gas content", Unit.of("ppm", 1, "umol/mol", "ppmv")),
  DURATION(
      "a time in hours",
      Unit.of("h", 1, "hr", "hrs", "hour", "hours"),
      Unit.of("min", 1.0 / 60, "minute", "minutes")),
  EFFICACY("a lamp efficacy", Unit.of("µmol/J", 1, "umolJ-1", "umol/s/W", "umol/Ws")),
  PHOTON_FLUX("a flow of photons (PPF)", Unit.of("µmol/s", 1, "umols-1")),
  LUMINOUS_FLUX("a flow of light", Unit.of("lm", 1, "lumen", "lumens")),
  ILLUMINANCE(
      "an illuminance",
      Unit.of("lx", 1, "lux"),
      Unit.of("klx", 1000, "klux"),
      Unit.of("fc", 1 / 0.09290304, "footcandle", "footcandles", "lm/ft2")),
  POWER("a power", Unit.of("W", 1, "watt", "watts"), Unit.of("kW", 1000)),
  IRRADIATION(
      "an irradiation of one day",
      Unit.of("MJ/m²", 1, "MJ/m2/d", "MJ/m2/day", "MJm-2", "MJm-2d-1"),
      Unit.of("kWh/m²", 3.6, "kWh/m2/d", "kWh/m2/day", "kWhm-2", "kWhm-2d-1"),
      Unit.of("Wh/m²", 0.0036, "Wh/m2/d", "Wh/m2/day", "Whm-2"),
      Unit.of(
          "Btu/ft²",
          1055.05585262e-6 / 0.09290304,
          "BTU/ft2",
          "Btu/ft2/d",
          "BTU/ft2/day",
          "Btu/ft2/day")),
  MASS(
      "a mass",
      Unit.of("g", 1, "gram", "grams"),
      Unit.of("kg", 1000, "kilogram", "kilograms"),
      Unit.of("oz", 28.349523125, "ounce", "ounces"),
      Unit.of("lb", 453.59237, "lbs", "pound", "pounds")),
  FLOW(
      "a flow of water",
      Unit.of("L/h", 1, "l/h", "L/hr", "l/hr", "Lh-1"),
      Unit.of("L/min", 60, "l/min", "lpm", "Lmin-1"),
      Unit.of("gal/h", 231 * 0.016387064, "gph", "gal/hr", "USgal/h")),
  CONDUCTIVITY(
      "a conductivity",
      Unit.of("mS/cm", 1, "mScm-1", "dS/m"),
      Unit.of("µS/cm", 0.001, "uScm-1"),
      Unit.of("S/m", 10, "Sm-1")),
  ANGLE("an angle", Unit.of("°", 1, "deg", "degree", "degrees"));

  private final String what;

  @SuppressWarnings("ImmutableEnumChecker") // an unmodifiable list of records
  private final List<Unit> units;

  Dimension(String what, Unit... units) {
    this.what = what;
    this.units = List.of(units);
  }

  /** The kind of quantity in words, with its article. */
  public String what() {
    return what;
  }

  /** The units it may be written in. */
  public List<Unit> units() {
    return units;
  }

  /** The unit the program reckons with. */
  public Unit base() {
    return units.get(0);
  }

  /** The unit of a spelling, whatever its micro sign, raised digits and spaces. */
  public Optional<Unit> unit(String spelling) {
    String plain = Spelling.plain(spelling);
    return units.stream().filter(unit -> unit.isWritten(plain)).findFirst();
  }
}
