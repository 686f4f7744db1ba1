package sallet.app.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import sallet.plan.SowingPlan.PickNow;
import sallet.plan.WhatIf.Bottleneck;

/** Sentences a plan's text and page share. */
final class PlanWords {
  /** What the band of a bowl means. */
  static final String LUCK =
      "In brackets: grams in the bowl in eight of ten seasons when the plan is followed as it is,"
          + " where they differ. Plan again each week and most of the bad luck is made good.";

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

  /** What changes to the household would bring; those that bring nothing in one sentence. */
  static List<String> bottlenecks(List<Bottleneck> all) {
    List<String> told = new ArrayList<>();
    List<String> nothing = new ArrayList<>();
    for (Bottleneck b : all) {
      double grams = b.gramsPerWeek();
      if (Math.abs(grams) < SMALL_GRAMS) {
        nothing.add(b.change());
      } else {
        told.add(
            String.format(
                Locale.ROOT,
                "%s: %s %.1f g of bowl a week.",
                capital(b.change()),
                grams > 0 ? "brings" : "costs",
                Math.abs(grams)));
      }
    }
    if (!nothing.isEmpty()) {
      told.add("Next to nothing either way: " + String.join("; ", nothing) + ".");
    }
    return told;
  }

  private static String capital(String text) {
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }

  /** Grams a week not worth a number. */
  private static final double SMALL_GRAMS = 0.1;
}
