package sallet.app.file;

import sallet.units.Quantity;

/** An example of what to write behind a key. */
final class Wanted {
  private static final String SUCH_AS = "such as ";

  private Wanted() {}

  static String example(Key key) {
    return switch (key.form()) {
      case QUANTITY -> "write a quantity like " + quantity(key);
      case MONTHLY -> "write one quantity like " + quantity(key) + ", or a list of 12";
      case TWELVE -> "write a list of 12 quantities like [" + quantity(key) + ", ...]";
      case NUMBER, WHOLE ->
          "write a number from " + Quantity.plain(key.min()) + " to " + Quantity.plain(key.max());
      case CHOICE -> "write one of " + String.join(", ", key.choices());
      case YES -> "write true";
      case DATE -> "write a date like 2027-07-03";
      case YEARDAY -> "write a day of the year like 04-20";
      case FILE -> "write the name of a file beside this one";
      case CLOCK -> "write a time of day like 06:00";
      case ZONE -> "write a time zone like Pacific/Auckland";
      case CITY -> "write the name of a built-in city";
      case DAYS -> "write a list of weekdays like [Wed, Sat]";
      case CROPS -> "write a list of crop names like [mizuna, Swiss chard]";
      case WORDS -> "write a text like " + words(key);
      case TEXT -> "write a short name like A1";
      case SECTION, SECTION_OR_LIST, SECTION_OR_NONE, LIST -> "write its keys";
    };
  }

  private static String words(Key key) {
    int example = key.meaning().indexOf(SUCH_AS);
    if (key.required() && example >= 0) {
      return key.meaning().substring(example + SUCH_AS.length());
    }
    return key.path().startsWith("feed.water") ? "52 mg/L" : key.standard();
  }

  private static String quantity(Key key) {
    return key.standard().matches("-?[\\d.]+.*")
        ? key.standard()
        : Quantity.write(Math.ceil((key.min() + key.max()) / 4), key.measures().base());
  }
}
