package sallet.light;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import sallet.household.Household;
import sallet.household.Lamp;
import sallet.household.Window;
import sallet.units.Step;
import sallet.weather.PerezSky;
import sallet.weather.PlaceClimate;
import sallet.weather.Plane;
import sallet.weather.SkyMoment;
import sallet.weather.Sun;
import sallet.weather.SunPosition;

/**
 * How the light of one pot in one hour comes about, step by step.
 *
 * @param ppfdUmol mean of the hour, µmol/m²/s
 * @param steps in the order of reckoning
 */
public record LightExplanation(double ppfdUmol, List<Step> steps) {
  public LightExplanation {
    steps = List.copyOf(steps);
  }

  /**
   * For a pot and the hour that begins at {@code hour}, standard time.
   *
   * @param pot its place in the household's list
   */
  public static LightExplanation of(Household household, int pot, LocalDate day, int hour) {
    return new Teller(household, pot, day, hour).tell();
  }

  private static final class Teller {
    private final Household household;
    private final LocalDate day;
    private final int hour;
    private final Spot spot;
    private final List<SkyMoment> moments;
    private final LightFactors factors;
    private final List<Step> steps = new ArrayList<>();

    Teller(Household household, int pot, LocalDate day, int hour) {
      this.household = household;
      this.day = day;
      this.hour = hour;
      this.spot = Spot.ofPots(household.bench()).get(pot);
      this.factors = Calibration.of(household).factors();
      ZoneOffset clock = RoomLight.standardTime(household.place(), day);
      this.moments =
          household.room().hasDaylight()
              ? PlaceClimate.light(household.place(), clock).of(day).stream()
                  .filter(moment -> (int) moment.hour() == hour)
                  .toList()
              : List.of();
    }

    LightExplanation tell() {
      double daylight = moments.isEmpty() ? noDaylight() : daylight();
      double lamps = lamps();
      double all = daylight + lamps;
      step("light at the leaves", all, "µmol/m²/s", "daylight + lamps", "");
      return new LightExplanation(all, steps);
    }

    private void step(String name, double value, String unit, String how, String source) {
      steps.add(new Step(name, value, unit, how, source));
    }

    private void factor(String name, LightFactors.Factor factor) {
      step(
          name,
          factor.value(),
          "",
          String.format(Locale.ROOT, "within a factor of %.2f two times in three", factor.spread()),
          factor.readings() == 0
              ? "no readings yet"
              : "learned from " + factor.readings() + " of your readings");
    }

    private double noDaylight() {
      boolean windows = household.room().hasDaylight();
      step(
          "daylight",
          0,
          "µmol/m²/s",
          windows ? "the sun is down" : "the room has no window",
          "your file");
      return 0;
    }

    private double daylight() {
      ZoneOffset clock = RoomLight.standardTime(household.place(), day);
      SunPosition sun = Sun.at(day.atTime(hour, 30).toInstant(clock), household.place());
      String position = "middle of the hour, refraction included";
      step("sun above the horizon", sun.altitudeDeg(), "°", position, "Grena 2012, no. 3");
      step("sun's direction", sun.azimuthDeg(), "°", "clockwise from north", "Grena 2012, no. 3");
      outdoors();
      sky();
      RoomDaylight room = new RoomDaylight(household, List.of(spot));
      double sum = 0;
      double reflected = 0;
      for (int i = 0; i < room.apertures().size(); i++) {
        Aperture aperture = room.apertures().get(i);
        sum += aperture(i, aperture, sun);
        reflected += mean(m -> aperture.reflectedWm2(day, m, PerezSky.of(m)));
      }
      step(
          "thrown back by the room",
          reflected,
          "W/m²",
          "light through the windows x reflectance / (surface x (1 - mean reflectance))",
          "split flux, Hopkinson and others 1954; reflectances: your file or our default");
      step(
          "photons in a joule of daylight",
          RoomLight.UMOL_PER_J,
          "µmol/J",
          "400 to 700 nm, ±5 %",
          "Meek and others 1984 (from memory); Faust and Logan 2018: 2.018");
      factor("factor of the windows", factors.window());
      double umol = (sum + reflected) * RoomLight.UMOL_PER_J * factors.window().value();
      step("daylight", umol, "µmol/m²/s", "(windows + room) x photons x factor", "");
      return umol;
    }

    private interface Part {
      double of(SkyMoment moment);
    }

    /** Mean over the hour. */
    private double mean(Part part) {
      return moments.stream().mapToDouble(m -> part.of(m) * m.lastsHours()).sum();
    }

    private void outdoors() {
      String source = PlaceClimate.of(household.place()).notes().get(0);
      step("light outdoors on the flat", mean(SkyMoment::globalWm2), "W/m²", "sun + sky", source);
      step(
          "of it from the sky",
          mean(SkyMoment::diffuseWm2),
          "W/m²",
          "share of sky light by clearness, or as the weather file has it",
          "Erbs, Klein and Duffie 1982");
    }

    private void sky() {
      step(
          "even part of the sky",
          mean(m -> PerezSky.of(m).evenWm2()),
          "W/m²",
          "(1 - F1) x sky light",
          "Perez and others 1990");
      step(
          "bright sky around the sun",
          mean(m -> PerezSky.of(m).aroundSunWm2() * Math.max(0, m.sun().sinAltitude())),
          "W/m²",
          "F1 x sky light, on the flat",
          "Perez and others 1990");
    }

    /** What comes straight through one opening, W/m². */
    private double aperture(int i, Aperture aperture, SunPosition sun) {
      String name = i < household.room().windows().size() ? "window " + (i + 1) : "roof window";
      double sky = mean(m -> straight(m, aperture, false));
      double beam = mean(m -> straight(m, aperture, true));
      if (aperture instanceof WindowLight light) {
        Window window = household.room().windows().get(i);
        step(
            name + ": share of the sky",
            light.skyShare(0, day, false),
            "",
            "rays through the glass past lamps, sheets, reveal, frame, dirt, curtain and what stands"
                + " outside",
            "integral over the sky seen; frame, dirt and curtain: your file or our default");
        Plane plane = new Plane(90, window.wall().azimuthDeg() + household.room().turnDeg());
        double cosine = plane.cosIncidence(sun);
        step(
            name + ": glass towards the sun",
            cosine <= 0 ? 0 : Glazing.of(window).at(cosine),
            "",
            cosine <= 0
                ? "the sun is behind the wall"
                : String.format(
                    Locale.ROOT,
                    "%d panes, sun %.0f° from straight on",
                    window.panes(),
                    Math.toDegrees(Math.acos(Math.min(1, cosine)))),
            "Fresnel and Bouguer; panes: your file or our default");
      }
      step(name + ": sky", sky, "W/m²", "even part x share", "");
      step(
          name + ": patch of sun",
          beam,
          "W/m²",
          beam > 0
              ? "the sun reaches the pot for a part of the hour"
              : "the sun misses the pot or is hidden",
          "ray to the sun past lamps and sheets through both faces of the reveal");
      return sky + beam;
    }

    private double straight(SkyMoment moment, Aperture aperture, boolean sun) {
      double[] light = new double[1];
      if (sun) {
        aperture.addSun(day, moment, PerezSky.of(moment), light);
      } else {
        aperture.addSky(day, PerezSky.of(moment), light);
      }
      return light[0];
    }

    private double lamps() {
      List<Lamp> lamps = household.lamps();
      if (lamps.isEmpty()) {
        return 0;
      }
      RoomLamps lights = new RoomLamps(household.room(), household.bench(), lamps);
      double sum = 0;
      for (int i = 0; i < lamps.size(); i++) {
        double on = LampLight.on(lamps.get(i)).shareOfHour(hour);
        String name = lamps.size() == 1 ? "lamp" : "lamp " + (i + 1);
        double straight = lights.straightUmol(i, spot);
        double all = lights.ppfdUmol(i, spot);
        String spread =
            lamps.get(i).photometry().isPresent()
                ? "near field of its photometric file"
                : "near field of an even panel (Lambert), Howell C-11";
        step(
            name + ": photons it sends out",
            lamps.get(i).ppfUmolPerS(),
            "µmol/s",
            "power x efficacy x dimming",
            "your file or our default");
        step(name + ": straight", straight, "µmol/m²/s", "while it is on", spread);
        step(
            name + ": thrown back by the room",
            all - straight,
            "µmol/m²/s",
            "photons that miss the tray x reflectance / (surface x (1 - mean reflectance))",
            "split flux");
        step(name + ": share of the hour it is on", on, "", "timer", "your file or our default");
        sum += on * all;
      }
      factor("factor of the lamps", factors.lamp());
      return sum * factors.lamp().value();
    }
  }
}
