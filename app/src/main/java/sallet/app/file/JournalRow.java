package sallet.app.file;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import sallet.crop.Catalogue;
import sallet.crop.Crop;
import sallet.household.Household;
import sallet.household.Pot;
import sallet.journal.Entry;
import sallet.journal.Event;
import sallet.journal.Where;

/** Reads one row of a journal; every cell that is wrong becomes a fault. */
final class JournalRow {
  private static final int MOST = 1_000_000;
  private static final String NURSERY = "nursery";
  private static final Set<Event> POTS = EnumSet.of(Event.POT_DRY, Event.POT_WET, Event.POT_MASS);

  private final List<String> pots;
  private final Catalogue catalogue;
  private final Faults faults;

  JournalRow(Household household, Catalogue catalogue, Faults faults) {
    this.pots = household.bench().pots().stream().map(Pot::name).toList();
    this.catalogue = catalogue;
    this.faults = faults;
  }

  /** The entry of a row; empty when something was wrong. */
  Optional<Entry> read(int line, Map<String, String> cells) {
    Cells row = new Cells(line, cells);
    Optional<LocalDate> date = row.date();
    Optional<Event> event = row.event();
    if (event.isEmpty()) {
      return Optional.empty();
    }
    String batch = event.get().ofBatch() ? row.batch(event.get()) : row.text("batch");
    String crop = row.crop(event.get());
    OptionalInt count = row.count();
    Optional<Where> place = row.place(event.get());
    OptionalDouble grams = row.grams(event.get());
    OptionalDouble value = row.value(event.get());
    Optional<LocalTime> time = row.time();
    if (row.wrong || date.isEmpty() || place.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Entry(
            line,
            date.get(),
            event.get(),
            batch,
            crop,
            count,
            place.get(),
            grams,
            value,
            row.text("note"),
            time));
  }

  /** The cells of a row by column. */
  private final class Cells {
    private final int line;
    private final Map<String, String> cells;
    private boolean wrong;

    Cells(int line, Map<String, String> cells) {
      this.line = line;
      this.cells = cells;
    }

    String text(String column) {
      return cells.getOrDefault(column, "");
    }

    private void fault(String sentence) {
      wrong = true;
      faults.add("", line, sentence);
    }

    Optional<LocalDate> date() {
      String text = text("date");
      try {
        LocalDate date = LocalDate.parse(text);
        if (date.getYear() >= 2000 && date.getYear() <= 2199) {
          return Optional.of(date);
        }
        fault(text + " lies outside what is allowed (years 2000 to 2199)");
      } catch (DateTimeException e) {
        fault(Scalars.quoted(text) + " is not a date; write year, month and day like 2027-07-03");
      }
      return Optional.empty();
    }

    Optional<LocalTime> time() {
      String text = text("time");
      if (text.isEmpty()) {
        return Optional.empty();
      }
      try {
        return Optional.of(LocalTime.parse(text.length() == 4 ? "0" + text : text));
      } catch (DateTimeException e) {
        fault(Scalars.quoted(text) + " is no time of the day; write hours and minutes like 07:30");
        return Optional.empty();
      }
    }

    Optional<Event> event() {
      Optional<Event> event = Event.of(text("event").toLowerCase(Locale.ROOT));
      if (event.isEmpty()) {
        fault(
            Scalars.quoted(text("event"))
                + " is no event; the events are "
                + String.join(", ", Arrays.stream(Event.values()).map(Event::word).toList()));
      }
      return event;
    }

    String batch(Event event) {
      if (text("batch").isEmpty()) {
        fault("a row of \"" + event.word() + "\" needs the name of its batch");
      }
      return text("batch");
    }

    String crop(Event event) {
      String name = text("crop");
      if (name.isEmpty()) {
        if (event == Event.SOW) {
          fault("a sowing needs its crop, by its name in docs/crops.md or your file");
        }
        return "";
      }
      Optional<Crop> crop = catalogue.find(name);
      if (crop.isEmpty()) {
        List<String> near = catalogue.suggestions(name);
        fault(
            Scalars.quoted(name)
                + " is not a crop of the catalogue or your file"
                + (near.isEmpty() ? "" : " (did you mean \"" + near.get(0) + "\"?)"));
      }
      return crop.map(Crop::name).orElse("");
    }

    OptionalInt count() {
      String text = text("count");
      if (text.isEmpty()) {
        return OptionalInt.empty();
      }
      if (!text.matches("\\d{1,7}")
          || Integer.parseInt(text) < 1
          || Integer.parseInt(text) > MOST) {
        fault(Scalars.quoted(text) + " is not a count; write a whole number from 1 on");
        return OptionalInt.empty();
      }
      return OptionalInt.of(Integer.parseInt(text));
    }

    Optional<Where> place(Event event) {
      String text = text("place");
      if (text.isEmpty()) {
        if (event == Event.MOVE) {
          fault(
              "a move needs its place: nursery, or pots like "
                  + pots.get(0)
                  + "+"
                  + pots.get(pots.size() - 1));
        }
        if (POTS.contains(event)) {
          fault("a pot on the scales needs its name as place, like " + pots.get(0));
        }
        return Optional.of(new Where.Anywhere());
      }
      if (POTS.contains(event)) {
        return pots(text);
      }
      if (event == Event.SOW) {
        if (!text.matches("[1-9]\\d{0,3}")) {
          fault(Scalars.quoted(text) + " is not the number of cells sown; write it like 8");
          return Optional.empty();
        }
        return Optional.of(new Where.Cells(Integer.parseInt(text)));
      }
      if (text.equalsIgnoreCase(NURSERY)) {
        return Optional.of(new Where.Nursery());
      }
      return event.ofBatch() || potsOf(text).isPresent()
          ? pots(text)
          : Optional.of(new Where.Elsewhere(text));
    }

    private Optional<Where> pots(String text) {
      List<String> named = new ArrayList<>();
      for (String part : text.split("\\+", -1)) {
        Optional<String> pot = pot(part.strip());
        if (pot.isEmpty()) {
          fault(
              "%s is no pot of your bench; the first is %s, the last %s"
                  .formatted(Scalars.quoted(part.strip()), pots.get(0), pots.get(pots.size() - 1)));
        } else if (named.contains(pot.get())) {
          fault("pot " + pot.get() + " is named twice");
        }
        pot.ifPresent(named::add);
      }
      return wrong ? Optional.empty() : Optional.of(new Where.Pots(named));
    }

    private Optional<String> pot(String name) {
      return pots.stream().filter(pot -> pot.equalsIgnoreCase(name)).findFirst();
    }

    private Optional<String> potsOf(String text) {
      return pot(text.split("\\+", -1)[0].strip());
    }

    OptionalDouble grams(Event event) {
      boolean weighed = event == Event.WEIGH;
      if (text("grams").isEmpty()) {
        if (weighed) {
          fault("a weighing needs its grams: the fresh mass of one standing plant");
        }
        return OptionalDouble.empty();
      }
      OptionalDouble grams = JournalValue.number(text("grams"));
      if (grams.isEmpty() || grams.getAsDouble() < 0 || grams.getAsDouble() > MOST) {
        fault(Scalars.quoted(text("grams")) + " are no grams; write a number from 0 on, like 12.5");
      } else if (weighed && grams.getAsDouble() == 0) {
        fault("a standing plant weighs more than 0 g; write a dead one as lost");
      }
      return grams;
    }

    OptionalDouble value(Event event) {
      if (text("value").isEmpty()) {
        if (event == Event.WIDTH || !event.ofBatch()) {
          fault("a row of \"" + event.word() + "\" needs its value");
        }
        return OptionalDouble.empty();
      }
      if (event.ofBatch() && event.unit().isEmpty()) {
        return OptionalDouble.empty();
      }
      JournalValue value = JournalValue.of(event, text("value"), text("unit"));
      value.fault().ifPresent(this::fault);
      return value.base();
    }
  }
}
