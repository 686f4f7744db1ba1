package sallet.plan.check;

import java.util.Locale;

/**
 * One place where a plan breaks a rule.
 *
 * @param rule the rule
 * @param where part of the plan, such as "batch B3, course 2"
 * @param what the quantity or circumstance that is wrong
 * @param expected what the rule asks for
 * @param found what the plan says
 */
public record Fault(Rule rule, String where, String what, String expected, String found) {

  /** A fault in a number. */
  static Fault number(Rule rule, String where, String what, double expected, double found) {
    return new Fault(rule, where, what, text(expected), text(found));
  }

  /** A number above its limit. */
  static Fault above(Rule rule, String where, String what, double limit, double found) {
    return new Fault(rule, where, what, "at most " + text(limit), text(found));
  }

  /** A number below its limit. */
  static Fault below(Rule rule, String where, String what, double limit, double found) {
    return new Fault(rule, where, what, "at least " + text(limit), text(found));
  }

  private static String text(double value) {
    return value == Math.rint(value) && Math.abs(value) < 1e9
        ? Long.toString((long) value)
        : String.format(Locale.ROOT, "%.6f", value);
  }

  @Override
  public String toString() {
    return String.format(
        "%s at %s: %s should be %s, is %s. %s",
        rule, where, what, expected, found, rule.sentence());
  }
}
