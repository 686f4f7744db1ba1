package sallet.app.file;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;

/** Judges JSON by a schema published under docs/schema. */
public final class PublishedSchema {
  private PublishedSchema() {}

  /** What breaks the schema of a name, such as "plan", formats of dates and the like included. */
  public static Set<ValidationMessage> faults(String name, JsonNode json) throws IOException {
    return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
        .getSchema(Files.readString(Path.of("..", "docs", "schema", name + ".schema.json")))
        .validate(json, context -> context.getExecutionConfig().setFormatAssertionsEnabled(true));
  }
}
