package sallet.app.file;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/** Which crop stands in which pot and when, read from a sowing plan in JSON. */
public final class PlanFile {
  private PlanFile() {}

  /**
   * A crop in a pot.
   *
   * @param from first day in the pot
   * @param until last day in the pot
   */
  public record InPot(String crop, String pot, LocalDate from, LocalDate until) {}

  /**
   * All that a plan puts into pots.
   *
   * @param fault told one sentence when the file is no such plan; nothing is read then
   */
  public static List<InPot> read(String name, Consumer<String> fault) {
    try {
      JsonNode sowings =
          new ObjectMapper().readTree(Files.readString(Path.of(name))).path("sowings");
      if (!sowings.isArray()) {
        fault.accept(no(name, "it has no list \"sowings\""));
        return List.of();
      }
      List<InPot> all = new ArrayList<>();
      for (JsonNode sowing : sowings) {
        courses(sowing, all);
      }
      return all;
    } catch (JsonProcessingException e) {
      int line = e.getLocation() == null ? 0 : e.getLocation().getLineNr();
      fault.accept(no(name, "it is no JSON" + (line > 0 ? " from line " + line : "")));
    } catch (IOException | InvalidPathException e) {
      fault.accept("\"" + name + "\" cannot be read; check its name and rights");
    } catch (DateTimeException e) {
      fault.accept(no(name, "a date of a course is missing or wrong"));
    }
    return List.of();
  }

  private static void courses(JsonNode sowing, List<InPot> all) {
    String crop = sowing.path("crop").asText();
    for (JsonNode course : sowing.path("courses")) {
      LocalDate from = LocalDate.parse(course.path("toBench").asText());
      LocalDate until = LocalDate.parse(course.path("end").asText());
      for (JsonNode pot : course.path("pots")) {
        all.add(new InPot(crop, pot.asText(), from, until));
      }
    }
  }

  private static String no(String name, String why) {
    return "\"" + name + "\" is no plan as \"sallet plan --json\" prints it: " + why;
  }
}
