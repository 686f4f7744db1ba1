package sallet.plan.check;

import java.time.LocalDate;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import sallet.crop.PlaceDays;
import sallet.plan.SowingPlan.PotGroup;

/**
 * A nursery that never changes and a bench that grows a little brighter and warmer every day, so
 * that a life moved by one day gives other grams. The numbers are those of lives.py.
 *
 * @param days days of the plan
 * @param photoperiodHours hours with light, every day
 * @param boltingHeatCd degree days towards bolting, every day
 */
record DriftingSurroundings(LocalDate from, int days, double photoperiodHours, double boltingHeatCd)
    implements Surroundings {

  @Override
  public PlaceDays nursery() {
    return place(day -> 16, day -> 8.6, day -> 19);
  }

  @Override
  public PlaceDays bench(PotGroup group) {
    boolean bright = group.name().equals("bright");
    double assimilateG = bright ? 20 : 14;
    double dliMol = bright ? 11 : 8;
    return place(
        day -> assimilateG + 0.05 * day, day -> dliMol + 0.02 * day, day -> 18 + 0.03 * day);
  }

  private PlaceDays place(
      IntToDoubleFunction assimilateG, IntToDoubleFunction dliMol, IntToDoubleFunction meanC) {
    return new PlaceDays(
        from,
        series(assimilateG),
        series(dliMol),
        series(meanC),
        series(day -> photoperiodHours),
        series(day -> boltingHeatCd));
  }

  private double[] series(IntToDoubleFunction ofDay) {
    return IntStream.range(0, days).mapToDouble(ofDay).toArray();
  }
}
