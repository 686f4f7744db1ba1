package sallet.learn;

import java.time.LocalDate;
import java.util.List;

/**
 * A reading of how large plants are.
 *
 * @param line line of its row
 * @param kind what was read
 * @param plants the plants read, or all it may have been; the value is their mean
 * @param picksBefore picks each of them had had
 * @param value fresh grams of a pot, or crown diameter, cm
 */
record PlantReading(
    int line,
    LocalDate date,
    Kind kind,
    List<PlantStory> plants,
    List<Integer> picksBefore,
    double value) {
  PlantReading {
    plants = List.copyOf(plants);
    picksBefore = List.copyOf(picksBefore);
  }

  /** What was read, with how far it strays from the plant the factor would grow. Judgement. */
  enum Kind {
    /** Standing plant on the scale. */
    WEIGHED(0.1),
    /** Lifted plant, of which the edible part was weighed. */
    LIFTED(0.14),
    /** Leaves picked, with the share they were by eye. */
    PICKED(0.25),
    /** Crown measured across. */
    MEASURED(0.2);

    private final double sd;

    Kind(double sd) {
      this.sd = sd;
    }

    /** Standard deviation of the logarithm of the value. */
    double sd() {
      return sd;
    }
  }
}
