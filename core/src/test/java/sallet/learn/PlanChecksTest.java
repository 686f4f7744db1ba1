package sallet.learn;

import sallet.cases.CheckFilesTest;

/** The check files of the plan that concern learning. */
class PlanChecksTest extends CheckFilesTest {
  PlanChecksTest() {
    super(new PlanChecks());
  }
}
