package sallet.household;

import java.util.List;
import java.util.Optional;

/**
 * One household: who eats, when they are away, what they like, where the room is and what stands in
 * it. Everything the other packages need, and nothing computed.
 *
 * @param lamp the lamp above the bench, empty when daylight is all there is
 */
public record Household(
    Eaters eaters,
    List<Absence> absences,
    CropWishes crops,
    Place place,
    Room room,
    Bench bench,
    Optional<Lamp> lamp,
    Nursery nursery,
    Reservoir reservoir,
    FeedShelf feed) {

  /** A household that mixes its solution from the usual salts. */
  public Household(
      Eaters eaters,
      List<Absence> absences,
      CropWishes crops,
      Place place,
      Room room,
      Bench bench,
      Optional<Lamp> lamp,
      Nursery nursery,
      Reservoir reservoir) {
    this(eaters, absences, crops, place, room, bench, lamp, nursery, reservoir, FeedShelf.usual());
  }

  public Household {
    absences = List.copyOf(absences);
  }
}
