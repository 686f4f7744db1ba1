package sallet.app.file;

import java.util.List;
import sallet.journal.Journal;

/** What reading a journal gives. */
public sealed interface JournalFile {
  /**
   * A journal without faults.
   *
   * @param warnings what was passed over
   */
  record Good(Journal journal, List<Fault> warnings) implements JournalFile {
    public Good {
      warnings = List.copyOf(warnings);
    }
  }

  /** At least one fault, in the order of the file. */
  record Faulty(List<Fault> faults) implements JournalFile {
    public Faulty {
      faults = List.copyOf(faults);
    }
  }
}
