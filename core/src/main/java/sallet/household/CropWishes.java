package sallet.household;

import java.util.List;

/**
 * Crops by their catalogue name.
 *
 * @param want crops to plan with; empty means every crop that can be planned
 * @param avoid crops never to sow
 */
public record CropWishes(List<String> want, List<String> avoid) {
  public CropWishes {
    want = List.copyOf(want);
    avoid = List.copyOf(avoid);
  }
}
