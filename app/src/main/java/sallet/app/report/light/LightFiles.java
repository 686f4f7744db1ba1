package sallet.app.report.light;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import sallet.household.Pot;
import sallet.light.HourlyLight;
import sallet.light.LightNeed;
import sallet.units.Quantity;

/** The files of a year's light: page, JSON and table of days. */
public final class LightFiles {
  private LightFiles() {}

  /** Contents of {@code light.html}, {@code light.json} and {@code light.csv}. */
  public static Map<String, String> of(LightReport answer) {
    Map<String, String> files = new LinkedHashMap<>();
    files.put("light.html", LightPage.of(answer.year()));
    files.put("light.json", LightJson.of(answer));
    files.put("light.csv", csv(answer));
    return files;
  }

  /**
   * A row for each day and pot: daylight, lamp light and both, the crop and what it wants, mol/m².
   */
  static String csv(LightReport answer) {
    HourlyLight light = answer.year().light();
    List<Pot> pots = answer.year().household().bench().pots();
    StringBuilder out = new StringBuilder("date,pot,windowMol,lampMol,dliMol,crop,targetMol\n");
    for (int day = 0; day < light.days(); day++) {
      for (int i = 0; i < pots.size(); i++) {
        out.append(
            String.format(
                    Locale.ROOT,
                    "%s,%s,%.3f,%.3f,%.3f,%s%n",
                    light.from().plusDays(day),
                    pots.get(i).name(),
                    light.daylightDliMol(i, day),
                    light.lampDliMol(i, day),
                    light.dliMol(i, day),
                    answer
                        .year()
                        .target()
                        .need(i, light.from().plusDays(day))
                        .map(LightFiles::cells)
                        .orElse(","))
                .replace("\r", ""));
      }
    }
    return out.toString();
  }

  /** The crop in quotes, for its name may hold a comma, and what it is to get. */
  private static String cells(LightNeed need) {
    return "\"" + need.crop() + "\"," + Quantity.plain(need.targetMol());
  }
}
