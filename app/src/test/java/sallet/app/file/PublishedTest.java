package sallet.app.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/**
 * The published schema and page say what the table of keys says. Run with {@code
 * -Dsallet.write=true} to write them anew.
 */
class PublishedTest {
  private static final String MARK = "<!-- generated: keys, units, cities -->\n";

  private final Keys keys = Keys.shipped();

  @Test
  void theSchemaFollowsTheKeys() throws IOException {
    String schema = new HouseholdSchema(keys).text();
    same(root("docs/schema/household.schema.json"), schema);
    same(root("app/src/main/resources/sallet/app/file/household.schema.json"), schema);
  }

  @Test
  void thePageFollowsTheKeys() throws IOException {
    Path page = root("docs/household-file.md");
    String text = Files.readString(page);
    String byHand = text.substring(0, text.indexOf(MARK) + MARK.length());
    same(page, byHand + "\n" + new HouseholdPage(keys).tables());
  }

  @Test
  void everyDefaultIsAllowed() throws Scalars.Wrong {
    for (Key key : keys.all()) {
      boolean literal =
          !key.required() && !key.standard().isEmpty() && !key.standard().startsWith("(");
      if (literal && key.form() != Form.DAYS) {
        Object value = Scalars.read(key, new Yaml.Scalar(1, key.standard(), true));
        assertThat(value).as(key.path()).isNotNull();
      }
      if (literal) {
        assertThat(key.origin()).as("origin of the default of " + key.path()).isNotBlank();
      }
    }
  }

  /** Common practice: a lamp day of 16 h is usual. */
  @Test
  void aLampBurnsSixteenHoursUnlessSaidOtherwise() {
    for (String lamp : new String[] {"lamp.hours", "nursery.hours"}) {
      assertThat(keys.of(lamp).standard()).isEqualTo("16 h");
      assertThat(keys.of(lamp).origin()).isEqualTo("common practice");
    }
  }

  private static void same(Path file, String wanted) throws IOException {
    if (Boolean.getBoolean("sallet.write")) {
      Files.writeString(file, wanted);
    }
    assertThat(Files.readString(file)).as(file.getFileName().toString()).isEqualTo(wanted);
  }

  private static Path root(String path) {
    return Files.exists(Path.of("examples")) ? Path.of(path) : Path.of("..", path);
  }
}
