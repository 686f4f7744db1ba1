package sallet.app.file;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.DocumentStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.MappingStartEvent;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.events.SequenceStartEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.ReaderException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/**
 * Builds the tree of one YAML 1.2 document from its events. Anchors, aliases and tags are refused
 * and depth is limited, so that no file can make the tree larger than its text.
 */
final class YamlReader {
  private static final int DEEPEST = 12;

  /** Ten times what the largest household could need. */
  private static final int MOST_VALUES = 20_000;

  private final Faults faults;
  private final Iterator<Event> events;
  private int values;

  private YamlReader(String text, Faults faults) {
    this.faults = faults;
    this.events = new Parse(LoadSettings.builder().build()).parseString(text).iterator();
  }

  /** The document, or empty when it cannot be read; the faults then say why. */
  static Optional<Yaml> read(String text, Faults faults) {
    try {
      return new YamlReader(text, faults).document();
    } catch (Unreadable e) {
      faults.add("", e.line, e.sentence);
    } catch (MarkedYamlEngineException e) {
      Optional<Mark> mark =
          Syntax.beginsEarlier(e.getProblem())
              ? e.getContextMark().or(e::getProblemMark)
              : e.getProblemMark().or(e::getContextMark);
      faults.add("", mark.map(m -> m.getLine() + 1).orElse(0), Syntax.sentence(e.getProblem()));
    } catch (ReaderException e) {
      faults.add("", lineOf(text, e.getPosition()), "a control character stands here; delete it");
    } catch (YamlEngineException e) {
      faults.add("", 0, Syntax.sentence(Optional.ofNullable(e.getMessage()).orElse("")));
    }
    return Optional.empty();
  }

  private static int lineOf(String text, int position) {
    return 1 + (int) text.codePoints().limit(position).filter(c -> c == '\n').count();
  }

  private Optional<Yaml> document() {
    Optional<Yaml> root = Optional.empty();
    while (events.hasNext()) {
      Event event = events.next();
      if (event instanceof DocumentStartEvent && root.isPresent()) {
        throw new Unreadable(
            line(event), "a second document begins with ---; keep one household in a file");
      }
      if (event instanceof NodeEvent) {
        root = Optional.of(node(event, "", 0));
      }
    }
    return root;
  }

  private Yaml node(Event event, String path, int depth) {
    if (depth > DEEPEST) {
      throw new Unreadable(line(event), "brackets or indents are nested too deeply to be meant");
    }
    if (++values > MOST_VALUES) {
      throw new Unreadable(line(event), "the file has more values than any household needs");
    }
    if (!(event instanceof NodeEvent node) || event.getEventId() == Event.ID.Alias) {
      throw new Unreadable(line(event), "aliases (*) are not used here; write the value out");
    }
    if (node.getAnchor().isPresent()) {
      throw new Unreadable(line(event), "anchors (&) are not used here; write each value out");
    }
    if (event instanceof ScalarEvent scalar) {
      refuseTag(scalar.getTag(), event);
      return new Yaml.Scalar(line(event), scalar.getValue(), scalar.isPlain());
    }
    if (event instanceof SequenceStartEvent sequence) {
      refuseTag(sequence.getTag(), event);
      return sequence(line(event), path, depth);
    }
    refuseTag(((MappingStartEvent) event).getTag(), event);
    return mapping(line(event), path, depth);
  }

  private Yaml sequence(int line, String path, int depth) {
    List<Yaml> items = new ArrayList<>();
    for (Event event = events.next();
        event.getEventId() != Event.ID.SequenceEnd;
        event = events.next()) {
      items.add(node(event, path + "[" + items.size() + "]", depth + 1));
    }
    return new Yaml.Sequence(line, items);
  }

  private Yaml mapping(int line, String path, int depth) {
    List<Yaml.Entry> entries = new ArrayList<>();
    Map<String, Integer> seen = new HashMap<>();
    for (Event event = events.next();
        event.getEventId() != Event.ID.MappingEnd;
        event = events.next()) {
      if (!(node(event, path, depth + 1) instanceof Yaml.Scalar key)) {
        throw new Unreadable(line(event), "a key must be a word, not a list or a group of keys");
      }
      String below = path.isEmpty() ? key.text() : path + "." + key.text();
      Yaml value = node(events.next(), below, depth + 1);
      Integer first = seen.putIfAbsent(key.text(), key.line());
      if (first == null) {
        entries.add(new Yaml.Entry(key.line(), key.text(), value));
      } else {
        faults.add(
            Text.shorten(below),
            key.line(),
            "is written twice, first in line " + first + "; keep one of the two");
      }
    }
    return new Yaml.Mapping(line, entries);
  }

  private static void refuseTag(Optional<String> tag, Event event) {
    if (tag.isPresent()) {
      throw new Unreadable(line(event), "tags (!) are not used here; delete the tag");
    }
  }

  private static int line(Event event) {
    return event.getStartMark().map(mark -> mark.getLine() + 1).orElse(0);
  }

  /** Stops the reading. */
  private static final class Unreadable extends RuntimeException {
    private static final long serialVersionUID = 1;
    private final int line;
    private final String sentence;

    Unreadable(int line, String sentence) {
      super(sentence, null, false, false);
      this.line = line;
      this.sentence = sentence;
    }
  }
}
