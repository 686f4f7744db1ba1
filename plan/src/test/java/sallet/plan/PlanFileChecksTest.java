package sallet.plan;

import sallet.cases.CheckFilesTest;

class PlanFileChecksTest extends CheckFilesTest {
  PlanFileChecksTest() {
    super(new PlanFileChecks());
  }
}
