package sallet.plan;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import sallet.household.CropWishes;
import sallet.household.Eaters;
import sallet.household.Household;
import sallet.household.Lamp;
import sallet.units.Quantity;

/**
 * What limits the bowl: the question asked again with one thing changed. The plan with fractions of
 * plants answers, because the luck of whole plants is larger than what one more place brings.
 */
public final class WhatIf {
  /** Hours by which lamps are lit longer, where their day leaves so many dark. */
  private static final double LONGER_HOURS = 2;

  /** A lamp lit so nearly all day is not lit longer, h. */
  private static final double HARDLY_DARK_HOURS = 0.25;

  private static final double DAY_HOURS = 24;

  /** How much stronger a lamp is tried. */
  private static final double STRONGER = 1.5;

  private final Planner.Request request;
  private final Surroundings at;
  private final Duration time;
  private final BooleanSupplier cancelled;

  /**
   * What one change brings.
   *
   * @param change what was changed, a clause such as "one more nursery place"
   * @param gramsPerWeek grams of bowl it brings a week, counted as the plan counts what is missing,
   *     wasted or sown; below 0 what it costs
   */
  public record Bottleneck(String change, double gramsPerWeek) {}

  private record Change(
      String words, Planner.Request request, Supplier<Surroundings> surroundings) {}

  private WhatIf(Planner.Request request, Duration time, BooleanSupplier cancelled) {
    this.request = request;
    this.at = Question.surroundings(request);
    this.time = time;
    this.cancelled = cancelled;
  }

  /**
   * Changes in order of what they bring, most first; those tried before it was cancelled.
   *
   * @param request the question as it is
   * @param sown crops its plan sows: each is tried without
   * @param time time for each change, by the clock
   * @param progress told one short line for each change
   * @param cancelled asked often; once true no more is tried
   */
  public static List<Bottleneck> of(
      Planner.Request request,
      List<String> sown,
      Duration time,
      Consumer<String> progress,
      BooleanSupplier cancelled) {
    return new WhatIf(request, time, cancelled).ranked(sown, progress);
  }

  private List<Bottleneck> ranked(List<String> sown, Consumer<String> progress) {
    progress.accept("What if nothing changed");
    Instance base = instance(request, at);
    OptionalDouble before = points(base);
    List<Bottleneck> found = new ArrayList<>();
    List<Change> changes = before.isEmpty() ? List.of() : changes(sown);
    for (int i = 0; i < changes.size() && !cancelled.getAsBoolean(); i++) {
      Change change = changes.get(i);
      progress.accept("What if %s (%d of %d)".formatted(change.words, i + 1, changes.size()));
      Instance changed = instance(change.request, change.surroundings.get()).from(base.firstBowl());
      points(changed)
          .ifPresent(
              after ->
                  found.add(
                      new Bottleneck(
                          change.words,
                          (before.getAsDouble() - after)
                              / Weights.SHORT
                              / base.calendar().bowls())));
    }
    found.sort(Comparator.comparingDouble(Bottleneck::gramsPerWeek).reversed());
    return found;
  }

  private static Instance instance(Planner.Request asked, Surroundings there) {
    Instance question = Question.of(asked, there);
    return question.reaching(Courses.all(question));
  }

  /** Points of the plan with fractions of plants; empty when the time did not suffice. */
  private OptionalDouble points(Instance instance) {
    List<LifeGraph> graphs = Courses.all(instance).parallelStream().map(LifeGraph::new).toList();
    try (Master exact = new Master(instance, graphs, false)) {
      LinearPlan.Result linear =
          new LinearPlan(instance, graphs, step -> {})
              .solve(exact, new Deadline(time, cancelled), true);
      return linear.converged() ? OptionalDouble.of(linear.value()) : OptionalDouble.empty();
    }
  }

  /** The changes that can be made to the household, in words. */
  static List<String> asked(Planner.Request request, List<String> sown) {
    return new WhatIf(request, Duration.ZERO, () -> true)
        .changes(sown).stream().map(Change::words).toList();
  }

  private List<Change> changes(List<String> sown) {
    Household h = request.household();
    List<Change> changes = new ArrayList<>();
    changes.add(
        new Change("one more cell", request, () -> at.holding(at.cells() + 1, at.places())));
    changes.add(
        new Change(
            "one more nursery place", request, () -> at.holding(at.cells(), at.places() + 1)));
    for (int g = 0; g < at.groups().size(); g++) {
      int group = g;
      String like = at.groups().size() == 1 ? "" : " like " + at.groups().get(g).pots().get(0);
      changes.add(new Change("one more pot" + like, request, () -> at.withPot(group)));
    }
    if (!h.lamps().isEmpty()) {
      longer(h.lamps()).ifPresent(changes::add);
      changes.add(lamps("lamps half as strong again", WhatIf::stronger));
    }
    changes.add(new Change("one person more", asking(h.withEaters(oneMore(h.eaters()))), () -> at));
    for (String crop : sown) {
      without(crop)
          .ifPresent(
              wishes ->
                  changes.add(new Change("no " + crop, asking(h.withCrops(wishes)), () -> at)));
    }
    return changes;
  }

  private Change lamps(String words, UnaryOperator<Lamp> change) {
    Household h = request.household();
    Planner.Request asked = asking(h.withLamps(h.lamps().stream().map(change).toList()));
    return new Change(words, asked, () -> Question.surroundings(asked));
  }

  private Planner.Request asking(Household changed) {
    return new Planner.Request(
        changed,
        request.catalogue(),
        request.from(),
        request.weeks(),
        request.margin(),
        request.present(),
        request.effort(),
        request.solver());
  }

  /** Lamps lit longer, by what the night of each leaves; empty when all burn day and night. */
  private Optional<Change> longer(List<Lamp> lamps) {
    List<Lamp> dark = lamps.stream().filter(WhatIf::goesDark).toList();
    double hours =
        dark.stream()
            .mapToDouble(lamp -> Math.min(LONGER_HOURS, DAY_HOURS - lamp.hours()))
            .min()
            .orElse(0);
    String which = dark.size() == lamps.size() ? "lamps" : "lamps not lit all day";
    return dark.isEmpty()
        ? Optional.empty()
        : Optional.of(
            lamps(
                "%s lit %s h longer".formatted(which, Quantity.plain(hours)),
                lamp -> goesDark(lamp) ? lamp.litFor(lamp.hours() + hours) : lamp));
  }

  private static boolean goesDark(Lamp lamp) {
    return lamp.hours() <= DAY_HOURS - HARDLY_DARK_HOURS;
  }

  private static Lamp stronger(Lamp lamp) {
    return lamp.ofPower(STRONGER * lamp.powerW());
  }

  private static Eaters oneMore(Eaters eaters) {
    int people = eaters.people() + 1;
    return new Eaters(
        people, eaters.bowlGrams() * people / eaters.people(), eaters.kinds(), eaters.taskDays());
  }

  /** Wishes without a crop; empty when nothing would be left to want. */
  private Optional<CropWishes> without(String crop) {
    CropWishes wishes = request.household().crops();
    List<String> want =
        wishes.want().stream()
            .filter(w -> request.catalogue().find(w).stream().noneMatch(c -> c.name().equals(crop)))
            .toList();
    List<String> avoid = Stream.concat(wishes.avoid().stream(), Stream.of(crop)).toList();
    return want.isEmpty() && !wishes.want().isEmpty()
        ? Optional.empty()
        : Optional.of(new CropWishes(want, avoid));
  }
}
