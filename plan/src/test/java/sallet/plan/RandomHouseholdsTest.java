package sallet.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import sallet.crop.Catalogue;
import sallet.household.Household;
import sallet.household.Pot;

/** The invented households are what they promise to be. */
class RandomHouseholdsTest {
  private static final Catalogue CATALOGUE = Catalogue.builtIn();

  private static final List<RandomHouseholds.Wish> SMALL =
      LongStream.range(0, 500).mapToObj(seed -> RandomHouseholds.small(seed, CATALOGUE)).toList();

  @Test
  void theSameSeedGivesTheSameHousehold() {
    assertThat(RandomHouseholds.small(7, CATALOGUE)).isEqualTo(SMALL.get(7));
    assertThat(RandomHouseholds.small(8, CATALOGUE).household())
        .isNotEqualTo(SMALL.get(7).household());
  }

  @Test
  void smallHouseholdsAreSmall() {
    for (RandomHouseholds.Wish wish : SMALL) {
      Household household = wish.household();
      assertThat(household.bench().pots()).hasSizeBetween(1, 8);
      assertThat(household.crops().want()).hasSizeBetween(1, 4);
      assertThat(household.nursery().cells()).isBetween(1, 12);
      assertThat(household.nursery().places()).isBetween(1, 10);
      assertThat(household.absences()).hasSizeBetween(0, 2);
      assertThat(household.room().windows()).hasSizeBetween(0, 3);
      assertThat(household.place().latitudeDeg()).isBetween(-60.0, 65.0);
      assertThat(wish.bowls()).isBetween(1, 8);
    }
  }

  @Test
  void potsStandOnTheTrayUnderNamesOfTheirOwn() {
    for (RandomHouseholds.Wish wish : SMALL) {
      var bench = wish.household().bench();
      assertThat(bench.pots()).extracting(Pot::name).doesNotHaveDuplicates();
      assertThat(bench.pots())
          .allSatisfy(pot -> assertThat(pot.xM()).isBetween(0.0, bench.widthM()))
          .allSatisfy(pot -> assertThat(pot.yM()).isBetween(0.0, bench.depthM()));
    }
  }

  @Test
  void everyKindOfHouseholdComesUp() {
    assertThat(SMALL).anyMatch(wish -> wish.household().lamp().isEmpty());
    assertThat(SMALL).anyMatch(wish -> wish.household().room().windows().isEmpty());
    assertThat(SMALL).anyMatch(wish -> wish.household().room().windows().size() == 3);
    assertThat(SMALL).anyMatch(wish -> wish.household().absences().size() == 2);
    assertThat(SMALL).anyMatch(wish -> wish.household().nursery().ppfdUmol() == 0);
    assertThat(SMALL).anyMatch(wish -> wish.household().place().latitudeDeg() < -50);
    assertThat(SMALL).anyMatch(wish -> wish.household().eaters().taskDays().size() == 1);
    assertThat(SMALL).anyMatch(wish -> !wish.household().crops().avoid().isEmpty());
  }

  @Test
  void fullSizeHouseholdsFillABench() {
    for (long seed = 0; seed < 50; seed++) {
      RandomHouseholds.Wish wish = RandomHouseholds.fullSize(seed, CATALOGUE);
      assertThat(wish.household().bench().pots()).hasSizeBetween(15, 40);
      assertThat(wish.bowls()).isBetween(26, 52);
    }
  }
}
