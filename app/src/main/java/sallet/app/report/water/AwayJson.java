package sallet.app.report.water;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import sallet.water.absence.AwaySheet;
import sallet.water.absence.Departure;
import sallet.water.absence.Outlook;
import sallet.water.absence.Step;
import sallet.water.learn.UseFactor;

/** The sheet of an absence as JSON, described by {@code docs/schema/away.schema.json}. */
public final class AwayJson {
  private AwayJson() {}

  /** The JSON text, indented. */
  public static String of(AwayReport report) {
    AwaySheet sheet = report.sheet();
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    root.put("from", sheet.from().toString());
    root.put("to", sheet.to().toString());
    root.put("days", sheet.days());
    root.put("verdict", word(sheet.verdict().name()));
    root.put("sentence", AwayWords.verdict(sheet));
    root.set("departure", departure(sheet.departure()));
    root.set("asItStands", outlook(sheet.asItStands()));
    root.set("prepared", outlook(sheet.prepared()));
    root.set("chosen", steps(sheet.chosen()));
    WaterJson.put(root, "startL", sheet.startL());
    WaterJson.put(root, "startMsCm", sheet.startMsCm());
    ArrayNode visits = root.putArray("visits");
    sheet
        .visits()
        .forEach(
            v -> {
              ObjectNode one = visits.addObject();
              one.put("day", v.day().toString());
              WaterJson.put(one, "litres", v.litres());
            });
    root.set("steps", steps(sheet.steps()));
    WaterJson.texts(root, "breaks", sheet.breaks());
    WaterJson.texts(root, "note", sheet.note());
    root.set("use", WaterJson.use(UseFactor.prior(), sheet.learned()));
    WaterJson.texts(root, "cautions", sheet.cautions().stream().map(c -> c.text()).toList());
    WaterJson.texts(root, "basis", report.basis());
    report.explained().ifPresent(told -> told.json(root));
    return root.toPrettyString() + "\n";
  }

  private static ObjectNode departure(Departure d) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    WaterJson.put(node, "levelL", d.levelL());
    WaterJson.put(node, "ecMsCm", d.msCm());
    WaterJson.put(node, "usedL", d.usedL().stream().mapToDouble(Double::doubleValue).sum());
    WaterJson.texts(node, "toppedUp", d.toppedUp().stream().map(LocalDate::toString).toList());
    return node;
  }

  private static String word(String name) {
    return name.toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  private static ObjectNode outlook(Outlook o) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    WaterJson.put(node, "useL", o.demand().medianL());
    WaterJson.put(node, "useL95", o.demand().litresFor(Outlook.SAFE));
    WaterJson.put(node, "usableL", o.usableL());
    WaterJson.put(node, "lastsProbability", o.lasts());
    WaterJson.put(node, "returnMsCm", o.returnMsCm());
    WaterJson.put(node, "returnHighMsCm", o.returnHighMsCm());
    WaterJson.texts(node, "potsAtRisk", o.atRisk());
    WaterJson.put(node, "mostFragileHours", o.mostFragileHours());
    node.set("timer", WaterJson.timer(o.schedule()));
    node.set("reservoir", WaterJson.tank(o.tank()));
    return node;
  }

  private static ArrayNode steps(List<Step> steps) {
    ArrayNode array = JsonNodeFactory.instance.arrayNode();
    for (Step step : steps) {
      ObjectNode one = array.addObject();
      one.put("kind", word(step.kind().name()));
      one.put("text", step.text());
      one.put("trouble", step.trouble());
      WaterJson.put(one, "useChange", step.useChange());
      WaterJson.put(one, "lastsAlone", step.lastsAlone());
      WaterJson.put(one, "gainL", step.gainL());
    }
    return array;
  }
}
