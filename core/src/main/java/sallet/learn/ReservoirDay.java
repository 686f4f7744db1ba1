package sallet.learn;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import sallet.household.Watering;
import sallet.journal.Entry;
import sallet.units.Quantity;

/** The rows of one day about the reservoir, taken in the order in which they were written. */
final class ReservoirDay {
  private final LocalDate date;
  private OptionalDouble litres = OptionalDouble.empty();
  private OptionalDouble msCm = OptionalDouble.empty();
  private double addedL;
  private double addedMsCm;
  private boolean renewed;
  private int line;

  ReservoirDay(LocalDate date) {
    this.date = date;
  }

  void add(Entry row, List<Remark> remarks) {
    double value = row.value().orElseThrow();
    line = row.line();
    switch (row.event()) {
      case LEVEL -> level(value);
      case TOP_UP -> addedL += value;
      case RENEW -> {
        renewed = true;
        addedL = value;
        addedMsCm = 0;
      }
      case EC -> conductivity(row, value, remarks);
      default -> throw new IllegalArgumentException("no row about the reservoir: " + row.event());
    }
  }

  /** A level read after something was poured in tells what there was before. */
  private void level(double value) {
    if (renewed) {
      addedL = value;
    } else {
      litres = OptionalDouble.of(Math.max(0, value - addedL));
    }
  }

  private void conductivity(Entry row, double value, List<Remark> remarks) {
    if (WaterRows.isPoured(row) || renewed) {
      addedMsCm = value;
    } else if (addedL > 0) {
      remarks.add(
          new Remark(
              row.line(),
              false,
              "this conductivity was read after the top-up of the same day and teaches nothing; read"
                  + " it before, or write place \"top-up\" when it is that of what was poured in"));
    } else {
      msCm = OptionalDouble.of(value);
    }
  }

  boolean tellsLevel() {
    return litres.isPresent() || renewed;
  }

  /** What is wrong when there is more in it than it holds. */
  Optional<Remark> tooFull(double mostL) {
    double most = Math.max(litres.orElse(0), renewed ? addedL : 0);
    return most <= mostL
        ? Optional.empty()
        : Optional.of(
            new Remark(
                line,
                true,
                "%s L in the reservoir on %s is more than it holds; mend the row or reservoir.volume"
                    .formatted(Quantity.plain(most), date)));
  }

  Watering.Level level() {
    return new Watering.Level(date, litres, msCm, addedL, addedMsCm, renewed);
  }
}
