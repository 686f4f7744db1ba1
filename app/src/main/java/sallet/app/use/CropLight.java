package sallet.app.use;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import sallet.app.file.PlanFile;
import sallet.crop.Catalogue;
import sallet.crop.Crop;
import sallet.crop.HarvestStyle;
import sallet.household.Household;
import sallet.household.Pot;
import sallet.light.LightNeed;
import sallet.light.LightTarget;

/** What a household's crops want of light, from the catalogue. */
public final class CropLight {
  private CropLight() {}

  /** The crops a household wants to grow; leafy crops in general when none of them can be. */
  public static LightTarget wanted(Household household, Catalogue catalogue, double mostHours) {
    List<LightNeed> needs =
        catalogue.wanted(household.crops()).stream().map(CropLight::need).toList();
    return needs.isEmpty()
        ? LightTarget.same(LightTarget.LEAFY_MOL, mostHours)
        : LightTarget.wanted(needs, mostHours);
  }

  /**
   * What a plan puts into the pots.
   *
   * @param fault told a sentence for each crop and pot that is not known
   */
  public static LightTarget planned(
      Household household,
      Catalogue catalogue,
      List<PlanFile.InPot> plan,
      double mostHours,
      Consumer<String> fault) {
    List<LightTarget.Standing> standings = new ArrayList<>();
    Set<LightNeed> needs = new LinkedHashSet<>();
    Set<String> faults = new LinkedHashSet<>();
    for (PlanFile.InPot one : plan) {
      Optional<Crop> crop = catalogue.find(one.crop());
      Optional<Integer> pot = pot(household, one.pot());
      if (crop.isEmpty()) {
        faults.add("\"" + one.crop() + "\" is not a crop of the catalogue or your file");
      } else if (pot.isEmpty()) {
        faults.add("\"" + one.pot() + "\" is no pot of your bench; make the plan anew");
      } else {
        LightNeed need = need(crop.get());
        needs.add(need);
        standings.add(new LightTarget.Standing(pot.get(), one.from(), one.until(), need));
      }
    }
    faults.forEach(fault);
    return needs.isEmpty()
        ? wanted(household, catalogue, mostHours)
        : new LightTarget(LightTarget.Origin.PLAN, List.copyOf(needs), standings, mostHours);
  }

  /** What one crop wants. */
  static LightNeed need(Crop crop) {
    return new LightNeed(
        crop.name(),
        crop.style() == HarvestStyle.WHOLE_PLANT,
        crop.guide().seedlingDliMol().high(),
        crop.guide().growDliMol().low(),
        crop.guide().targetDliMol(),
        high(crop.guide().tipBurnRisk()),
        high(crop.guide().boltingRisk()));
  }

  private static boolean high(String risk) {
    return risk.toLowerCase(Locale.ROOT).contains("high");
  }

  private static Optional<Integer> pot(Household household, String name) {
    List<Pot> pots = household.bench().pots();
    return IntStream.range(0, pots.size())
        .filter(i -> pots.get(i).name().equalsIgnoreCase(name))
        .boxed()
        .findFirst();
  }
}
