package sallet.app.file;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.MalformedInputException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sallet.plan.LastPlan;

/** Reads a plan as {@code sallet plan --json} printed it. */
public final class PlanReader {
  private PlanReader() {}

  /** A plan file that cannot be used; the message says what is wrong. */
  public static final class Unreadable extends Exception {
    private static final long serialVersionUID = 1;

    Unreadable(String message) {
      super(message);
    }
  }

  /**
   * Reads a plan.
   *
   * @throws Unreadable when it is no plan as {@code sallet plan --json} prints it
   */
  public static LastPlan read(String file) throws Unreadable {
    try {
      JsonNode root = new ObjectMapper().readTree(Files.readString(Path.of(file)));
      if (root == null || !root.path("sowings").isArray() || !root.path("weeks").isArray()) {
        throw new Unreadable("it is no plan; give a file that sallet plan --json printed");
      }
      List<LastPlan.Group> groups = new ArrayList<>();
      LocalDate from = date(root, "from");
      root.path("sowings").forEach(s -> addGroups(groups, s, from, false));
      root.path("continuing").forEach(s -> addGroups(groups, s, from, true));
      Map<LocalDate, Double> grams = new LinkedHashMap<>();
      root.path("weeks")
          .forEach(w -> grams.put(date(w, "bowlDay"), w.path("plannedGrams").asDouble()));
      Map<String, Double> factors = new LinkedHashMap<>();
      root.path("learned")
          .forEach(l -> factors.put(l.path("crop").asText(), l.path("growthFactor").asDouble()));
      return new LastPlan(from, groups, grams, factors, root.path("basis").asText(""));
    } catch (JsonProcessingException | DateTimeParseException e) {
      throw new Unreadable("it is no plan; give a file that sallet plan --json printed");
    } catch (NoSuchFileException e) {
      throw new Unreadable("there is no such file; check the name");
    } catch (MalformedInputException | InvalidPathException e) {
      throw new Unreadable("it is no text file; give a file that sallet plan --json printed");
    } catch (IOException e) {
      throw new Unreadable("it cannot be read; check its rights");
    }
  }

  private static void addGroups(
      List<LastPlan.Group> groups, JsonNode sowing, LocalDate from, boolean standing) {
    for (JsonNode course : sowing.path("courses")) {
      if (course.path("picks").isEmpty() && !date(course, "end").isAfter(from)) {
        continue; // Given up on the first day: nothing was promised of it.
      }
      groups.add(
          new LastPlan.Group(
              sowing.path("batch").asText(),
              standing,
              sowing.path("crop").asText(),
              date(sowing, "date"),
              sowing.path("cells").asInt(),
              date(course, "toBench"),
              course.path("pots").path(0).asText(),
              date(course, "end"),
              course.path("lifted").asBoolean(),
              Math.max(1, course.path("plants").asInt()),
              picks(course)));
    }
  }

  private static Map<LocalDate, Double> picks(JsonNode course) {
    Map<LocalDate, Double> grams = new HashMap<>();
    for (JsonNode pick : course.path("picks")) {
      grams.put(date(pick, "date"), pick.path("gramsPerPlant").asDouble());
    }
    return grams;
  }

  private static LocalDate date(JsonNode node, String name) {
    return LocalDate.parse(node.path(name).asText());
  }
}
