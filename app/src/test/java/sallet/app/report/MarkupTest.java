package sallet.app.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class MarkupTest {
  @Test
  void textAndAttributesAreEscaped() {
    String html = new Markup().element("p", "<b>'&\"", "title", "\"<>").toString();

    assertThat(html).isEqualTo("<p title=\"&quot;&lt;&gt;\">&lt;b&gt;&#39;&amp;&quot;</p>\n");
  }

  @Test
  void numbersHaveAtMostTwoDecimalsAndAPoint() {
    assertThat(Markup.number(12.5)).isEqualTo("12.5");
    assertThat(Markup.number(100)).isEqualTo("100");
    assertThat(Markup.number(-0.001)).isEqualTo("0");
    assertThat(Markup.number(1234.567)).isEqualTo("1234.57");
  }

  @Test
  void aNumberStaysWithItsUnit() {
    assertThat(new Markup().text("93 % of 240 g, 3 gnats").toString())
        .isEqualTo("93\u00a0% of 240\u00a0g, 3 gnats");
  }

  @Test
  void anElementLeftOpenIsADefect() {
    Markup open = new Markup().open("p");

    assertThatThrownBy(open::toString).isInstanceOf(IllegalStateException.class);
  }
}
