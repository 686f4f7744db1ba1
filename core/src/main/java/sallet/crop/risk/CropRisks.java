package sallet.crop.risk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import sallet.crop.Bolting;
import sallet.crop.Concern;
import sallet.crop.HarvestRule;
import sallet.crop.LastDay;
import sallet.crop.Stretch;
import sallet.crop.TipBurn;
import sallet.crop.risk.Risk.Driver;
import sallet.crop.risk.Risk.Kind;

/** What may go wrong in one plant's life. The limits are judgement unless a source is named. */
public final class CropRisks {
  private static final String COMMON = "common practice";
  private static final int LIGHT_MEMORY_DAYS = 5;
  private static final int LAST_DAYS = 14;

  /** Near to seed before these shares of its age limit are early and too early. */
  private static final double EARLY = 0.75;

  private static final double TOO_EARLY = 0.6;

  /** Age limit of crops that have none of their own, and the age their growth slows, days. */
  private static final int USUAL_AGE_DAYS = 60;

  private static final int USUAL_AGEING_DAYS = 35;

  /** Tip-burn index from which to watch and to act. */
  private static final double BURN_WATCH = 0.3;

  private static final double BURN_ACT = 0.6;

  /** A crop whose seed or growth needs more than this is of a warm country, °C. */
  private static final double TENDER_BASE_C = 7;

  /** Nights colder than these chill it, °C. Common practice: basil and tomato 10 to 12 °C. */
  private static final double CHILL_WATCH_C = 12;

  private static final double CHILL_ACT_C = 10;

  /** Days warmer than its best by this are too hot, °C. */
  private static final double HOT_BY_C = 2;

  /** Humidity of the night from which leaves dry slowly and not at all, %. Common practice. */
  private static final double DAMP_WATCH_PERCENT = 85;

  private static final double DAMP_ACT_PERCENT = 95;

  /** Share of the published maximum at which to watch a guess of nitrate. */
  private static final double NITRATE_WATCH_SHARE = 0.8;

  /** Light below which nitrate is to be watched where no guess is known, mol/m²/d. */
  private static final double NITRATE_WATCH_MOL = 8;

  private static final double NITRATE_ACT_MOL = 4;

  /** Days beyond the age from which growth slows after which leaves may be bitter. */
  private static final int BITTER_DAYS = 21;

  private CropRisks() {}

  /** Every risk that can be judged for the crop, the gravest first. */
  public static List<Risk> of(Exposure life) {
    List<Risk> risks = new ArrayList<>();
    risks.add(stretch(life));
    tipBurn(life).ifPresent(risks::add);
    bolting(life).ifPresent(risks::add);
    chilling(life).ifPresent(risks::add);
    heat(life).ifPresent(risks::add);
    bitterness(life).ifPresent(risks::add);
    risks.add(slowDrying(life));
    nitrate(life).ifPresent(risks::add);
    risks.sort(Comparator.comparing(Risk::concern).reversed());
    return List.copyOf(risks);
  }

  private static Risk stretch(Exposure life) {
    double dliMol = Exposure.mean(life.seedlingDays(), Exposure.Day::dliMol);
    double factor = Stretch.stemFactor(dliMol);
    Concern concern = Concern.rising(factor, Stretch.WARN_ABOVE, Stretch.REJECT_ABOVE);
    return new Risk(
        Kind.STRETCH,
        concern,
        "Seedlings at %s mol a day grow stems %d %% longer than in good light."
            .formatted(one(dliMol), Math.round(100 * (factor - 1))),
        List.of(new Driver("stem length, relative to good light", factor, "", Stretch.WARN_ABOVE)),
        concern == Concern.NONE
            ? ""
            : "Bring the light closer or leave it on longer, from the day the first seedling shows.",
        "direction published, numbers from memory; seedlings stretch within their first two weeks"
            + " (common practice)");
  }

  private static Optional<Risk> tipBurn(Exposure life) {
    return life.crop().guide().tipBurnFactor().map(factor -> tipBurn(life, factor));
  }

  private static Risk tipBurn(Exposure life, double typeFactor) {
    boolean closing = life.crop().guide().group().equals("head");
    double airMPerS = life.airMPerS();
    List<Exposure.Day> days = life.benchDays();
    double worst = -1;
    double dliMol = 0;
    double meanC = 0;
    for (int i = 0; i < days.size(); i++) {
      List<Exposure.Day> five = days.subList(Math.max(0, i - LIGHT_MEMORY_DAYS + 1), i + 1);
      double light = Exposure.mean(five, Exposure.Day::dliMol);
      double warmth = days.get(i).meanC();
      double index = TipBurn.index(light, warmth, airMPerS, typeFactor, closing);
      if (index > worst) {
        worst = index;
        dliMol = light;
        meanC = warmth;
      }
    }
    Concern concern = Concern.rising(worst, BURN_WATCH, BURN_ACT);
    return new Risk(
        Kind.TIP_BURN,
        concern,
        "At %s mol a day, %s °C and %s m/s of air, calcium %s with the growth of the inner leaves."
            .formatted(
                one(dliMol),
                one(meanC),
                one(airMPerS),
                concern == Concern.NONE ? "keeps up" : "may not keep up"),
        List.of(
            new Driver(
                "five-day light", dliMol, "mol/m²/d", TipBurn.borneMol(airMPerS, typeFactor)),
            new Driver("air at the leaves", airMPerS, "m/s", TipBurn.ENOUGH_AIR_M_PER_S),
            new Driver("mean temperature", meanC, "°C", 24),
            new Driver("tip-burn index", worst, "", BURN_WATCH)),
        concern == Concern.NONE
            ? ""
            : "Blow air gently down onto the crowns (0.3 m/s or more), or give less light.",
        "Sago 2016, HortScience 51:1087; Frantz 2004 (direction); numbers from memory");
  }

  private static Optional<Risk> bolting(Exposure life) {
    return life.crop().bolting().map(bolting -> bolting(life, bolting));
  }

  private static Risk bolting(Exposure life, Bolting bolting) {
    double sumCd = life.days().stream().mapToDouble(day -> day.boltingCd(bolting)).sum();
    double hours = Exposure.mean(life.days(), Exposure.Day::photoperiodHours);
    int age = life.crop().harvest().map(HarvestRule::overAgeDays).orElse(USUAL_AGE_DAYS);
    OptionalInt near = LastDay.daysUntilNearSeed(bolting, life.emergence(), life.stays(), age);
    Concern concern =
        near.isEmpty()
            ? Concern.NONE
            : Concern.rising(-near.getAsInt(), -EARLY * age, -TOO_EARLY * age);
    return new Risk(
        Kind.BOLTING,
        concern,
        near.isPresent()
            ? "Days of %s h bring it near to seed about %d days after it comes up."
                .formatted(one(hours), near.getAsInt())
            : "It does not run to seed before it is too old anyway.",
        List.of(
            new Driver("day length", hours, "h", bolting.criticalPhotoperiodHours()),
            new Driver(
                "warmth of long days", sumCd, "°C d", Bolting.LEAVE_AT * bolting.halfSumCd())),
        concern == Concern.NONE
            ? ""
            : "Keep its days at %s h or shorter, or sow it anew more often."
                .formatted(one(bolting.criticalPhotoperiodHours())),
        "Al-Said 2018 (direction); sums from memory");
  }

  /** Only crops of warm countries suffer: those whose seed or growth needs more than 7 °C. */
  private static Optional<Risk> chilling(Exposure life) {
    boolean tender =
        life.crop().germination().baseC() >= TENDER_BASE_C
            || life.crop().growth().filter(p -> p.baseC() >= TENDER_BASE_C).isPresent();
    if (!tender) {
      return Optional.empty();
    }
    double nightC = life.coldestNightC();
    Concern concern = Concern.rising(-nightC, -CHILL_WATCH_C, -CHILL_ACT_C);
    return Optional.of(
        new Risk(
            Kind.CHILLING,
            concern,
            "Nights down to %s °C; below %s °C its leaves take harm, below %s °C surely."
                .formatted(one(nightC), one(CHILL_WATCH_C), one(CHILL_ACT_C)),
            List.of(new Driver("coldest nights", nightC, "°C", CHILL_WATCH_C)),
            concern == Concern.NONE ? "" : "Grow it in the warm months or in a warmer room.",
            COMMON));
  }

  private static Optional<Risk> heat(Exposure life) {
    return life.crop()
        .growth()
        .map(
            p -> {
              double dayC = life.warmestDayC();
              Concern concern = Concern.rising(dayC, p.optimumHighC(), p.optimumHighC() + HOT_BY_C);
              return new Risk(
                  Kind.HEAT,
                  concern,
                  "Days up to %s °C; quality falls above %s °C."
                      .formatted(one(dayC), one(p.optimumHighC())),
                  List.of(new Driver("warmest days", dayC, "°C", p.optimumHighC())),
                  concern == Concern.NONE
                      ? ""
                      : "Shade and air the room, or leave these weeks out.",
                  "from memory: lettuce quality falls above 26 to 28 °C");
            });
  }

  /** An ordinal warning: how many of three causes are there. */
  private static Optional<Risk> bitterness(Exposure life) {
    boolean bitterKind =
        life.crop().species().startsWith("Lactuca")
            || life.crop().species().startsWith("Eruca")
            || life.crop().species().startsWith("Diplotaxis");
    if (!bitterKind) {
      return Optional.empty();
    }
    List<String> causes = new ArrayList<>();
    if (heat(life).filter(risk -> risk.concern() != Concern.NONE).isPresent()) {
      causes.add("heat");
    }
    if (bolting(life).filter(risk -> risk.concern() != Concern.NONE).isPresent()) {
      causes.add("running to seed");
    }
    int ageing = life.crop().harvest().map(HarvestRule::ageingFromDays).orElse(USUAL_AGEING_DAYS);
    if (life.days().size() > ageing + BITTER_DAYS) {
      causes.add("age");
    }
    Concern concern = Concern.rising(causes.size(), 0, 1);
    return Optional.of(
        new Risk(
            Kind.BITTERNESS,
            concern,
            causes.isEmpty()
                ? "Nothing here makes the leaves bitter."
                : "Leaves may taste bitter in the end: " + String.join(", ", causes) + ".",
            List.of(new Driver("causes of three: heat, seed, age", causes.size(), "", 1)),
            concern == Concern.NONE ? "" : "Pick young and taste before you pick.",
            COMMON));
  }

  /** Leaves that dry slowly: a matter of the room, the same for every crop. */
  public static Risk slowDrying(Exposure life) {
    double percent = life.nightHumidityPercent();
    Concern concern = Concern.rising(percent, DAMP_WATCH_PERCENT, DAMP_ACT_PERCENT);
    return new Risk(
        Kind.SLOW_DRYING,
        concern,
        percent >= 100
            ? "The day's air, cooled to the night without airing, holds too much water: dew settles on leaves."
            : "The day's air, cooled to the night without airing, is %d %% humid."
                .formatted(Math.round(percent)),
        List.of(new Driver("humidity in the night", percent, "%", DAMP_WATCH_PERCENT)),
        concern == Concern.NONE
            ? ""
            : "Air the room in the evening, keep leaves dry, and pick them dry: wet leaves rot.",
        "computed from your day humidity (FAO 56, equation 11); limits common practice");
  }

  private static Optional<Risk> nitrate(Exposure life) {
    Optional<NitrateLimits.Maximum> maximum =
        NitrateLimits.of(life.crop(), life.end(), life.southern());
    return maximum.map(max -> nitrate(life, max));
  }

  private static Risk nitrate(Exposure life, NitrateLimits.Maximum maximum) {
    List<Exposure.Day> all = life.days();
    double dliMol =
        Exposure.mean(
            all.subList(Math.max(0, all.size() - LAST_DAYS), all.size()), Exposure.Day::dliMol);
    OptionalInt guess = NitrateLimits.guessMgPerKg(life.crop(), dliMol);
    Concern concern =
        guess.isPresent()
            ? Concern.rising(
                guess.getAsInt(), NITRATE_WATCH_SHARE * maximum.mgPerKg(), maximum.mgPerKg())
            : Concern.rising(-dliMol, -NITRATE_WATCH_MOL, -NITRATE_ACT_MOL);
    String light = one(dliMol) + " mol a day";
    String held =
        guess.isPresent()
            ? "; a rough guess at %s is %d mg/kg".formatted(light, guess.getAsInt())
            : "; what this crop holds at %s is not known".formatted(light);
    boolean turned = life.southern() && !maximum.period().equals("all year");
    String period = maximum.period() + (turned ? " in the north" : "");
    String growing = maximum.growing().equals("any") ? "" : maximum.growing() + ", ";
    return new Risk(
        Kind.NITRATE,
        concern,
        "Dim light and late feeding raise nitrate%s. Traders in the European Union may sell up to %d mg/kg (%s%s)."
            .formatted(held, maximum.mgPerKg(), growing, period),
        List.of(new Driver("light of the last two weeks", dliMol, "mol/m²/d", NITRATE_WATCH_MOL)),
        concern == Concern.NONE
            ? ""
            : "Give plain water for the last day before the harvest, pick in the afternoon of a bright"
                + " day, and take the stalks off. This is an estimate, never a proof of safety.",
        maximum.source()
            + "; guess from memory; plain water: Voutsinos-Frantzis 2024,"
            + " Horticulturae 10:375");
  }

  private static String one(double value) {
    double tenths = Math.round(value * 10) / 10.0;
    return tenths == Math.rint(tenths) ? Long.toString((long) tenths) : Double.toString(tenths);
  }
}
