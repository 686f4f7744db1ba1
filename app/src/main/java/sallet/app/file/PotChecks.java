package sallet.app.file;

import java.util.List;
import sallet.household.Bench;
import sallet.household.Household;
import sallet.household.Pot;
import sallet.household.Watering;
import sallet.units.Quantity;

/**
 * Every pot has room beside its neighbours and within the tray.
 *
 * <p>The ground a pot covers is its volume over its height; whether it is round or square nobody
 * asks. Pots are refused only where neither round nor square ones of that ground would stand.
 */
final class PotChecks {
  /** Volumes on labels are rounded, and rims may touch. Judgement. */
  private static final double LEAN = 0.95;

  private final Values values;
  private final Faults faults;
  private final Household household;
  private final Bench bench;

  PotChecks(Values values, Faults faults, Household household) {
    this.values = values;
    this.faults = faults;
    this.household = household;
    this.bench = household.bench();
  }

  /** Tells the first pot that does not fit: with pots all alike it speaks for the others. */
  void check() {
    if (values.sound("bench")) {
      List<Ground> pots = bench.pots().stream().map(this::ground).toList();
      if (!crowded(pots)) {
        pots.stream().filter(pot -> overhangM(pot) > 0).findFirst().ifPresent(this::overTheEdge);
      }
    }
  }

  private boolean crowded(List<Ground> pots) {
    for (int i = 0; i < pots.size(); i++) {
      for (int j = 0; j < i; j++) {
        if (overlap(pots.get(i), pots.get(j))) {
          tooNear(pots.get(j), pots.get(i));
          return true;
        }
      }
    }
    return false;
  }

  /**
   * The ground a pot covers.
   *
   * @param path the key to blame
   * @param words its size as written
   */
  private record Ground(Pot pot, String path, String words, double volumeL, double heightM) {
    /** Side of a square pot, m. */
    double sideM() {
      return LEAN * Math.sqrt(volumeL * 1e-3 / heightM);
    }

    /** Diameter of a round pot, m. */
    double diameterM() {
      return sideM() * 2 / Math.sqrt(Math.PI);
    }
  }

  private Ground ground(Pot pot) {
    List<Watering.OtherPots> others = household.watering().otherPots();
    for (int i = 0; i < others.size(); i++) {
      Watering.OtherPots other = others.get(i);
      if (other.pots().contains(pot.name())) {
        String at = "bench.otherPots[" + i + "]";
        double volumeL = other.volumeL().orElse(bench.potVolumeL());
        double heightM = other.heightM().orElse(bench.potHeightM());
        return ground(pot, at, at + ".volume", volumeL, at + ".height", heightM);
      }
    }
    boolean list = values.isList("bench.pots");
    String volume = list ? "bench.potVolume" : "bench.pots.volume";
    String height = list ? "bench.potHeight" : "bench.pots.height";
    String path = values.written(volume) ? volume : "bench.pots";
    return ground(pot, path, volume, bench.potVolumeL(), height, bench.potHeightM());
  }

  private Ground ground(
      Pot pot, String path, String volumeKey, double volumeL, String heightKey, double heightM) {
    String words =
        "a pot of %s, %s high,"
            .formatted(
                Quantity.write(volumeL, values.unit(volumeKey)),
                Quantity.write(heightM, values.unit(heightKey)));
    return new Ground(pot, path, words, volumeL, heightM);
  }

  private static boolean overlap(Ground a, Ground b) {
    double east = Math.abs(a.pot().xM() - b.pot().xM());
    double north = Math.abs(a.pot().yM() - b.pot().yM());
    return Math.max(east, north) < (a.sideM() + b.sideM()) / 2
        && a.pot().apartM(b.pot()) < (a.diameterM() + b.diameterM()) / 2;
  }

  /** How far a square pot reaches beyond the tray, m; 0 or below when it stands within. */
  private double overhangM(Ground ground) {
    Pot pot = ground.pot();
    double east = Math.min(pot.xM(), bench.widthM() - pot.xM());
    double north = Math.min(pot.yM(), bench.depthM() - pot.yM());
    return ground.sideM() / 2 - Math.min(east, north);
  }

  private void overTheEdge(Ground ground) {
    add(
        ground,
        "%s is about %s across and as %s reaches over the edge of the tray"
            .formatted(ground.words(), across(ground), ground.pot().name()));
  }

  private void tooNear(Ground a, Ground b) {
    Ground larger = a.sideM() > b.sideM() ? a : b;
    add(
        larger,
        "%s is about %s across, but %s and %s stand %s apart"
            .formatted(
                larger.words(),
                across(larger),
                a.pot().name(),
                b.pot().name(),
                length(a.pot().apartM(b.pot()))));
  }

  /** To the millimetre, for a pot tapers. */
  private String across(Ground ground) {
    return length(Math.round(ground.sideM() / LEAN * 1000) / 1000.0);
  }

  private String length(double m) {
    return Quantity.write(m, values.unit("bench.width"));
  }

  private void add(Ground ground, String sentence) {
    String places =
        values.isList("bench.pots") ? "set them elsewhere" : "write fewer rows or columns";
    faults.add(
        ground.path(),
        values.line(ground.path()),
        sentence + "; " + places + ", or take smaller or taller pots");
  }
}
