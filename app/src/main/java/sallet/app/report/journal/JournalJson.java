package sallet.app.report.journal;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import sallet.crop.SeedLot;
import sallet.crop.forecast.Band;
import sallet.journal.Entry;
import sallet.learn.Learned;
import sallet.learn.LearnedFactor;
import sallet.learn.LearnedShare;
import sallet.learn.Remark;
import sallet.learn.Standing;
import sallet.learn.StandingBatch;
import sallet.learn.StandingGroup;

/**
 * What a journal comes to as JSON, described by {@code docs/schema/journal.schema.json}. Dates are
 * ISO dates.
 */
public final class JournalJson {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
  private static final ObjectMapper MAPPER = new ObjectMapper();

  private JournalJson() {}

  /** The JSON text, indented. */
  public static String of(JournalReport report) {
    Standing standing = report.standing();
    ObjectNode root = NODES.objectNode();
    root.put("today", standing.today().toString());
    root.put("rows", report.rows());
    ArrayNode stands = root.putArray("standing");
    for (StandingBatch batch : standing.batches()) {
      batch.groups().forEach(group -> stands.add(group(standing, batch, group)));
    }
    ArrayNode others = root.putArray("otherPots");
    standing.otherPots().forEach(others::add);
    root.set("learned", learned(standing.learned()));
    ArrayNode readings = root.putArray("lastReadings");
    report.lastReadings().forEach(entry -> readings.add(reading(entry)));
    ArrayNode remarks = root.putArray("remarks");
    report.remarks().forEach(remark -> remarks.add(remark(remark)));
    try {
      return MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(root) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a tree of plain values cannot fail to be written", e);
    }
  }

  private static ObjectNode group(Standing standing, StandingBatch batch, StandingGroup group) {
    ObjectNode node = NODES.objectNode();
    node.put("batch", batch.batch());
    node.put("crop", batch.crop().name());
    node.put("sown", batch.sown().toString());
    node.put("emerged", batch.emergence().toString());
    node.put("emergenceSeen", batch.emergenceSeen());
    node.put("stage", group.stage().name().toLowerCase(Locale.ROOT).replace('_', '-'));
    node.put("count", group.count());
    node.put("plantsExpected", tenths(group.plants()));
    ArrayNode places = node.putArray("places");
    group.pots().forEach(places::add);
    group.toNursery().ifPresent(day -> node.put("toNursery", day.toString()));
    group.toBench().ifPresent(day -> node.put("toBench", day.toString()));
    node.put("freshGramsLow", hundredths(group.freshG().low()));
    node.put("freshGramsExpected", hundredths(group.freshG().median()));
    node.put("freshGramsHigh", hundredths(group.freshG().high()));
    node.put("growthFactor", thousandths(group.vigour()));
    ArrayNode picks = node.putArray("picks");
    for (StandingGroup.Taken pick : group.picks()) {
      picks
          .addObject()
          .put("date", pick.date().toString())
          .put("share", thousandths(pick.share()))
          .put("edibleGrams", tenths(pick.edibleG()));
    }
    group
        .lastPick()
        .ifPresent(
            day -> node.put("daysSinceLastPick", ChronoUnit.DAYS.between(day, standing.today())));
    return node;
  }

  private static ObjectNode learned(Learned learned) {
    ObjectNode node = NODES.objectNode();
    node.set("growth", factor(learned.bench()));
    ArrayNode crops = node.putArray("growthByCrop");
    learned.growth().forEach((crop, now) -> crops.add(factor(now).put("crop", crop)));
    node.set("regrowth", factor(learned.regrowth()));
    node.set("emergencePace", factor(learned.pace()));
    ArrayNode seed = node.putArray("seedByCrop");
    learned.seed().forEach((crop, now) -> seed.add(share(now).put("crop", crop)));
    node.put("margin", thousandths(learned.margin()));
    return node;
  }

  private static ObjectNode factor(LearnedFactor factor) {
    ObjectNode node = NODES.objectNode();
    node.set("prior", believed(factor.priorBand(), factor.priorSpread()));
    node.put("readings", factor.readings());
    node.set("now", believed(factor.band(), factor.spread()));
    return node;
  }

  private static ObjectNode believed(Band band, double spread) {
    return NODES
        .objectNode()
        .put("low", thousandths(band.low()))
        .put("median", thousandths(band.median()))
        .put("high", thousandths(band.high()))
        .put("logSpread", thousandths(spread));
  }

  private static ObjectNode share(LearnedShare share) {
    ObjectNode node = NODES.objectNode();
    node.set("prior", lot(share.prior()));
    node.put("cells", share.cells());
    node.put("came", share.came());
    Band band = share.band();
    node.set(
        "now",
        lot(share.now()).put("low", thousandths(band.low())).put("high", thousandths(band.high())));
    return node;
  }

  private static ObjectNode lot(SeedLot lot) {
    return NODES
        .objectNode()
        .put("mean", thousandths(lot.mean()))
        .put("betaA", thousandths(lot.a()))
        .put("betaB", thousandths(lot.b()));
  }

  private static ObjectNode reading(Entry entry) {
    return NODES
        .objectNode()
        .put("date", entry.date().toString())
        .put("event", entry.event().word())
        .put("place", entry.place().text())
        .put("value", entry.value().orElse(0))
        .put("unit", entry.event().unit());
  }

  private static ObjectNode remark(Remark remark) {
    ObjectNode node = NODES.objectNode();
    if (remark.line() > 0) {
      node.put("line", remark.line());
    }
    return node.put("sentence", remark.sentence());
  }

  private static double tenths(double value) {
    return Math.round(value * 10) / 10.0;
  }

  private static double hundredths(double value) {
    return Math.round(value * 100) / 100.0;
  }

  private static double thousandths(double value) {
    return Math.round(value * 1000) / 1000.0;
  }
}
