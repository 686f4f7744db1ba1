package sallet.app.file;

import java.time.MonthDay;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import sallet.household.Outlook;

/** Makes what stands before a window. */
final class OutlookBuilder {
  /**
   * Shares of sky through crowns in leaf and bare, %. Source: Wilkinson 1992 as tabulated by
   * Tregenza and Sharples: mean of ten deciduous kinds, and Scots pine.
   */
  private static final double[] DECIDUOUS = {19, 51};

  private static final double[] EVERGREEN = {27, 30};

  private final Values values;
  private final String at;

  /**
   * @param at path of the window with a point behind
   */
  OutlookBuilder(Values values, String at) {
    this.values = values;
    this.at = at;
  }

  Outlook outlook() {
    return new Outlook(
        each(
                "horizon",
                p ->
                    new Outlook.Point(
                        values.base(p + "azimuth") % 360, values.base(p + "altitude")))
            .stream()
            .sorted(Comparator.comparingDouble(Outlook.Point::azimuthDeg))
            .toList(),
        each(
            "houses",
            p ->
                new Outlook.House(
                    values.base(p + "from"), values.base(p + "to"), values.base(p + "altitude"))),
        each("trees", this::tree),
        overhang());
  }

  private <T> List<T> each(String key, Function<String, T> make) {
    return IntStream.range(0, values.count(at + key))
        .mapToObj(i -> make.apply(at + key + "[" + i + "]."))
        .toList();
  }

  private Outlook.Tree tree(String p) {
    double[] usual = values.word(p + "kind").equals("evergreen") ? EVERGREEN : DECIDUOUS;
    boolean south = values.number("place.latitude") < 0;
    return new Outlook.Tree(
        values.base(p + "from"),
        values.base(p + "to"),
        values.base(p + "low"),
        values.base(p + "high"),
        (values.written(p + "summerSky") ? values.base(p + "summerSky") : usual[0]) / 100,
        (values.written(p + "winterSky") ? values.base(p + "winterSky") : usual[1]) / 100,
        day(p + "leafOut", south ? MonthDay.of(10, 20) : MonthDay.of(4, 20)),
        day(p + "leafFall", south ? MonthDay.of(4, 15) : MonthDay.of(10, 15)));
  }

  private MonthDay day(String path, MonthDay usual) {
    return values.get(path, MonthDay.class).orElse(usual);
  }

  private Optional<Outlook.Overhang> overhang() {
    String p = at + "overhang";
    return values.written(p)
        ? Optional.of(
            new Outlook.Overhang(
                values.base(p + ".above"), values.base(p + ".depth"), values.base(p + ".beside")))
        : Optional.empty();
  }
}
