package sallet.household;

import java.util.List;
import java.util.Optional;

/**
 * One household: who eats, when they are away, what they like, where the room is and what stands in
 * it. Everything the other packages need, and nothing computed.
 *
 * @param lamps the lamps above the bench, none when daylight is all there is
 * @param feed what the nutrient solution is mixed from
 * @param readings the grower's own readings of light
 * @param watering how the bench is watered
 * @param tariff what electricity costs, when the grower told
 */
public record Household(
    Eaters eaters,
    List<Absence> absences,
    CropWishes crops,
    Place place,
    Room room,
    Bench bench,
    List<Lamp> lamps,
    Nursery nursery,
    Reservoir reservoir,
    FeedShelf feed,
    List<LightReading> readings,
    Watering watering,
    Optional<Tariff> tariff) {
  public Household {
    absences = List.copyOf(absences);
    lamps = List.copyOf(lamps);
    readings = List.copyOf(readings);
  }

  /** A household with at most one lamp, the usual salts and neither readings nor tariff. */
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
    this(
        eaters,
        absences,
        crops,
        place,
        room,
        bench,
        lamp.stream().toList(),
        nursery,
        reservoir,
        FeedShelf.usual(),
        List.of(),
        Watering.usual(),
        Optional.empty());
  }

  /** The first lamp above the bench, empty when daylight is all there is. */
  public Optional<Lamp> lamp() {
    return lamps.stream().findFirst();
  }

  /** The same household with other lamps. */
  public Household withLamps(List<Lamp> others) {
    return new Household(
        eaters, absences, crops, place, room, bench, others, nursery, reservoir, feed, readings,
        watering, tariff);
  }

  /** The same household with another bench. */
  public Household withBench(Bench other) {
    return new Household(
        eaters, absences, crops, place, room, other, lamps, nursery, reservoir, feed, readings,
        watering, tariff);
  }

  /** The same household with another reservoir. */
  public Household withReservoir(Reservoir other) {
    return new Household(
        eaters, absences, crops, place, room, bench, lamps, nursery, other, feed, readings,
        watering, tariff);
  }

  /** The same household with other readings. */
  public Household withReadings(List<LightReading> others) {
    return new Household(
        eaters, absences, crops, place, room, bench, lamps, nursery, reservoir, feed, others,
        watering, tariff);
  }

  /** The same household watered otherwise. */
  public Household withWatering(Watering other) {
    return new Household(
        eaters, absences, crops, place, room, bench, lamps, nursery, reservoir, feed, readings,
        other, tariff);
  }

  /** The same household in another room, or in other air. */
  public Household withRoom(Room other) {
    return new Household(
        eaters, absences, crops, place, other, bench, lamps, nursery, reservoir, feed, readings,
        watering, tariff);
  }

  /** The same household with other eaters. */
  public Household withEaters(Eaters other) {
    return new Household(
        other, absences, crops, place, room, bench, lamps, nursery, reservoir, feed, readings,
        watering, tariff);
  }

  /** The same household with other wishes for crops. */
  public Household withCrops(CropWishes other) {
    return new Household(
        eaters, absences, other, place, room, bench, lamps, nursery, reservoir, feed, readings,
        watering, tariff);
  }

  /** The same household with other absences. */
  public Household withAbsences(List<Absence> others) {
    return new Household(
        eaters, others, crops, place, room, bench, lamps, nursery, reservoir, feed, readings,
        watering, tariff);
  }
}
