package sallet.app.file;

import sallet.feed.FeedFault;
import sallet.feed.home.HomeMeter;
import sallet.feed.home.HomeShelf;
import sallet.household.FeedShelf;

/** The feed understands what is written about its water, its bags and its scale. */
final class ShelfChecks {
  private final Values values;
  private final Faults faults;
  private final FeedShelf shelf;

  ShelfChecks(Values values, Faults faults, FeedShelf shelf) {
    this.values = values;
    this.faults = faults;
    this.shelf = shelf;
  }

  void check() {
    attempt("feed.target", () -> HomeShelf.published(shelf));
    if (values.sound("feed.target")) {
      attempt("feed.wanted", () -> HomeShelf.target(shelf));
    }
    attempt("feed.ec", () -> HomeShelf.ecMsCm(shelf));
    attempt("feed.scale", () -> HomeShelf.scale(shelf));
    attempt(
        shelf.acid().density().isPresent() ? "feed.acidDensity" : "feed.acidStrength",
        () -> HomeShelf.acid(shelf));
    attempt("feed.water", () -> HomeShelf.water(shelf.water()));
    shelf
        .second()
        .ifPresent(second -> attempt("feed.secondWater", () -> HomeShelf.water(second.water())));
    attempt("feed.meter", this::meter);
    for (int i = 0; i < shelf.shelf().size(); i++) {
      FeedShelf.Item item = shelf.shelf().get(i);
      attempt("feed.shelf[" + i + "]", () -> HomeShelf.bag(item));
    }
  }

  private void meter() {
    new HomeMeter(shelf.meter()).check();
  }

  private void attempt(String path, Runnable reading) {
    if (!values.sound(path)) {
      return;
    }
    try {
      reading.run();
    } catch (FeedFault e) {
      e.sentences().forEach(sentence -> faults.add(path, values.line(path), sentence));
    }
  }
}
