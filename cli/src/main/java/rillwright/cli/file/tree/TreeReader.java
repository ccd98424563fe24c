package rillwright.cli.file.tree;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rillwright.cli.file.fault.FaultList;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.fault.Place;
import rillwright.curves.wording.PlainText;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;

/** Reads a text into a tree. */
public final class TreeReader {
  private static final int DEEPEST = 40;

  /** What 64 MB of a project hold; 64 MB of the shortest values would fill any memory. */
  private static final int MOST_VALUES = 8_000_000;

  private final SourceText source;
  private final Notation notation;
  private final JsonParser parser;
  private final FaultList faults;
  private int valuesLeft;

  private TreeReader(SourceText source, Notation notation, JsonParser parser, int mostValues) {
    this.valuesLeft = mostValues;
    this.source = source;
    this.notation = notation;
    this.parser = parser;
    this.faults = new FaultList(source.name());
  }

  /**
   * The tree of a YAML or JSON text.
   *
   * @throws InvalidInput if it is not one map in YAML or JSON, or names something twice
   */
  public static MapNode read(SourceText source) {
    return read(source, MOST_VALUES);
  }

  static MapNode read(SourceText source, int mostValues) {
    Notation notation = source.isJson() ? new JsonNotation() : new YamlNotation();
    try (JsonParser parser = notation.parserOf(source)) {
      return new TreeReader(source, notation, parser, mostValues).root();
    } catch (JacksonException complaint) {
      throw notation.explain(complaint, source);
    }
  }

  private MapNode root() {
    JsonToken first = parser.nextToken();
    if (first == null) {
      throw new InvalidInput(Place.whole(source.name()), "the file is empty");
    }
    if (first != JsonToken.START_OBJECT) {
      throw new InvalidInput(
          place(), "a project begins with fields such as \"rillwright: 1\", not with a value");
    }
    MapNode root = (MapNode) value(first, 1);
    if (parser.nextToken() != null) {
      throw new InvalidInput(
          place(), "this stands after the end of the project; a file holds one project");
    }
    faults.throwIfAny();
    return root;
  }

  private JsonToken next() {
    JsonToken token = parser.nextToken();
    if (token == null) {
      throw new InvalidInput(place(), "the file ends before this is closed");
    }
    return token;
  }

  private Place place() {
    return Places.of(source.name(), parser.currentTokenLocation());
  }

  private Node value(JsonToken token, int depth) {
    Place place = place();
    notation.refuseExtras(parser, source, place);
    if (valuesLeft-- == 0) {
      throw new InvalidInput(
          place, "from here on there are too many values; no project needs them");
    }
    return switch (token) {
      case START_OBJECT -> map(place, deeper(depth, place));
      case START_ARRAY -> list(place, deeper(depth, place));
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> scalar(Scalar.Form.NUMBER, place);
      case VALUE_TRUE, VALUE_FALSE -> scalar(Scalar.Form.TRUTH, place);
      case VALUE_NULL -> new Scalar("", Scalar.Form.NOTHING, place);
      default -> scalar(Scalar.Form.TEXT, place);
    };
  }

  private static int deeper(int depth, Place place) {
    if (depth > DEEPEST) {
      throw new InvalidInput(
          place, "this is nested more than " + DEEPEST + " deep; no project needs that");
    }
    return depth + 1;
  }

  private Scalar scalar(Scalar.Form form, Place place) {
    return new Scalar(parser.getString(), form, place);
  }

  private ListNode list(Place place, int depth) {
    List<Node> items = new ArrayList<>();
    for (JsonToken token = next(); token != JsonToken.END_ARRAY; token = next()) {
      items.add(value(token, depth));
    }
    return new ListNode(items, place);
  }

  private MapNode map(Place place, int depth) {
    List<Entry> entries = new ArrayList<>();
    Map<String, Place> seen = new HashMap<>();
    while (next() != JsonToken.END_OBJECT) {
      Place keyPlace = place();
      notation.refuseExtras(parser, source, keyPlace);
      String key = parser.currentName();
      Entry entry = new Entry(key, keyPlace, value(next(), depth));
      if (DecimalComma.wasSplitBy(entries, entry)) {
        DecimalComma.rejoin(entries, entry);
        continue;
      }
      Place before = seen.putIfAbsent(key, keyPlace);
      if (before != null) {
        faults.add(
            keyPlace, PlainText.quoted(key) + " is here twice, first in line " + before.line());
        continue;
      }
      entries.add(entry);
    }
    return new MapNode(entries, place);
  }
}
