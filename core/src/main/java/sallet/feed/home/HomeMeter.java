package sallet.feed.home;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import sallet.feed.FeedFault;
import sallet.feed.meter.CellCheck;
import sallet.feed.meter.MeterFactor;
import sallet.feed.meter.MeterReading;
import sallet.feed.meter.PpmScale;
import sallet.feed.meter.TemperatureCompensation;
import sallet.feed.reservoir.SeenDrink;
import sallet.household.FeedShelf;

/**
 * The household's own meter: its scale, its reference temperature and the factor its readings of
 * fresh solutions teach.
 */
public final class HomeMeter {
  private static final Pattern STANDARD = Pattern.compile("(0\\.01|0\\.1|1)\\s*mol/(kg|L)");

  /** A fresh solution is read within this of what was computed, or something else is wrong. */
  private static final double MOST_OFF = 1.5;

  private final FeedShelf.Meter meter;
  private final Optional<PpmScale> scale;
  private final MeterFactor factor;

  /**
   * Reads what is written about the meter.
   *
   * @throws FeedFault when a reading cannot be read
   */
  public HomeMeter(FeedShelf.Meter meter) {
    this.meter = meter;
    this.scale = meter.ppmFactor().map(PpmScale::ofFactor);
    List<Double> ratios = new ArrayList<>();
    for (FeedShelf.Fresh fresh : meter.fresh()) {
      ratios.add(ratio(fresh));
    }
    this.factor = MeterFactor.learn(ratios);
  }

  private double ratio(FeedShelf.Fresh fresh) {
    double ratio = only(raw(fresh.computed(), 25), fresh.computed()) / sureRaw(fresh.read());
    if (!(ratio < MOST_OFF && ratio > 1 / MOST_OFF)) {
      throw new FeedFault(
          "\"%s\" where %s was computed is off by more than half: check scale and unit, or leave this reading out"
              .formatted(fresh.read(), fresh.computed()));
    }
    return ratio;
  }

  /** Multiply a reading by this. */
  MeterFactor factor() {
    return factor;
  }

  int freshReadings() {
    return meter.fresh().size();
  }

  /** What a reading can mean, mS/cm at 25 °C, the meter's own error taken out. */
  List<MeterReading.Meaning> meanings(String text) {
    return raw(text, meter.referenceC()).stream()
        .map(m -> new MeterReading.Meaning(m.scale(), factor.factor() * m.msCm()))
        .toList();
  }

  /** The one thing a reading means, mS/cm at 25 °C. */
  double sure(String text) {
    return factor.factor() * sureRaw(text);
  }

  /** What was seen of a running reservoir, read by this meter. */
  List<SeenDrink> seen(FeedShelf.Running running) {
    return running.seen().stream()
        .map(s -> new SeenDrink(s.pouredL(), s.strength(), sure(s.read())))
        .toList();
  }

  private double sureRaw(String text) {
    return only(raw(text, meter.referenceC()), text);
  }

  /** Of several ppm scales only the meter's own, when it is known. */
  private List<MeterReading.Meaning> raw(String text, double referenceC) {
    List<MeterReading.Meaning> all = MeterReading.parse(text).at25(referenceC);
    return all.size() > 1 && scale.isPresent()
        ? all.stream().filter(m -> m.scale().endsWith(scale.get().label())).toList()
        : all;
  }

  private static double only(List<MeterReading.Meaning> meanings, String text) {
    if (meanings.size() > 1) {
      throw new FeedFault(
          "\"%s\" could mean several conductivities; write it in mS/cm, or the meter's scale as feed.meter.ppmFactor (ask with --reading which it can be)"
              .formatted(text));
    }
    return meanings.get(0).msCm();
  }

  /** What this meter shows for a conductivity at 25 °C, mS/cm. */
  double shows(double msCm25) {
    double atReference =
        msCm25 * (1 + TemperatureCompensation.USUAL_SLOPE * (meter.referenceC() - 25));
    return atReference / factor.factor();
  }

  /** The check with a standard, when one was read. */
  public Optional<CellCheck> check() {
    return meter
        .standard()
        .map(
            s -> {
              Matcher m = STANDARD.matcher(s.strength().strip());
              if (!m.matches()) {
                throw new FeedFault(
                    "\"%s\" is no standard Sallet knows; write 0.01 mol/kg, 0.1 mol/kg or 1 mol/kg of potassium chloride"
                        .formatted(s.strength()));
              }
              double read = only(MeterReading.parse(s.read()).meanings(), s.read());
              return CellCheck.of(Double.parseDouble(m.group(1)), s.temperatureC(), read);
            });
  }

  /** What to know about the meter. */
  List<String> notes() {
    List<String> notes = new ArrayList<>();
    if (!meter.fresh().isEmpty()) {
      notes.add(
          "Your meter: readings are multiplied by %.3f, learned from %d fresh solutions (known within %.1f %%)"
              .formatted(factor.factor(), meter.fresh().size(), 100 * factor.spread()));
    }
    check()
        .ifPresent(
            c ->
                notes.add(
                    "The standard has %.3f mS/cm at its temperature. %s"
                        .formatted(c.expectedMsCm(), c.advice())));
    return notes;
  }
}
