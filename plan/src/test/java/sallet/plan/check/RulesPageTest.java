package sallet.plan.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The page on valid plans tells every rule once and no other. */
class RulesPageTest {
  private static final Pattern NAMED_RULE =
      Pattern.compile("^- \\*\\*([A-Z_]+)\\*\\* ", Pattern.MULTILINE);

  @Test
  void thePageTellsEveryRule() throws IOException {
    String page = Files.readString(Path.of("..", "docs", "plan-checker.md"));
    List<String> named =
        NAMED_RULE.matcher(page).results().map((MatchResult found) -> found.group(1)).toList();
    assertThat(named)
        .containsExactlyInAnyOrderElementsOf(Arrays.stream(Rule.values()).map(Rule::name).toList());
  }
}
