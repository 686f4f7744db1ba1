package sallet.water.flood;

import java.util.Arrays;
import java.util.List;
import sallet.water.medium.PotWater;

/** Pots followed minute by minute through floods. */
public final class FloodRun {
  private final double[] lowestMl;
  private final double[] endMl;
  private final double[] takenMl;
  private final double[] usedMl;
  private int floods;

  private FloodRun(int pots) {
    lowestMl = new double[pots];
    endMl = new double[pots];
    takenMl = new double[pots];
    usedMl = new double[pots];
  }

  /** What a pot uses in an hour counted from the start, mL. */
  @FunctionalInterface
  public interface Use {
    double mlPerHour(int pot, int hour);
  }

  /**
   * Whether a flood that the schedule asks for happens.
   *
   * <p>Counted from 0; a pump or its power may fail.
   */
  @FunctionalInterface
  public interface Happens {
    boolean flood(int index);
  }

  /**
   * The run, all pots full at the start. A flood reaches the pots when the tray is full, and brings
   * them back to what they hold. A pot that is empty uses nothing.
   *
   * @param fillMinutes time from the start of a flood until it is at the pots
   */
  public static FloodRun of(
      List<PotWater> pots,
      Use use,
      int hours,
      FloodSchedule schedule,
      int fillMinutes,
      Happens happens) {
    FloodRun run = new FloodRun(pots.size());
    for (int i = 0; i < pots.size(); i++) {
      run.endMl[i] = pots.get(i).fullMl();
    }
    System.arraycopy(run.endMl, 0, run.lowestMl, 0, pots.size());
    int asked = 0;
    for (long minute = 0; minute < 60L * hours; minute++) {
      for (int i = 0; i < pots.size(); i++) {
        run.drink(i, use.mlPerHour(i, (int) (minute / 60)) / 60);
      }
      long began = minute + 1 - fillMinutes;
      if (began >= 0 && schedule.startsAt(began) && happens.flood(asked++)) {
        run.flood(pots);
      }
    }
    return run;
  }

  private void drink(int pot, double ml) {
    double goes = Math.min(ml, endMl[pot]);
    endMl[pot] -= goes;
    usedMl[pot] += goes;
    lowestMl[pot] = Math.min(lowestMl[pot], endMl[pot]);
  }

  private void flood(List<PotWater> pots) {
    for (int i = 0; i < endMl.length; i++) {
      takenMl[i] += pots.get(i).fullMl() - endMl[i];
      endMl[i] = pots.get(i).fullMl();
    }
    floods++;
  }

  /** Least water a pot held, mL. */
  public double lowestMl(int pot) {
    return lowestMl[pot];
  }

  /** Water a pot holds at the end, mL. */
  public double endMl(int pot) {
    return endMl[pot];
  }

  /** Water all pots took from the reservoir, mL. */
  public double takenMl() {
    return Arrays.stream(takenMl).sum();
  }

  /** Water all pots gave to the air, mL. */
  public double usedMl() {
    return Arrays.stream(usedMl).sum();
  }

  /** Floods that happened. */
  public int floods() {
    return floods;
  }
}
