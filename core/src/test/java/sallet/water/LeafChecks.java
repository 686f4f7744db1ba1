package sallet.water;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import sallet.air.MoistAir;
import sallet.cases.CaseFolder;
import sallet.cases.CaseRow;
import sallet.cases.Outcome;
import sallet.cases.RowCheck;
import sallet.water.transpiration.Canopy;
import sallet.water.transpiration.LeafBalance;
import sallet.water.transpiration.PenmanMonteith;
import sallet.water.transpiration.Stomata;
import sallet.water.transpiration.TwoTerm;

/** The heat balance of leaves against its paper, against FAO-56 and against measured water use. */
final class LeafChecks {
  private static final Pattern PAR = Pattern.compile("PAR ([\\d.,]+) W/m2");
  private static final Pattern PPFD = Pattern.compile("PPFD ([\\d.,]+)");
  private static final Pattern HOURS = Pattern.compile("(\\d+) h light");
  private static final Pattern MEASURED =
      Pattern.compile("PPFD ([\\d-]+)[^,]*, ([\\d./]+) C, RH ([\\d/]+)");

  private LeafChecks() {}

  static Map<String, RowCheck> byFile() {
    return Map.of(
        "water/canopy_energy_balance.csv", LeafChecks::canopy,
        "water/two_term_regression.csv", LeafChecks::twoTerm,
        "water/eto_fao56.csv", LeafChecks::grass,
        "water/observed_water_use.csv", LeafChecks::observed);
  }

  private static List<Outcome> canopy(CaseRow row, CaseFolder folder) {
    double ours =
        switch (row.text("quantity")) {
          case "rs_s_m" -> Stomata.resistanceSM(row.number("ppfd"));
          case "Rnet_W_m2" -> absorbed(row, row.number("par_W_m2"));
          case "E_g_m2_h" -> balance(row).waterGM2H();
          case "leaf_minus_air_C" -> balance(row).leafMinusAirC();
          case "E24h_mean_g_m2_h" -> meanOfTreatments(row);
          case "E_day_L_m2" -> dayL(row);
          default -> throw new IllegalArgumentException("unknown " + row.text("quantity"));
        };
    return Compare.number(row, ours);
  }

  private static double absorbed(CaseRow row, double parWm2) {
    return (1 - row.number("reflect")) * parWm2 * row.number("cover");
  }

  private static LeafBalance balance(CaseRow row) {
    return balance(row, 0, row.number("par_W_m2"), row.number("rs_s_m"));
  }

  private static LeafBalance balance(CaseRow row, int part, double parWm2, double stomataSM) {
    MoistAir air = MoistAir.of(Compare.part(row, "Ta_C", part), Compare.part(row, "RH_pct", part));
    Canopy canopy =
        new Canopy(
            absorbed(row, parWm2),
            stomataSM,
            row.number("ra_s_m"),
            row.number("LAI"),
            row.has("hr_W_m2K") ? row.number("hr_W_m2K") : 0);
    return row.text("mode").equals("linear")
        ? LeafBalance.linear(canopy, air)
        : LeafBalance.exact(canopy, air);
  }

  /** The six light treatments of the paper, listed in the row's source. */
  private static double meanOfTreatments(CaseRow row) {
    double[] par = list(PAR, row);
    double[] ppfd = list(PPFD, row);
    double light = list(HOURS, row)[0] / 24;
    double mean = 0;
    for (int i = 0; i < par.length; i++) {
      double day = balance(row, 0, par[i], Stomata.resistanceSM(ppfd[i])).waterGM2H();
      double night = balance(row, 1, 0, Stomata.resistanceSM(0)).waterGM2H();
      mean += (light * day + (1 - light) * night) / par.length;
    }
    return mean;
  }

  private static double[] list(Pattern pattern, CaseRow row) {
    Matcher m = pattern.matcher(row.text("source"));
    if (!m.find()) {
      throw new IllegalArgumentException("the source lists no " + pattern);
    }
    return Arrays.stream(m.group(1).split(",", -1)).mapToDouble(Double::parseDouble).toArray();
  }

  private static double dayL(CaseRow row) {
    double hours = row.number("photoperiod_h");
    double stomata = Stomata.resistanceSM(row.number("ppfd"));
    double day = balance(row, 0, row.number("par_W_m2"), stomata).waterGM2H();
    double night = balance(row, 1, 0, Stomata.resistanceSM(0)).waterGM2H();
    return (hours * day + (24 - hours) * night) / 1000;
  }

  private static List<Outcome> twoTerm(CaseRow row, CaseFolder folder) {
    TwoTerm form = row.text("period").equals("day") ? TwoTerm.DAY : TwoTerm.NIGHT;
    double ours = form.waterGM2H(row.number("par_W_m2"), row.number("LAI"), row.number("vpd_kPa"));
    return Compare.number(row, ours);
  }

  /**
   * Reference evapotranspiration is the same combination equation with the resistances of clipped
   * grass: 70 s/m and 208 / wind. Only the arithmetic is checked; it is of no use indoors.
   */
  private static List<Outcome> grass(CaseRow row, CaseFolder folder) {
    double seconds = row.text("step").equals("day") ? 86_400 : 3600;
    double latent = 2.45e6;
    double gamma = row.number("gamma");
    double airJM3K = gamma * 0.622 * latent / (1.01 * (row.number("T_C") + 273) * 0.287);
    double boundary = 208 / row.number("u2_m_s");
    double way = 70 + boundary;
    PenmanMonteith balance =
        new PenmanMonteith(
            (row.number("Rn_MJ") - row.number("G_MJ")) * 1e6 / seconds,
            airJM3K / boundary,
            airJM3K / gamma * (row.number("es_kPa") - row.number("ea_kPa")) / way,
            airJM3K * row.number("slope") / gamma / way);
    return Compare.number(row, balance.latentWm2() * seconds / latent);
  }

  /**
   * Rows whose surroundings are stated: measured means, allowed the error the source gives the
   * model. Whole-crop litres are data.
   */
  private static List<Outcome> observed(CaseRow row, CaseFolder folder) {
    Matcher given = MEASURED.matcher(row.text("condition"));
    Matcher error =
        Pattern.compile("rmse(?: of model)? ([\\d.]+)").matcher(row.text("tolerance_kind"));
    if (!given.find() || !error.find()) {
      return List.of();
    }
    double ours = mean(given) * (row.text("unit").equals("g/m2/d") ? 24 : 1);
    Matcher open = Pattern.compile("incl. about (\\d+) free").matcher(row.text("quantity"));
    double free = open.find() ? Double.parseDouble(open.group(1)) : 0;
    String what = row.text("quantity") + ", " + row.text("unit");
    return List.of(
        Outcome.number(
            what, row.number("expected"), ours + free, Double.parseDouble(error.group(1))));
  }

  /** Mean of a 16 h day, g/m²/h, at the middle of the stated range of light. */
  private static double mean(Matcher given) {
    double ppfd = middle(given.group(1));
    String[] warm = given.group(2).split("/", -1);
    String[] damp = given.group(3).split("/", -1);
    MoistAir day = MoistAir.of(Double.parseDouble(warm[0]), middle(damp[0]));
    MoistAir night =
        MoistAir.of(Double.parseDouble(warm[warm.length - 1]), middle(damp[damp.length - 1]));
    Canopy lit =
        new Canopy(0.95 * ppfd / 5, Stomata.resistanceSM(ppfd), Canopy.FAN_SM, Canopy.DENSEST, 0);
    Canopy dark = new Canopy(0, Stomata.resistanceSM(0), Canopy.FAN_SM, Canopy.DENSEST, 0);
    return (16 * LeafBalance.linear(lit, day).waterGM2H()
            + 8 * LeafBalance.linear(dark, night).waterGM2H())
        / 24;
  }

  private static double middle(String range) {
    return Arrays.stream(range.split("-", -1))
        .mapToDouble(Double::parseDouble)
        .average()
        .orElseThrow();
  }
}
