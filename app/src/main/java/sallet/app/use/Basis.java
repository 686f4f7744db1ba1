package sallet.app.use;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import sallet.app.report.Words;
import sallet.household.Household;

/** What a sheet of water rests on, in sentences. */
final class Basis {
  private Basis() {}

  /**
   * The sentences.
   *
   * @param file the household as its file has it
   * @param known the same with the readings that count
   */
  static List<String> of(Household file, Household known, TellWater.Wish wish) {
    List<String> basis = new ArrayList<>();
    basis.add(
        wish.stock().isPresent()
            ? "What stands on the bench is what your journal says, and goes on as a plan made from there."
            : "What stands on the bench is what a sowing plan begun on "
                + Words.dayAndYear(wish.since())
                + " would have there now. If yours looks otherwise, keep a journal and give it with --journal.");
    List<String> others = wish.stock().map(s -> s.standing().otherPots()).orElse(List.of());
    if (!others.isEmpty()) {
      basis.add(
          "What stands in "
              + String.join(", ", others)
              + " has no growth model, so the water of its leaves is not counted: the bench drinks more than told here.");
    }
    int read = TellWater.told(file, wish).readings().levels().size();
    int left = read - known.watering().readings().levels().size();
    if (left > 0) {
      basis.add(
          "%s of the reservoir %s left out: before %s and after today it is not known what stood on the bench."
              .formatted(
                  Words.capital(Words.count(left, "reading")),
                  left == 1 ? "was" : "were",
                  Words.dayAndYear(wish.since())));
    }
    if (summerTime(file.place().timeZone(), wish.today())) {
      basis.add(
          "Times are standard time, as a mechanical timer keeps it all year; the clock runs ahead of it now.");
    }
    return basis;
  }

  private static boolean summerTime(ZoneId zone, LocalDate day) {
    return zone.getRules().isDaylightSavings(day.atTime(12, 0).atZone(zone).toInstant());
  }
}
