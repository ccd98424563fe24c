package rillwright.cli.schema;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rillwright.cli.file.tree.ListNode;
import rillwright.cli.file.tree.MapNode;
import rillwright.cli.file.tree.Node;
import rillwright.cli.file.tree.Scalar;
import rillwright.cli.file.tree.SourceText;
import rillwright.cli.file.tree.TreeReader;

/** The fields of a project file by the published schema, in words; the schema is read once. */
public final class FieldRows {
  /** What has a table of its own: it is named, not opened. */
  private static final Set<String> APART =
      Set.of("point", "line", "part", "pump", "stream", "reach", "reading");

  private static final String REFERENCE = "#/$defs/";

  /** More words than these are listed by the catalogue. */
  private static final int MOST_WORDS = 20;

  /** Letters of words that stand beside a field; longer lists stand in its meaning. */
  private static final int FEW_LETTERS = 26;

  private static final int MOST_WAYS = 3;

  /** Where fields or further choices stand in a schema. */
  private static final List<String> BELOW = List.of("properties", "items", "anyOf", "then", "else");

  private final MapNode schema;
  private final MapNode definitions;
  private final Map<String, FieldRow> rows = new LinkedHashMap<>();

  private FieldRows(MapNode schema) {
    this.schema = schema;
    this.definitions = schema.findMap("$defs").orElseThrow();
  }

  /** By the schema that comes with the program. */
  public static FieldRows published() {
    return new FieldRows(
        TreeReader.read(new SourceText("schema.json", PublishedSchema.PROJECT.text())));
  }

  /** All kinds of parts. */
  public List<String> kindsOfParts() {
    return definitions
        .findMap("part")
        .flatMap(part -> part.findMap("properties"))
        .map(MapNode::keys)
        .orElseThrow();
  }

  /**
   * The fields of a definition, those below them with the names that lead there.
   *
   * @param definition its name in the schema, further names after slashes: {@code part/run}; empty
   *     for the whole file
   */
  public List<FieldRow> of(String definition) {
    FieldRows rows = new FieldRows(schema);
    MapNode at = schema;
    if (!definition.isEmpty()) {
      List<String> way = List.of(definition.split("/", -1));
      at = definitions.findMap(way.get(0)).orElseThrow();
      for (String field : way.subList(1, way.size())) {
        at = at.findMap("properties").flatMap(it -> it.findMap(field)).orElseThrow();
      }
    }
    rows.open(at, "", true);
    return List.copyOf(rows.rows.values());
  }

  /** How each kind of quantity is written: its name, what it is with its units, an example. */
  public List<FieldRow> quantities() {
    return definitions.entries().stream()
        .filter(entry -> !entry.key().contains(" ") && !entry.key().equals("catalogue"))
        .filter(entry -> entry.value() instanceof MapNode map && isWritten(map))
        .map(
            entry ->
                new FieldRow(
                    inWords(entry.key()), "", meaning((MapNode) entry.value(), false), List.of()))
        .toList();
  }

  private static boolean isWritten(MapNode definition) {
    return definition.find("examples").isPresent()
        && (text(definition, "type").filter("string"::equals).isPresent()
            || definition.listItems("anyOf").stream()
                .anyMatch(it -> it.findText("type").filter("number"::equals).isPresent()));
  }

  /**
   * Adds the fields that stand in a piece of schema.
   *
   * @param always whether it holds whatever is chosen: only there a field can be required
   */
  private void open(MapNode schema, String before, boolean always) {
    referred(schema).filter(it -> !isApart(schema)).ifPresent(it -> open(it, before, always));
    for (String key : BELOW) {
      Optional<Node> below = schema.findNode(key);
      if (below.isEmpty()) {
        continue;
      }
      if (key.equals("properties") && below.get() instanceof MapNode properties) {
        Set<String> required = words(schema.findNode("required"));
        properties.entries().stream()
            .filter(entry -> entry.value() instanceof MapNode)
            .forEach(
                entry ->
                    field(
                        before + entry.key(),
                        (MapNode) entry.value(),
                        always && required.contains(entry.key())));
      } else if (below.get() instanceof MapNode map) {
        open(map, before, always && key.equals("items"));
      } else if (below.get() instanceof ListNode list) {
        maps(list.items()).forEach(map -> open(map, before, false));
      }
    }
  }

  private void field(String name, MapNode schema, boolean required) {
    if (schema.find("deprecated").isPresent()) {
      return;
    }
    Set<String> choices = new LinkedHashSet<>();
    addChoices(schema, choices);
    rows.putIfAbsent(
        name, new FieldRow(name, takes(schema), meaning(schema, required), List.copyOf(choices)));
    schema.findMap("additionalProperties").ifPresent(it -> open(it, name + ".NAME.", true));
    open(schema, name + ".", true);
  }

  private String takes(MapNode schema) {
    Set<String> ways = new LinkedHashSet<>();
    addWays(schema, ways);
    return ways.size() > MOST_WAYS ? "quantity" : String.join(" or ", ways);
  }

  private void addWays(MapNode schema, Set<String> ways) {
    Optional<String> reference = reference(schema);
    Optional<MapNode> referred = referred(schema);
    String type = text(schema, "type").orElse("");
    if (schema.find("enum").isPresent()) {
      String words = String.join(", ", words(schema.findNode("enum")));
      ways.add(words.length() > FEW_LETTERS ? "word" : words);
    } else if (schema.find("properties").isPresent()) {
      ways.add("fields");
    } else if (reference.isPresent() && isGroup(referred.orElseThrow())) {
      addWays(referred.get(), ways);
    } else if (reference.isPresent()) {
      ways.add(inWords(reference.get()));
    } else if (schema.find("anyOf").isPresent()) {
      List<MapNode> choices = maps(schema.listItems("anyOf")).toList();
      boolean spelled = choices.stream().anyMatch(it -> it.find("pattern").isEmpty());
      choices.stream()
          .filter(it -> !spelled || it.find("pattern").isEmpty())
          .forEach(it -> addWays(it, ways));
    } else if (type.equals("array")) {
      ways.add("list");
    } else if (schema.find("then").isPresent()) {
      schema.findMap("then").ifPresent(it -> addWays(it, ways));
      schema.findMap("else").ifPresent(it -> addWays(it, ways));
    } else if (type.equals("object")) {
      ways.add("fields");
    } else if (type.equals("number") || type.equals("integer")) {
      ways.add("number");
    } else if (type.equals("string")) {
      ways.add("text");
    }
  }

  /** Whether a definition is no quantity but words to choose from or fields. */
  private static boolean isGroup(MapNode definition) {
    return definition.find("properties").isPresent()
        || definition.find("enum").isPresent()
        || (definition.find("anyOf").isPresent()
            && maps(definition.listItems("anyOf"))
                .flatMap(it -> text(it, "type").stream())
                .noneMatch(Set.of("number", "integer")::contains));
  }

  private String meaning(MapNode schema, boolean required) {
    StringBuilder meaning = new StringBuilder(first(schema, "description").orElse(""));
    Optional<String> example = first(schema, "examples");
    Set<String> choices = new LinkedHashSet<>();
    addChoices(schema, choices);
    String words = String.join(", ", choices);
    if (words.length() > FEW_LETTERS && choices.size() <= MOST_WORDS) {
      meaning.append(" One of: ").append(words).append('.');
    }
    if (required) {
      meaning.append(" Required.");
    }
    example.ifPresent(it -> meaning.append(" Example: ").append(it));
    return meaning.toString().strip();
  }

  private void addChoices(MapNode schema, Set<String> choices) {
    if (schema.find("deprecated").isPresent()) {
      return;
    }
    choices.addAll(words(schema.findNode("enum")));
    schema.findMap("items").ifPresent(it -> addChoices(it, choices));
    referred(schema).filter(FieldRows::isGroup).ifPresent(it -> addChoices(it, choices));
    maps(schema.listItems("anyOf")).forEach(it -> addChoices(it, choices));
  }

  /** What a schema says of itself, else what it refers to says, else the first of its choices. */
  private Optional<String> first(MapNode schema, String key) {
    return text(schema, key)
        .or(() -> referred(schema).flatMap(it -> first(it, key)))
        .or(
            () ->
                maps(schema.listItems("anyOf")).flatMap(it -> first(it, key).stream()).findFirst());
  }

  private Optional<MapNode> referred(MapNode schema) {
    return reference(schema).flatMap(definitions::findMap);
  }

  private static Optional<String> reference(MapNode schema) {
    return text(schema, "$ref").map(it -> it.substring(REFERENCE.length()));
  }

  private static boolean isApart(MapNode schema) {
    return reference(schema).filter(APART::contains).isPresent();
  }

  /** {@code lossCoefficient}: "loss coefficient". */
  private static String inWords(String name) {
    return name.replaceAll("([A-Z])", " $1").toLowerCase(Locale.ROOT);
  }

  private static Optional<String> text(MapNode schema, String key) {
    Optional<Node> value = schema.findNode(key);
    if (value.isPresent() && value.get() instanceof ListNode list && !list.items().isEmpty()) {
      value = Optional.of(list.items().get(0));
    }
    return value.map(FieldRows::written);
  }

  private static Set<String> words(Optional<Node> list) {
    return list.filter(ListNode.class::isInstance).map(ListNode.class::cast).stream()
        .flatMap(it -> it.items().stream())
        .map(FieldRows::written)
        .filter(it -> !it.equals("true") && !it.equals("false"))
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  /** As a project file has it. */
  private static String written(Node node) {
    if (node instanceof MapNode map) {
      return map.entries().stream()
          .map(entry -> entry.key() + ": " + written(entry.value()))
          .collect(Collectors.joining(", ", "{", "}"));
    }
    return node instanceof Scalar scalar ? scalar.text() : "";
  }

  private static Stream<MapNode> maps(List<Node> items) {
    return items.stream().filter(MapNode.class::isInstance).map(MapNode.class::cast);
  }
}
