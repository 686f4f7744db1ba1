package sallet.feed;

import sallet.cases.CheckFilesTest;

final class ChemistryChecksTest extends CheckFilesTest {
  ChemistryChecksTest() {
    super(new ChemistryChecks());
  }
}
