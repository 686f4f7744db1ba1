package sallet.app.file;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import sallet.units.Dimension;
import sallet.units.Quantity;
import sallet.units.Unit;
import sallet.weather.Cities;
import sallet.weather.City;

/** Writes the tables of docs/household-file.md from the table of keys. */
final class HouseholdPage {
  private final Keys keys;

  HouseholdPage(Keys keys) {
    this.keys = keys;
  }

  /** The generated part of the page: keys, units and cities. */
  String tables() {
    StringBuilder page = new StringBuilder();
    for (Key top : keys.inside("")) {
      page.append("### ").append(top.name()).append("\n\n");
      page.append(sentence(top)).append("\n\n");
      page.append("| key | what it is | allowed | default | where the default comes from |\n");
      page.append("| --- | --- | --- | --- | --- |\n");
      keys.all().stream()
          .filter(key -> key.path().startsWith(top.path() + ".") || below(key, top))
          .forEach(key -> page.append(row(key)));
      page.append("\n");
    }
    units(page);
    cities(page);
    return page.toString().stripTrailing() + "\n";
  }

  private static boolean below(Key key, Key top) {
    return key.path().startsWith(top.path() + "[]");
  }

  private static String sentence(Key top) {
    String need = top.required() ? " Required." : "";
    String text = top.meaning();
    return Character.toUpperCase(text.charAt(0)) + text.substring(1) + "." + need;
  }

  private static String row(Key key) {
    return "| `%s` | %s | %s | %s | %s |%n"
        .formatted(key.path(), key.meaning(), range(key), standard(key), key.origin())
        .replace("\r", "");
  }

  static String standard(Key key) {
    String text = key.standard();
    return text.startsWith("(") ? text.substring(1, text.length() - 1) : text;
  }

  static String range(Key key) {
    return switch (key.form()) {
      case SECTION -> "keys";
      case LIST -> "list of groups, at most " + (int) key.max();
      case SECTION_OR_LIST -> "keys, or a list of " + span(key) + " groups";
      case SECTION_OR_NONE -> "keys, or `none`";
      case QUANTITY -> quantity(key);
      case MONTHLY -> quantity(key) + "; one or 12";
      case TWELVE -> "12 times " + quantity(key);
      case NUMBER -> "number, " + span(key);
      case WHOLE -> "whole number, " + span(key);
      case WORDS -> "text, " + span(key) + " characters";
      case TEXT -> span(key) + " letters, digits, spaces, points, hyphens";
      case CHOICE -> String.join(", ", key.choices());
      case YES -> "`true`";
      case DATE -> "date, like 2027-07-03";
      case YEARDAY -> "day of the year, like 04-20";
      case FILE -> "name of a file";
      case CLOCK -> "time of day, 00:00 to 23:59";
      case ZONE -> "IANA time zone";
      case CITY -> "a city of the list below";
      case DAYS -> "list of weekdays, English, short or full";
      case CROPS -> "list of crop names, at most " + (int) key.max();
    };
  }

  private static String quantity(Key key) {
    return Quantity.write(key.min(), key.max(), key.measures().base());
  }

  private static String span(Key key) {
    return Quantity.plain(key.min()) + " to " + Quantity.plain(key.max());
  }

  private static void units(StringBuilder page) {
    page.append("## Units\n\n| quantity | units |\n| --- | --- |\n");
    for (Dimension dimension : Dimension.values()) {
      String symbols =
          dimension.units().stream().map(Unit::symbol).collect(Collectors.joining(", "));
      page.append("| ").append(dimension.what()).append(" | ").append(symbols).append(" |\n");
    }
    page.append("\n");
  }

  private static void cities(StringBuilder page) {
    page.append("## Built-in cities\n\n");
    Map<String, List<City>> byCountry =
        Cities.all().stream()
            .collect(Collectors.groupingBy(City::country, TreeMap::new, Collectors.toList()));
    byCountry.forEach(
        (country, cities) ->
            page.append("- ")
                .append(country)
                .append(": ")
                .append(cities.stream().map(City::name).collect(Collectors.joining(", ")))
                .append("\n"));
  }
}
