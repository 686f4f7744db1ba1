package sallet.plan;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import sallet.crop.Catalogue;
import sallet.household.Absence;
import sallet.household.Bench;
import sallet.household.CropWishes;
import sallet.household.Household;
import sallet.household.Nursery;

/** Questions without an answer say what would have to change. */
class NoAnswerTest {
  private static final Household BENCH =
      Households.bench(100, List.of("loose-leaf lettuce, green"), List.of());

  private static void refused(Household household, int weeks, String... words) {
    assertThatThrownBy(
            () ->
                Planner.plan(
                    new Planner.Request(
                        household,
                        Catalogue.builtIn(),
                        Households.START,
                        weeks,
                        1,
                        Effort.counted(1)),
                    step -> {}))
        .isInstanceOf(NoPlan.class)
        .hasMessageContainingAll(words);
  }

  private static Household with(Nursery nursery) {
    return household(nursery, BENCH.crops(), List.of());
  }

  private static Household household(Nursery nursery, CropWishes crops, List<Absence> absences) {
    Bench bench = BENCH.bench();
    return new Household(
        BENCH.eaters(),
        absences,
        crops,
        BENCH.place(),
        BENCH.room(),
        bench,
        BENCH.lamp(),
        nursery,
        BENCH.reservoir());
  }

  private static Nursery nursery(int cells, int places, double ppfdUmol, double dayC) {
    Nursery n = BENCH.nursery();
    return new Nursery(cells, places, 16, 49, ppfdUmol, n.on(), 16, dayC, dayC - 2);
  }

  @Test
  void withoutCells() {
    refused(with(nursery(0, 4, 150, 20)), 10, "cells", "nursery.cells");
  }

  @Test
  void withoutNurseryPlaces() {
    refused(with(nursery(4, 0, 150, 20)), 10, "nursery.places");
  }

  @Test
  void withoutACrop() {
    refused(
        household(
            BENCH.nursery(),
            new CropWishes(
                List.of("loose-leaf lettuce, green"), List.of("loose-leaf lettuce, green")),
            List.of()),
        10,
        "crops.avoid");
  }

  @Test
  void withNobodyAtHome() {
    refused(
        household(
            BENCH.nursery(),
            BENCH.crops(),
            List.of(new Absence(Households.START, Households.START.plusDays(40), 2))),
        3,
        "away",
        "--weeks");
  }

  @Test
  void whereNothingComesUp() {
    refused(
        household(nursery(4, 4, 150, 8), new CropWishes(List.of("basil"), List.of()), List.of()),
        10,
        "comes up",
        "nursery.day");
  }

  @Test
  void inTooShortATime() {
    refused(BENCH, 3, "--weeks");
  }
}
