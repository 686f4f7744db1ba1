package sallet.app.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** The page as an XML parser reads it: what stands in it, and that nothing breaks out. */
class PlanPageTest {
  private static final String HOSTILE =
      "\"><script>alert('1')</script>&\u0007\u202e]]><!-- onload=x";

  private static String page(String pot) {
    return PlanPage.of(
        PlanAnswer.of(PorchPlan.plan(pot)),
        PorchPlan.household(pot),
        PorchPlan.catalogue(),
        PorchPlan.light(pot));
  }

  private static Document read(String page)
      throws ParserConfigurationException, IOException, SAXException {
    String body = page.substring(page.indexOf("<html"));
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader(body)));
  }

  private static List<Element> elements(Document page, String name) {
    List<Element> found = new ArrayList<>();
    NodeList nodes = page.getElementsByTagName(name);
    for (int i = 0; i < nodes.getLength(); i++) {
      found.add((Element) nodes.item(i));
    }
    return found;
  }

  private static String only(Element parent, String name) {
    return parent.getElementsByTagName(name).item(0).getTextContent();
  }

  @Test
  void everyDrawingHasANameAndWordsAndATableTwin() throws Exception {
    Document page = read(page("A6"));
    List<Element> drawings =
        elements(page, "svg").stream().filter(e -> e.getAttribute("role").equals("img")).toList();

    // bowls, batches, and the bench on the first day and five month ends
    assertThat(drawings).hasSize(8);
    assertThat(drawings).allSatisfy(d -> assertThat(only(d, "title")).isNotBlank());
    assertThat(drawings).allSatisfy(d -> assertThat(only(d, "desc")).isNotBlank());
    assertThat(elements(page, "summary").stream().map(Element::getTextContent))
        .contains(
            "The bowls as a table",
            "The batches as a table",
            "The bench as a table",
            "93 tasks in all");
  }

  @Test
  void noAttributeAsksForAnythingFromElsewhere() throws Exception {
    Document page = read(page("A6"));

    for (String name : List.of("script", "link", "img", "iframe", "object", "form", "a", "image")) {
      assertThat(elements(page, name)).as(name).isEmpty();
    }
    String css = only(page.getDocumentElement(), "style");
    assertThat(css).doesNotContain("@import", "http", "//", "@font-face");
    assertThat(css.split("url\\(")).filteredOn(part -> !part.startsWith("#")).hasSize(1);
  }

  @Test
  void aHostileNameIsTextWhereverItStands() throws Exception {
    Document plain = read(page("A6"));
    Document hostile = read(page(HOSTILE));

    assertThat(elements(hostile, "*")).hasSameSizeAs(elements(plain, "*"));
    assertThat(hostile.getDocumentElement().getTextContent())
        .contains("\"><script>alert('1')</script>&\uFFFD\uFFFD]]><!-- onload=x");
  }

  @Test
  void idsAreUnique() throws Exception {
    List<String> ids =
        elements(read(page("A6")), "*").stream()
            .map(e -> e.getAttribute("id"))
            .filter(id -> !id.isEmpty())
            .toList();

    assertThat(ids).doesNotHaveDuplicates().contains("next", "bowls", "short", "batches", "bench");
  }

  @Test
  void everyTaskStandsInTheTable() throws Exception {
    String text = read(page("A6")).getDocumentElement().getTextContent().replace('\u00a0', ' ');

    assertThat(Tasks.of(PorchPlan.plan()))
        .allSatisfy(task -> assertThat(text).contains(task.text()));
  }

  @Test
  void anEmptyPlanIsStillAPage() throws Exception {
    String page =
        PlanPage.of(
            PlanAnswer.of(PorchPlan.empty()),
            PorchPlan.household(),
            PorchPlan.catalogue(),
            BenchLight.ofGroups(PorchPlan.empty()));

    assertThat(read(page).getDocumentElement().getTextContent())
        .contains("Nothing to do in these two weeks.", "No bowl can be reached.");
  }
}
