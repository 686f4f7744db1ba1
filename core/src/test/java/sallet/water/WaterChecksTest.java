package sallet.water;

import sallet.cases.CheckFilesTest;

final class WaterChecksTest extends CheckFilesTest {
  WaterChecksTest() {
    super(new WaterChecks());
  }
}
