package sallet.app.report;

import java.util.Locale;
import sallet.plan.SowingPlan.PickNow;
import sallet.plan.WhatIf.Bottleneck;

/** Sentences a plan's text and page share. */
final class PlanWords {
  private PlanWords() {}

  /** What to take from one pot, and why. */
  static String pickNow(PickNow pick) {
    return "%s from %s (%s): %s; %s."
        .formatted(
            pick.lift() ? "Lift all" : "Pick " + Words.grams(pick.grams()),
            pick.place(),
            Words.spoken(pick.crop()),
            pick.lift() ? "about " + Words.grams(pick.grams()) : "outer leaves",
            pick.why());
  }

  /** What a change to the household would bring. */
  static String bottleneck(Bottleneck b) {
    double grams = b.gramsPerWeek();
    String brings =
        Math.abs(grams) < SMALL_GRAMS
            ? "next to nothing"
            : String.format(
                Locale.ROOT,
                "%s %.1f g of bowl a week",
                grams > 0 ? "brings" : "costs",
                Math.abs(grams));
    return b.change().substring(0, 1).toUpperCase(Locale.ROOT)
        + b.change().substring(1)
        + ": "
        + brings
        + ".";
  }

  /** Grams a week not worth a number. */
  private static final double SMALL_GRAMS = 0.1;
}
