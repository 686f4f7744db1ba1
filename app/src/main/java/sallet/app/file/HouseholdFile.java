package sallet.app.file;

import java.util.List;
import sallet.crop.Catalogue;
import sallet.household.Household;

/** What reading a household file gives. */
public sealed interface HouseholdFile {
  /**
   * A household without faults.
   *
   * @param catalogue the crops it may name, with those of its own
   */
  record Good(Household household, Catalogue catalogue) implements HouseholdFile {}

  /** At least one fault, in the order of the file. */
  record Faulty(List<Fault> faults) implements HouseholdFile {
    public Faulty {
      faults = List.copyOf(faults);
    }
  }
}
