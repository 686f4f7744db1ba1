package sallet.app.report;

import java.util.ArrayList;
import java.util.List;
import sallet.household.Household;

/**
 * A safety text that stands beside advice it belongs to.
 *
 * @param subject a few words
 * @param text short and exact; defers to local codes and licensed trades
 */
public record Caution(String subject, String text) {

  /** Picking and lifting. General hygiene guidance, common practice. */
  public static final Caution FOOD =
      new Caution(
          "Clean leaf",
          "Wash hands and knife before picking, and again between potting and picking. Flood"
              + " water must not touch leaves you eat. Cool the leaves below 5 °C within 2 hours"
              + " (basil at 10 to 12 °C), wash them just before eating and discard slimy ones."
              + " Discard the crop after any spill of cleaner or disinfectant. This is general"
              + " guidance, not a guarantee; the rules of your food authority come first.");

  /** Any bench with a pump or lamp near water. Common practice; marking digits: IEC 60529. */
  public static final Caution MAINS =
      new Caution(
          "Mains near water",
          "Every circuit used needs residual-current protection of 30 mA or less. Sockets, timers"
              + " and lamp drivers stand beside or above the tray, never below it; each cable hangs"
              + " in a loop lower than its socket. Unplug before hands go into the water; stop at"
              + " any damaged cable. Local codes and a licensed electrician decide.");

  /** A lamp over the bench. Common practice; marking digits: IEC 60529. */
  public static final Caution LAMP =
      new Caution(
          "Lamp over the bench",
          "Take a lamp marked at least IPX4 (IEC 60529: splashing water); IP20 is for dry rooms"
              + " only. Hang it from the structure, not from plasterboard, on two hangers each"
              + " rated for four times its mass, and check them after every move. Do not look into"
              + " a bright lamp; switch it off or wear a brimmed cap when you work under it. Local"
              + " codes and a licensed electrician decide.");

  /** The cautions a plan for this household calls for. */
  public static List<Caution> of(Household household) {
    List<Caution> cautions = new ArrayList<>(List.of(FOOD));
    cautions.addAll(ofBench(household));
    return List.copyOf(cautions);
  }

  /** Those that belong beside the bench. */
  public static List<Caution> ofBench(Household household) {
    return household.lamp().isPresent() ? List.of(MAINS, LAMP) : List.of(MAINS);
  }
}
