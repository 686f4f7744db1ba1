package sallet.feed;

import sallet.cases.CheckFilesTest;

final class FeedChecksTest extends CheckFilesTest {
  FeedChecksTest() {
    super(new FeedChecks());
  }
}
