package sallet.app.file;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import sallet.household.Bench;
import sallet.household.Lamp;
import sallet.household.LampColour;
import sallet.household.Photometry;
import sallet.light.IesFile;
import sallet.light.LdtFile;

/** Makes the lamps above the bench. */
final class LampBuilder {
  private final Values values;
  private final Faults faults;
  private final Attachments attachments;
  private final Bench bench;

  LampBuilder(Values values, Faults faults, Attachments attachments, Bench bench) {
    this.values = values;
    this.faults = faults;
    this.attachments = attachments;
    this.bench = bench;
  }

  /** Where each lamp of a file stands: "lamp", or "lamps[0]" and so on. */
  static List<String> paths(Values values) {
    return values.isList("lamps")
        ? IntStream.range(0, values.count("lamps")).mapToObj(i -> "lamps[" + i + "]").toList()
        : List.of("lamp");
  }

  /**
   * The lamps. A file that says nothing about lamps and windows is taken to have the default lamp:
   * without any light there would be nothing to plan.
   */
  List<Lamp> lamps() {
    if (values.written("lamps")) {
      if (values.written("lamp")) {
        faults.add("lamps", values.line("lamps"), "stands beside lamp; write one of the two");
      }
      return paths(values).stream().map(at -> lamp(at + ".")).toList();
    }
    boolean none = values.get("lamp", String.class).isPresent();
    boolean windows = values.written("room.windows") || values.written("room.roofWindows");
    boolean assumed = !values.written("lamp") && !windows;
    return none || (!values.written("lamp") && !assumed) ? List.of() : List.of(lamp("lamp."));
  }

  private Lamp lamp(String at) {
    Optional<Photometry> photometry =
        attachments.read(
            at + "photometry",
            lines -> {
              String name = values.word(at + "photometry").toLowerCase(Locale.ROOT);
              return name.endsWith(".ldt") ? LdtFile.read(lines) : IesFile.read(lines);
            });
    double power =
        photometry
            .filter(file -> file.watts() > 0 && !values.written(at + "power"))
            .map(Photometry::watts)
            .orElseGet(() -> values.base(at + "power"));
    LampColour colour =
        LampColour.valueOf(values.word(at + "colour").toUpperCase(Locale.ROOT).replace(' ', '_'));
    return new Lamp(
        orMiddle(at + "at.x", bench.xM() + bench.widthM() / 2),
        orMiddle(at + "at.y", bench.yM() + bench.depthM() / 2),
        size(at + "size.length", photometry.map(Photometry::lengthM)),
        size(at + "size.width", photometry.map(Photometry::widthM)),
        power,
        efficacy(at, power, colour),
        values.base(at + "heightAboveBench"),
        values.clock(at + "on"),
        values.base(at + "hours"),
        values.share(at + "dimming"),
        values.base(at + "tilt"),
        values.base(at + "turn"),
        colour,
        photometry);
  }

  private double orMiddle(String path, double middle) {
    return values.written(path) ? values.base(path) : middle;
  }

  private double size(String path, Optional<Double> ofFile) {
    return ofFile
        .filter(size -> size > 0 && !values.written(path))
        .orElseGet(() -> values.base(path));
  }

  /** Photons for each joule drawn, from whichever of three keys is written. */
  private double efficacy(String at, double powerW, LampColour colour) {
    List<String> written =
        List.of("efficacy", "light", "lumens").stream()
            .filter(key -> values.written(at + key))
            .toList();
    if (written.size() > 1) {
      faults.add(
          at + written.get(1),
          values.line(at + written.get(1)),
          "stands beside " + written.get(0) + "; write one of efficacy, light and lumens");
    }
    if (values.written(at + "light")) {
      return values.base(at + "light") / powerW;
    }
    if (values.written(at + "lumens")) {
      if (!colour.shownByLux()) {
        faults.add(
            at + "lumens",
            values.line(at + "lumens"),
            "lumens say nothing about red and blue light; write its light in µmol/s instead");
        return values.base(at + "efficacy");
      }
      return values.base(at + "lumens") / colour.luxPerUmol() / powerW;
    }
    return values.base(at + "efficacy");
  }
}
