package sallet.app.file;

import java.util.List;

/** What the YAML parser found wrong, said for a grower. */
final class Syntax {
  private record Saying(String sign, String sentence) {}

  private static final List<Saying> SAYINGS =
      List.of(
          new Saying("TAB", "a tab stands here; indent with spaces"),
          new Saying(
              "mapping values are not allowed here",
              "a colon stands where none fits; check the indent of this line and the one before, "
                  + "and put text that holds \": \" in quotes"),
          new Saying(
              "could not find expected ':'", "this key has no value; write it as \"key: value\""),
          new Saying(
              "expected ',' or ']'",
              "a list in [ ] does not end properly; check its commas and brackets"),
          new Saying(
              "expected ',' or '}'",
              "a group in { } does not end properly; check its commas and braces"),
          new Saying(
              "unexpected end of stream", "a quote is opened and never closed; close the quote"),
          new Saying(
              "expected <block end>",
              "the indent does not fit; keys of one group begin in the same column"),
          new Saying(
              "cannot start any token",
              "this sign cannot begin a value here; put the text in quotes"),
          new Saying("undefined alias", "aliases (*) are not used here; write the value out"),
          new Saying("anchor", "anchors (&) and aliases (*) are not used here; write values out"),
          new Saying("tag", "tags (!) are not used here; delete the tag"),
          new Saying("directive", "directives (%) are not used here; delete this line"));

  private Syntax() {}

  /** Whether the parser notices the problem after the line in which it lies. */
  static boolean beginsEarlier(String problem) {
    return problem.contains("could not find expected ':'")
        || problem.contains("unexpected end of stream");
  }

  static String sentence(String problem) {
    return SAYINGS.stream()
        .filter(saying -> problem.contains(saying.sign()))
        .map(Saying::sentence)
        .findFirst()
        .orElse("this line is not readable YAML; check its indent, colons, quotes and brackets");
  }
}
