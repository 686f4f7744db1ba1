package sallet.crop;

import sallet.cases.CheckFilesTest;

/** The check files of crop. */
class CropChecksTest extends CheckFilesTest {
  CropChecksTest() {
    super(new CropChecks());
  }
}
