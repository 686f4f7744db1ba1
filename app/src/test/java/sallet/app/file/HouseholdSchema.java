package sallet.app.file;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collector;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sallet.units.Dimension;
import sallet.units.Quantity;
import sallet.units.Unit;

/** Writes the JSON Schema of the household file from the table of keys. */
final class HouseholdSchema {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
  private static final String NUMBER = "[-+\u2212]?([0-9]+([.][0-9]*)?|[.][0-9]+)";

  /** Signs that mean the same in a unit. */
  private static final Map<Character, String> ALIKE = alike();

  private final Keys keys;

  HouseholdSchema(Keys keys) {
    this.keys = keys;
  }

  /** The schema, draft 2020-12. */
  String text() {
    ObjectNode root = NODES.objectNode();
    root.put("$schema", "https://json-schema.org/draft/2020-12/schema");
    root.put("title", "Sallet household file");
    root.put(
        "description",
        "What a grower can read off the wall, the box or a ruler. Quantities are texts with their"
            + " unit; their ranges stand in the descriptions and are checked by Sallet itself.");
    root.setAll(section(""));
    ObjectNode definitions = root.putObject("$defs");
    for (Dimension dimension : Dimension.values()) {
      definitions.set(name(dimension), quantity(dimension));
    }
    return root.toPrettyString() + "\n";
  }

  private ObjectNode section(String path) {
    ObjectNode node = NODES.objectNode();
    node.put("type", "object");
    node.put("additionalProperties", false);
    ObjectNode properties = node.putObject("properties");
    for (Key key : keys.inside(path)) {
      ObjectNode property = value(key);
      property.put("description", describe(key));
      properties.set(key.name(), property);
      if (key.required()) {
        node.withArray("/required").add(key.name());
      }
    }
    return node;
  }

  private ObjectNode value(Key key) {
    return switch (key.form()) {
      case SECTION -> section(key.path());
      case LIST -> list(key, section(key.path() + "[]"));
      case SECTION_OR_LIST -> either(section(key.path()), list(key, section(key.path() + "[]")));
      case SECTION_OR_NONE -> either(section(key.path()), NODES.objectNode().put("const", "none"));
      case QUANTITY -> reference(key);
      case MONTHLY -> either(reference(key), twelve(key));
      case TWELVE -> twelve(key);
      case NUMBER -> range(key, "number");
      case WHOLE -> range(key, "integer");
      case YES -> NODES.objectNode().put("const", true);
      case CHOICE -> pattern(key.choices().stream().map(HouseholdSchema::anyCase).collect(oneOf()));
      case DATE -> pattern("2[01][0-9]{2}-[0-9]{2}-[0-9]{2}");
      case YEARDAY -> pattern("[01][0-9]-[0-3][0-9]");
      case FILE -> NODES.objectNode().put("type", "string").put("maxLength", (int) key.max());
      case CLOCK -> pattern("([01]?[0-9]|2[0-3]):[0-5][0-9]");
      case ZONE, CITY -> NODES.objectNode().put("type", "string");
      case DAYS -> list(key, pattern(days()));
      case CROPS -> list(key, NODES.objectNode().put("type", "string"));
      case TEXT -> name();
      case WORDS -> words();
    };
  }

  private static ObjectNode words() {
    ObjectNode node = NODES.objectNode();
    node.putArray("type").add("string").add("number");
    return node;
  }

  private static ObjectNode name() {
    ObjectNode node = NODES.objectNode();
    node.putArray("type").add("string").add("number").add("boolean");
    node.put("pattern", "^[\\p{L}\\p{N}][\\p{L}\\p{N}\\p{M} ._-]*$");
    return node.put("maxLength", 20);
  }

  private static ObjectNode either(ObjectNode one, ObjectNode other) {
    ObjectNode node = NODES.objectNode();
    node.putArray("anyOf").add(one).add(other);
    return node;
  }

  private static ObjectNode list(Key key, ObjectNode item) {
    ObjectNode node = NODES.objectNode().put("type", "array");
    node.put("minItems", (int) key.min()).put("maxItems", (int) key.max());
    node.set("items", item);
    return node;
  }

  private static ObjectNode twelve(Key key) {
    ObjectNode node = NODES.objectNode().put("type", "array");
    node.put("minItems", 12).put("maxItems", 12);
    node.set("items", reference(key));
    return node;
  }

  private static ObjectNode reference(Key key) {
    return NODES.objectNode().put("$ref", "#/$defs/" + name(key.measures()));
  }

  private static ObjectNode range(Key key, String type) {
    ObjectNode node = NODES.objectNode().put("type", type);
    node.put("minimum", new BigDecimal(Quantity.plain(key.min())));
    return node.put("maximum", new BigDecimal(Quantity.plain(key.max())));
  }

  private static ObjectNode pattern(String pattern) {
    return NODES.objectNode().put("type", "string").put("pattern", "^(" + pattern + ")$");
  }

  private static String days() {
    return Arrays.stream(DayOfWeek.values())
        .flatMap(day -> Stream.of(day.name(), day.name().substring(0, 3)))
        .map(HouseholdSchema::anyCase)
        .collect(oneOf());
  }

  private static ObjectNode quantity(Dimension dimension) {
    List<String> forms = new ArrayList<>();
    List<String> spellings =
        dimension.units().stream().flatMap(unit -> spellings(unit).stream()).toList();
    forms.add(NUMBER + "\\s*(" + spellings.stream().collect(oneOf()) + ")");
    if (dimension == Dimension.LENGTH) {
      forms.add("[0-9]+\\s*(ft|feet|foot|')\\s*[0-9]+([.][0-9]+)?\\s*(in|inch|inches|\")");
    }
    if (dimension == Dimension.DURATION) {
      forms.add("[0-9]+\\s*h\\s*[0-9]+\\s*min");
    }
    String symbols = dimension.units().stream().map(Unit::symbol).collect(Collectors.joining(", "));
    return pattern(forms.stream().collect(oneOf()))
        .put("description", dimension.what() + " with its unit: " + symbols);
  }

  private static List<String> spellings(Unit unit) {
    List<String> all = new ArrayList<>(List.of(unit.symbol()));
    all.addAll(unit.spellings());
    return all.stream().map(HouseholdSchema::unitPattern).distinct().toList();
  }

  /** A unit with any of the signs that mean the same, and spaces or dots between its parts. */
  private static String unitPattern(String spelling) {
    String plain = spelling.replace('µ', 'u').replace('²', '2').replace('³', '3').replace(" ", "");
    String parts =
        plain
            .chars()
            .mapToObj(c -> ALIKE.getOrDefault((char) c, escape((char) c)))
            .collect(Collectors.joining("[\\s\u00b7*^]*"));
    return plain.equals("°C") ? parts + "|\u2103" : plain.equals("°F") ? parts + "|\u2109" : parts;
  }

  private static Map<Character, String> alike() {
    Map<Character, String> alike = new LinkedHashMap<>();
    alike.put('u', "[u\u00b5\u03bc]");
    alike.put('1', "[1\u00b9]");
    alike.put('2', "[2\u00b2]");
    alike.put('3', "[3\u00b3]");
    alike.put('-', "[-\u207b\u2212]");
    alike.put('°', "[°\u00ba]");
    alike.put('\'', "['\u2032\u2019]");
    alike.put('"', "[\"\u2033\u201d]");
    return Map.copyOf(alike);
  }

  private static String escape(char sign) {
    return "().*+?".indexOf(sign) >= 0 ? "[" + sign + "]" : String.valueOf(sign);
  }

  private static String anyCase(String word) {
    return word.chars()
        .mapToObj(
            c ->
                Character.isLetter(c)
                    ? "[" + Character.toUpperCase((char) c) + Character.toLowerCase((char) c) + "]"
                    : String.valueOf((char) c))
        .collect(Collectors.joining());
  }

  private static Collector<CharSequence, ?, String> oneOf() {
    return Collectors.joining("|");
  }

  private static String name(Dimension dimension) {
    return dimension.name().toLowerCase(Locale.ROOT);
  }

  private static String describe(Key key) {
    String text = key.meaning();
    if (key.dimension().isPresent()) {
      text += " (" + HouseholdPage.range(key) + ")";
    }
    boolean known = !key.required() && !key.standard().isEmpty();
    return known ? text + "; default " + HouseholdPage.standard(key) : text;
  }
}
