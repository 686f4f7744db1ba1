package sallet.app.file;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Demand is said once, absences are in order, and no more people are away than there are. */
final class PeopleChecks {
  private final Values values;
  private final Faults faults;

  PeopleChecks(Values values, Faults faults) {
    this.values = values;
    this.faults = faults;
  }

  void check() {
    if (values.written("household.cupsPerSalad") && values.written("household.gramsPerSalad")) {
      faults.add(
          "household.gramsPerSalad",
          values.line("household.gramsPerSalad"),
          "says again what household.cupsPerSalad says; keep one of the two");
    }
    for (String other :
        List.of("household.saladsPerWeek", "household.gramsPerSalad", "household.cupsPerSalad")) {
      if (values.written("household.bowlGrams") && values.written(other)) {
        faults.add(
            other,
            values.line(other),
            "says again what household.bowlGrams says; keep one of the two");
      }
    }
    List<Away> all =
        IntStream.range(0, values.count("absences"))
            .mapToObj(this::away)
            .flatMap(Optional::stream)
            .toList();
    if (values.sound("household.people")) {
      all.forEach(away -> tooMany(away, all));
    }
  }

  private record Away(String path, LocalDate from, LocalDate to, int people) {
    boolean covers(LocalDate day) {
      return !day.isBefore(from) && !day.isAfter(to);
    }
  }

  private Optional<Away> away(int i) {
    String at = "absences[" + i + "]";
    Optional<LocalDate> from = values.get(at + ".from", LocalDate.class);
    Optional<LocalDate> to = values.get(at + ".to", LocalDate.class);
    if (from.isEmpty() || to.isEmpty()) {
      return Optional.empty();
    }
    if (to.get().isBefore(from.get())) {
      faults.add(
          at + ".to",
          values.line(at + ".to"),
          to.get() + " lies before the first day away (" + from.get() + "); swap the two dates");
      return Optional.empty();
    }
    int everybody = values.whole("household.people");
    int people = values.get(at + ".people", Integer.class).orElse(everybody);
    return Optional.of(new Away(at, from.get(), to.get(), people));
  }

  private void tooMany(Away away, List<Away> all) {
    int everybody = values.whole("household.people");
    if (away.people() > everybody) {
      String path = away.path() + ".people";
      faults.add(
          path,
          values.line(path),
          away.people()
              + " are away but household.people is "
              + everybody
              + " (1 to "
              + everybody
              + ")");
      return;
    }
    int before =
        all.stream()
            .takeWhile(other -> !other.path().equals(away.path()))
            .filter(other -> other.covers(away.from()) || away.covers(other.from()))
            .mapToInt(Away::people)
            .sum();
    if (before > 0 && before + away.people() > everybody) {
      faults.add(
          away.path(),
          values.line(away.path()),
          "overlaps an absence before it, so that more than "
              + everybody
              + " people would be away on "
              + "one day; mend the dates or \"people\"");
    }
  }
}
