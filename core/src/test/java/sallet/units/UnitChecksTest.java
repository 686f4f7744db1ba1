package sallet.units;

import sallet.cases.CheckFilesTest;

class UnitChecksTest extends CheckFilesTest {
  UnitChecksTest() {
    super(new UnitChecks());
  }
}
