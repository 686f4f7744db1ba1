package sallet.crop;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The page about the crops explains every column of every table. */
class CropColumnsTest {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "catalogue.csv",
        "crop_map.csv",
        "plant_model_parameters.csv",
        "germination_harrington_minges.csv",
        "seed_longevity.csv",
        "common_names.csv"
      })
  void explainsEveryColumn(String table) throws IOException {
    String page = Files.readString(Path.of("..", "docs", "crops.md"));
    String section = page.split("## " + Pattern.quote(table), 2)[1].split("\n## ", 2)[0];
    assertThat(Table.rows(table).get(0).cells().getHeader())
        .allSatisfy(column -> assertThat(section).contains("`" + column + "`"));
  }
}
