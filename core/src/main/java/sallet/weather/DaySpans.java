package sallet.weather;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The stretches of a day in which something lasts, such as the sun being up or a lamp being on.
 *
 * @param spans in order, apart from each other, within 0 to 24 h
 */
public record DaySpans(List<Span> spans) {
  /** Nothing of the day. */
  public static final DaySpans NONE = new DaySpans(List.of());

  /** The whole day. */
  public static final DaySpans ALL_DAY = new DaySpans(List.of(new Span(0, 24)));

  public DaySpans {
    spans = List.copyOf(spans);
  }

  /**
   * One stretch.
   *
   * @param fromHour start, 0 to 24 h
   * @param toHour end, 0 to 24 h
   */
  public record Span(double fromHour, double toHour) {
    double hours() {
      return toHour - fromHour;
    }
  }

  /** What starts at the same hour every day and lasts for some hours, past midnight if need be. */
  public static DaySpans daily(double startHour, double hours) {
    if (hours <= 0) {
      return NONE;
    }
    double end = startHour + hours;
    if (hours >= 24) {
      return ALL_DAY;
    }
    return end <= 24
        ? new DaySpans(List.of(new Span(startHour, end)))
        : new DaySpans(List.of(new Span(0, end - 24), new Span(startHour, 24)));
  }

  /** The stretches of this or of the other. */
  public DaySpans or(DaySpans other) {
    List<Span> all = new ArrayList<>(spans);
    all.addAll(other.spans);
    all.sort(Comparator.comparingDouble(Span::fromHour));
    List<Span> merged = new ArrayList<>();
    for (Span span : all) {
      int last = merged.size() - 1;
      if (last >= 0 && span.fromHour() <= merged.get(last).toHour()) {
        Span before = merged.get(last);
        merged.set(last, new Span(before.fromHour(), Math.max(before.toHour(), span.toHour())));
      } else {
        merged.add(span);
      }
    }
    return new DaySpans(merged);
  }

  /** How long they last together, h. */
  public double hours() {
    return spans.stream().mapToDouble(Span::hours).sum();
  }

  /** Share of the hour that begins at {@code hour} they fill, 0 to 1. */
  public double shareOfHour(int hour) {
    double share = 0;
    for (Span span : spans) {
      share += Math.max(0, Math.min(hour + 1, span.toHour()) - Math.max(hour, span.fromHour()));
    }
    return share;
  }

  /** Whether a moment, in hours from midnight, lies in one of them. */
  public boolean contains(double hour) {
    for (Span span : spans) {
      if (span.fromHour() <= hour && hour < span.toHour()) {
        return true;
      }
    }
    return false;
  }
}
