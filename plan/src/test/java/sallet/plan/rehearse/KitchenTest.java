package sallet.plan.rehearse;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import sallet.crop.Catalogue;
import sallet.crop.Crop;

class KitchenTest {
  private static final Crop LETTUCE = crop("loose-leaf lettuce, green");
  private static final Crop MIZUNA = crop("mizuna");
  private static final Crop BASIL = crop("basil");

  private final Kitchen kitchen = new Kitchen(0.4);

  private static Crop crop(String name) {
    return Catalogue.builtIn().find(name).orElseThrow();
  }

  @Test
  void everyKindGetsItsShareFirst() {
    kitchen.bring(LETTUCE, 200);
    kitchen.bring(MIZUNA, 50);
    Kitchen.Bowl bowl = kitchen.eat(100);
    assertThat(bowl).isEqualTo(new Kitchen.Bowl(100, 2, 0));
    assertThat(kitchen.fridge().get(MIZUNA.name())).isCloseTo(10, within(1e-9));
    assertThat(kitchen.fridge().get(LETTUCE.name())).isCloseTo(140, within(1e-9));
  }

  @Test
  void whatKeepsIsEatenFirstAWeekLaterAndSpoilsAfterThat() {
    kitchen.bring(LETTUCE, 150);
    kitchen.eat(100);
    kitchen.bring(MIZUNA, 90);
    assertThat(kitchen.eat(100)).isEqualTo(new Kitchen.Bowl(100, 2, 0));
    assertThat(kitchen.fridge().get(MIZUNA.name())).isCloseTo(40, within(1e-9));
    assertThat(kitchen.eat(0).spoiltGrams()).isCloseTo(40, within(1e-9));
  }

  @Test
  void whatDoesNotKeepSpoilsAtOnce() {
    kitchen.bring(BASIL, 30);
    assertThat(kitchen.eat(10)).isEqualTo(new Kitchen.Bowl(10, 1, 20));
    assertThat(kitchen.fridge()).isEmpty();
  }

  @Test
  void aFullFridgeStillLeavesATasteOfOtherKinds() {
    kitchen.bring(LETTUCE, 300);
    kitchen.eat(100);
    kitchen.bring(MIZUNA, 50);
    assertThat(kitchen.eat(100).kinds()).isEqualTo(2);
  }
}
