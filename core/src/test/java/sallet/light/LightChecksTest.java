package sallet.light;

import sallet.cases.CheckFilesTest;

class LightChecksTest extends CheckFilesTest {
  LightChecksTest() {
    super(new LightChecks());
  }
}
