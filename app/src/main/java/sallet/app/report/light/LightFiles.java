package sallet.app.report.light;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import sallet.household.Pot;
import sallet.light.HourlyLight;

/** The files of a year's light: page, JSON and hourly table. */
public final class LightFiles {
  private LightFiles() {}

  /**
   * Writes {@code light.html}, {@code light.json} and {@code light.csv}, in UTF-8. Files of these
   * names are replaced.
   *
   * @param dir folder, made when it is missing
   */
  public static void write(Path dir, LightReport answer) throws IOException {
    Files.createDirectories(dir);
    Files.writeString(dir.resolve("light.html"), LightPage.of(answer.year()));
    Files.writeString(dir.resolve("light.json"), LightJson.of(answer));
    Files.writeString(dir.resolve("light.csv"), csv(answer));
  }

  /** A row for each day and pot: daylight, lamp light and both, mol/m². */
  static String csv(LightReport answer) {
    HourlyLight light = answer.year().light();
    List<Pot> pots = answer.year().household().bench().pots();
    StringBuilder out = new StringBuilder("date,pot,windowMol,lampMol,dliMol\n");
    for (int day = 0; day < light.days(); day++) {
      for (int i = 0; i < pots.size(); i++) {
        out.append(
            String.format(
                    Locale.ROOT,
                    "%s,%s,%.3f,%.3f,%.3f%n",
                    light.from().plusDays(day),
                    pots.get(i).name(),
                    light.daylightDliMol(i, day),
                    light.lampDliMol(i, day),
                    light.dliMol(i, day))
                .replace("\r", ""));
      }
    }
    return out.toString();
  }
}
