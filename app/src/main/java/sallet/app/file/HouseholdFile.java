package sallet.app.file;

import java.util.List;
import sallet.household.Household;

/** What reading a household file gives. */
public sealed interface HouseholdFile {
  /** A household without faults. */
  record Good(Household household) implements HouseholdFile {}

  /** At least one fault, in the order of the file. */
  record Faulty(List<Fault> faults) implements HouseholdFile {
    public Faulty {
      faults = List.copyOf(faults);
    }
  }
}
