package sallet.app.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.ValidationMessage;
import java.io.IOException;
import java.util.Set;
import org.junit.jupiter.api.Test;
import sallet.app.file.PublishedSchema;
import sallet.plan.SowingPlan;

/** The JSON against its published schema, read by a schema validator of its own. */
class PlanJsonTest {

  private static JsonNode json(SowingPlan plan) throws JsonProcessingException {
    return new ObjectMapper()
        .readTree(PlanJson.of(PlanAnswer.of(plan), PorchPlan.household(), PorchPlan.catalogue()));
  }

  private static Set<ValidationMessage> faults(JsonNode json) throws IOException {
    return PublishedSchema.faults("plan", json);
  }

  @Test
  void thePlanIsValidBySchema() throws IOException {
    assertThat(faults(json(PorchPlan.plan()))).isEmpty();
  }

  @Test
  void anEmptyPlanIsValidToo() throws IOException {
    assertThat(faults(json(PorchPlan.empty()))).isEmpty();
  }

  @Test
  void theSchemaRefusesWhatIsNotAPlan() throws IOException {
    ObjectNode wrongDate = (ObjectNode) json(PorchPlan.plan());
    wrongDate.put("from", "2026-13-28");
    ObjectNode unknownKey = (ObjectNode) json(PorchPlan.plan());
    unknownKey.put("colour", "green");
    ObjectNode negative = (ObjectNode) json(PorchPlan.plan());
    ((ObjectNode) negative.path("weeks").get(0)).put("plannedGrams", -1);

    assertThat(faults(wrongDate)).hasSize(1);
    assertThat(faults(unknownKey)).hasSize(1);
    assertThat(faults(negative)).hasSize(1);
  }

  @Test
  void gramsAreRoundedToTenthsAndTasksSpeakTheJournalsWords() throws IOException {
    JsonNode json = json(PorchPlan.plan());

    // first harvest by hand: 4 plants of 18 g
    assertThat(json.at("/weeks/4/harvestGramsExpected").toString()).isEqualTo("72.0");
    assertThat(json.at("/weeks/4/shortfallGrams").toString()).isEqualTo("168.0");
    assertThat(json.at("/sowings/0/picks/3").toString())
        .isEqualTo("{\"date\":\"2027-01-16\",\"grams\":160.0,\"lift\":true}");
    assertThat(json.at("/tasks/0").toString())
        .isEqualTo(
            "{\"date\":\"2026-11-28\",\"event\":\"sow\",\"batch\":\"B01\",\"crop\":\"mizuna\","
                + "\"count\":6,\"place\":\"6\",\"grams\":0.0,\"text\":\"Sow 6 seeds of mizuna, one"
                + " a cell, 6 cells (batch B01).\",\"minutes\":4}");
  }

  @Test
  void theGapIsToldInGramsAndAsAShareOfReachableDemand() throws IOException {
    JsonNode objective = json(PorchPlan.plan()).path("objective");

    // by hand: (1893 - 1790) / 10; demand 14 bowls of 240 g and one of 120 g
    assertThat(objective.path("gapGrams").asDouble()).isEqualTo(10.3);
    assertThat(objective.path("gapShare").asDouble()).isEqualTo(0.00296);
  }

  @Test
  void withoutABoundThereIsNoGap() throws IOException {
    JsonNode objective = json(PorchPlan.empty()).path("objective");

    assertThat(objective.path("gridBound").isNull()).isTrue();
    assertThat(objective.path("gapShare").isNull()).isTrue();
  }

  @Test
  void theSamePlanGivesTheSameText() {
    assertThat(
            PlanJson.of(
                PlanAnswer.of(PorchPlan.plan()), PorchPlan.household(), PorchPlan.catalogue()))
        .isEqualTo(
            PlanJson.of(
                PlanAnswer.of(PorchPlan.plan()), PorchPlan.household(), PorchPlan.catalogue()));
  }
}
